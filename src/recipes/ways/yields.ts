/** How many jars or packs lots give by what a page prints: the jars of a batch, or the raw weight for jars. */
import { parseQuantity } from '../../quantity/parseQuantity';
import { valueIn } from '../../quantity/scale';
import type { RecipeRow } from '../rows/tables';
import { rawOf } from './kept';
import type { Lot } from './lot';

/** Jars of one size. */
export interface JarsOf {
  readonly jar: string;
  readonly low: number;
  readonly high: number;
}

const kgOf = (raw: string): number => valueIn(parseQuantity(raw, 'mass'), 'kg');

/**
 * Jars by the raw weight that the page prints for them. Each of its lines has another weight (16 lb for 7 quarts, 10 lb
 * for 9 pints), so each counts all that there is; where nobody weighed that, the weight of the first line.
 */
function byRaw(rawNeed: NonNullable<RecipeRow['rawNeed']>, lots: readonly Lot[]): JarsOf[] {
  const [first] = rawNeed;
  if (first === undefined) return [];
  const raws = lots.length === 0 ? undefined : rawOf(lots);
  const weighed = raws?.reduce((sum, { mass }) => sum + valueIn(mass, 'kg'), 0);
  const kg = weighed ?? kgOf(first.raw);
  return [...new Set(rawNeed.map(({ jar }) => jar))].map((jar) => {
    const counts = rawNeed.filter((line) => line.jar === jar).map(({ raw, jars }) => (jars * kg) / kgOf(raw));
    return { jar, low: Math.min(...counts), high: Math.max(...counts) };
  });
}

/** Jars or packs before they are rounded; none where the page prints neither. */
export function jarsOf({ yields, rawNeed = [] }: RecipeRow, lots: readonly Lot[], batches = 1): JarsOf[] {
  return yields === undefined
    ? byRaw(rawNeed, lots)
    : yields.map(({ jar, low, high }) => ({ jar, low: low * batches, high: high * batches }));
}

/** Whole jars or packs: the fewest down, the most up. */
export const yieldsOf = (row: RecipeRow, lots: readonly Lot[], batches?: number): JarsOf[] =>
  jarsOf(row, lots, batches).map(({ jar, low, high }) => ({
    jar,
    low: Math.floor(low + 1e-9),
    high: Math.ceil(high - 1e-9),
  }));
