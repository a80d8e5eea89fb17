import guide from '../../../data/produce/edible-buying-guide.json';
import culinary from '../../../data/produce/edible-culinary.json';
import ers from '../../../data/produce/edible-ers2022.json';
import extension from '../../../data/produce/edible-extension.json';
import sr28 from '../../../data/produce/edible-sr28.json';
import { asTable, type Sourced } from '../../sources/table';
import { type CatalogueRow, namesAbove, namesBelow, numbersOf } from '../catalogue';
import type { Preparation } from './forms';
import { median, type Span, spanOf, tidy } from './span';

export interface RefuseRow extends Sourced {
  readonly produce: string;
  readonly preparation: Preparation;
  readonly ndb: string;
  readonly description: string;
  readonly refusePct: number;
  readonly ediblePct: number;
  readonly refuseIs: string | null;
}
/** A row of one of the small tables: trimming as a share of what was bought. */
export interface TrimRow extends Sourced {
  readonly produce: string;
  readonly preparation: Preparation;
  /** As the source describes it. */
  readonly as: string;
  readonly ediblePct: number;
}
export interface FactorRow extends Sourced {
  readonly food: string;
  readonly form: 'fresh' | 'frozen' | 'canned' | 'dried';
  readonly produce: string | null;
  readonly yieldFactor: number;
  readonly cupEquivalent_lb: number;
  readonly preparation?: Preparation;
  readonly cooked?: boolean;
}

export const refuseRows = asTable<RefuseRow>(sr28).rows;
export const factorRows = asTable<FactorRow>(ers).rows;
export const trimTables = [extension, culinary, guide].map((json) => asTable<TrimRow>(json).rows);

/** A published share of the raw weight that is left after preparation. */
export interface EdibleFigure {
  readonly row: Sourced;
  /** 0 to 1. */
  readonly share: number;
  /** What was taken off, in the source's words. */
  readonly off?: string;
}

/**
 * How far apart two sources usually are on one food and preparation: 3 points of a hundred, the median over
 * every food here that two or more of them print (checked against the tables in the tests). It is the least
 * distance of the ends from the likely figure, so that a food with a single source is not taken for certain.
 */
export const USUAL_SPREAD = 0.03;

const isMemory = ({ row }: EdibleFigure): boolean => row.obtained === 'memory';

/**
 * Every published share of this produce after this preparation. The order is that of trust: refuse by food
 * number, then extension, kitchen text and buying guide, then the price survey (which largely repeats the first,
 * and whose vegetables are cooked, so that only raw ones count); read figures before recalled ones.
 */
export function edibleFigures(produce: CatalogueRow, preparation: Preparation): EdibleFigure[] {
  const numbers = numbersOf(produce);
  const names = new Set([...namesAbove(produce), ...namesBelow(produce)]);
  const fits = (row: { produce: string | null; preparation?: Preparation }): boolean =>
    row.preparation === preparation && row.produce !== null && names.has(row.produce);
  const refuse = refuseRows
    .filter((row) => fits(row) && numbers.includes(row.ndb))
    .sort((a, b) => numbers.indexOf(a.ndb) - numbers.indexOf(b.ndb))
    .map((row) => ({ row, share: row.ediblePct / 100, ...(row.refuseIs === null ? {} : { off: row.refuseIs }) }));
  const trims = trimTables.flatMap((rows) => rows.filter(fits)).map((row) => ({ row, share: row.ediblePct / 100 }));
  const factors = factorRows
    .filter((row) => row.form === 'fresh' && row.cooked === false && fits(row))
    .map((row) => ({ row, share: row.yieldFactor }));
  const figures: EdibleFigure[] = [...refuse, ...trims, ...factors];
  return [...figures.filter((figure) => !isMemory(figure)), ...figures.filter(isMemory)];
}

/** Fruit put up whole loses only stems and spoiled pieces: the SR28 rows whose refuse is just that, for fruit eaten whole. */
const EATEN_WHOLE = ['blackberry', 'blueberry', 'cranberry', 'black currant', 'red currant', 'fig', 'raspberry'];
const wholeFigures = (): EdibleFigure[] =>
  refuseRows
    .filter(({ produce }) => EATEN_WHOLE.includes(produce))
    .map((row) => ({ row, share: row.ediblePct / 100, off: 'stems and spoiled fruit' }));

/** What is taken off when the produce is put up in a form that does not say so itself. */
export function figuresFor(
  produce: CatalogueRow,
  preparation: Preparation,
): { figures: EdibleFigure[]; borrowed: boolean } {
  const own = edibleFigures(produce, preparation);
  if (own.length > 0 || preparation !== 'whole') return { figures: own, borrowed: false };
  const trimmed = edibleFigures(produce, 'trimmed');
  if (trimmed.length > 0) return { figures: trimmed, borrowed: false };
  if (produce.kind === 'vegetable') return { figures: edibleFigures(produce, produce.cut), borrowed: false };
  return { figures: wholeFigures(), borrowed: true };
}

/**
 * The share that stays, as a range: the likely end is the first figure (of a group of foods, the middle one of
 * its members), the others the lowest and highest figure printed, and at least `USUAL_SPREAD` away; never above 1.
 */
export function edibleSpan(figures: readonly EdibleFigure[], group: boolean): Span {
  const shares = figures.map(({ share }) => share);
  const refuse = figures.filter(({ row }) => 'refusePct' in row).map(({ share }) => share);
  const likely = group && refuse.length > 0 ? median(refuse) : (shares[0] as number);
  const { low, high } = spanOf(likely, [...shares, tidy(likely - USUAL_SPREAD), tidy(likely + USUAL_SPREAD)]);
  return { low: Math.max(low, 0), likely, high: Math.min(high, 1) };
}
