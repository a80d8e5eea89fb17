/** What a recipe ends in. */
import { parseQuantity } from '../quantity/parseQuantity';
import type { Quantity } from '../quantity/types';
import type { KeepingRow } from './rows/tables';
import { ends } from './step';

/** What a recipe ends in. */
export interface RecipeKeeping {
  /** Where it keeps: `shelf`, `refrigerator`, `freezer`, `crock`; jars that were processed keep on the shelf. */
  readonly place: string;
  /** Name of the recipe in the process tables: ask `testedProcess` for its minutes at your elevation. */
  readonly processRecipe?: string;
  /** How long it keeps, at least as printed. */
  readonly low?: Quantity<'time'>;
  /** How long it keeps, at most as printed. */
  readonly high?: Quantity<'time'>;
}

/** What a row says of keeping, as an answer holds it. */
export function keepingOf(keep: KeepingRow): RecipeKeeping {
  if ('process' in keep) return { place: 'shelf', processRecipe: keep.process };
  if (keep.time === undefined) return { place: keep.place };
  const [low, high] = ends(keep.time);
  return { place: keep.place, low: parseQuantity(low, 'time'), high: parseQuantity(high, 'time') };
}
