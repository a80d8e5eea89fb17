import * as z from 'zod/mini';
import table from '../../data/sheet/beside.json';
import { TASK_KINDS, type TaskKind } from '../plan/request/daySchedule';
import type { PlannedProduct } from '../plan/request/plannedProduct';
import { recipeOfId } from '../recipes/rows/rows';
import type { Caution } from '../sources/basis';
import { id, practiceColumns, type RowOf, text } from '../sources/columns';
import { asTable } from '../sources/table';

export const besideRow = () =>
  z.strictObject({
    id: id(),
    beside: z.exactOptional(z.enum(TASK_KINDS)),
    /** Instead, where no step of the recipe puts acid into each jar. */
    inPot: z.exactOptional(z.enum(TASK_KINDS)),
    /** Operation that the recipe must have, and not as a choice. */
    step: z.exactOptional(text()),
    /** A row that names the acid says the same. */
    acidRow: z.exactOptional(z.literal(true)),
    /** What it says, where another says the same. */
    says: z.exactOptional(text()),
    card: z.exactOptional(z.literal(true)),
    ...practiceColumns(),
  });
type BesideRow = RowOf<typeof besideRow>;
export const BESIDE = asTable<BesideRow>(table).rows;
const BY_ID = new Map(BESIDE.map((row) => [row.id, row]));

/** What a caution says: its own id, or a word that it shares with others. */
export const saysOf = ({ id }: Caution): string => BY_ID.get(id)?.says ?? id;

/** The cautions that a line of the cards or the back says already. */
export const SAID_ELSEWHERE: readonly string[] = BESIDE.filter(({ card }) => card).map(({ id }) => id);

/** The cautions of a product, without those that its own row says. */
export const cautionsOf = ({ cautions, canning }: PlannedProduct): Caution[] =>
  canning?.acidToAdd === undefined ? [...cautions] : cautions.filter(({ id }) => BY_ID.get(id)?.acidRow !== true);

/** Whether the acid goes into each jar; otherwise it is part of the recipe, and goes into the pot. */
export const acidInJars = ({ canning }: PlannedProduct): boolean => canning?.acidGoesInto !== 'recipe';

/** The kind of task that a caution stands beside with a product; none where it stands on the back. */
export function kindBeside({ beside, inPot, step }: BesideRow, product: PlannedProduct): TaskKind | undefined {
  const must = step === undefined || recipeOfId(product.recipe)?.steps.some((own) => own.do === step && !own.optional);
  if (!must) return undefined;
  return inPot !== undefined && !acidInJars(product) ? inPot : beside;
}
