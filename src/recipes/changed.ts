/** What a cook means to change of a printed recipe, and whether it may be changed. */
import { acidCaution, LEAST_ACETIC, pickleRule } from '../acid/tables';
import { fail } from '../errors/StillroomError';
import type { FoundFood } from '../foods/fields';
import { nameOf } from '../foods/tables';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf } from '../sources/table';
import { recipeCaution } from './cautions';
import { vinegarLines } from './coveringLiquid';
import { pageOf } from './rows/rows';
import type { IngredientRow, RecipeRow } from './rows/tables';

/** Strength from which a vinegar is sold for cleaning as well as for food. */
const STRONG = LEAST_ACETIC * 1.01;
export const isStrong = (acetic: number | undefined): boolean => acetic !== undefined && acetic > STRONG;

const percent = (share: number): string => `${Number((share * 100).toPrecision(3))} %`;

/** What may be left out where the page does not keep it: the taste changes, and nothing that keeps the food. */
const FREE = new Set(['sugar', 'sweetener', 'spice']);
const mayGo = ({ keep, optional, role }: IngredientRow): boolean =>
  keep !== true && (optional === true || FREE.has(role));

/** Whether a cook leaves a line out. */
export const isLeftOut = ({ food }: IngredientRow, without: readonly FoundFood[] = []): boolean =>
  without.some(({ id }) => id === food);

function weakVinegar(row: RecipeRow, acetic: number): NotKnown | undefined {
  const lines = vinegarLines(row);
  if (lines.length === 0) fail('CONTRADICTION', 'acetic', acetic, `left off: ${row.name} holds no vinegar`);
  const least = Math.max(...lines.map((line) => line.acetic ?? LEAST_ACETIC));
  if (acetic >= least) return undefined;
  return notKnown({
    code: 'weak-vinegar',
    text: `The vinegar is ${percent(acetic)} acetic acid, and ${row.name} is made with ${percent(least)}. More of a weaker vinegar does not make up for it: it brings its water along.`,
    instead: `Use vinegar labeled ${percent(least)} and sold as food; keep this one for salads.`,
    basis: [
      pageOf(row, 'reason', 'the recipe'),
      basisOf(pickleRule('vinegar-acidity'), 'reason', 'least strength of vinegar'),
    ],
    cautions: [acidCaution('vinegar-below-five'), caution('follow-local-guidance')],
  });
}

function leavesOut(row: RecipeRow, without: readonly FoundFood[]): NotKnown | undefined {
  without.forEach((food, index) => {
    if (row.ingredients.some((line) => isLeftOut(line, [food]))) return;
    const options = row.ingredients.flatMap((line) =>
      line.food === undefined || line.food === '@scope' || !mayGo(line) ? [] : [nameOf(line.food)],
    );
    fail('CONTRADICTION', `without[${index}]`, food.name, `an ingredient of ${row.name}`, { options });
  });
  const kept = row.ingredients.filter((line) => isLeftOut(line, without) && !mayGo(line));
  const [first] = kept;
  if (first === undefined) return undefined;
  return notKnown({
    code: 'kept-ingredient',
    text: `${nameOf(first.food as string)} belongs to ${row.name}: the recipe is safe, or sets, by it, and these tables hold no such recipe without it.`,
    instead: 'Make the recipe as printed, or ask waysToKeep for another one of this food.',
    basis: [pageOf(row, 'reason', 'the recipe')],
    cautions: [recipeCaution('recipe-proportions'), caution('follow-local-guidance')],
  });
}

/** Why a recipe is not given as a cook means to change it; nothing where it may be. */
export function changed(
  row: RecipeRow,
  { acetic, without }: { readonly acetic?: number | undefined; readonly without?: readonly FoundFood[] | undefined },
): NotKnown | undefined {
  const weak = acetic === undefined ? undefined : weakVinegar(row, acetic);
  return weak ?? (without === undefined ? undefined : leavesOut(row, without));
}
