/** How many times a printed recipe is made, and whether in one pot or pot by pot. */
import { fail } from '../errors/StillroomError';
import type { RecipeRow } from './rows/tables';

/** What a page says of other sizes, as numbers. */
export interface Size {
  /** How many times the printed recipe is made in all. */
  readonly batches: number;
  /** How many times its amounts go into one pot. */
  readonly times: number;
}

type Scale = RecipeRow['batch']['scale'];

/** The most times the printed recipe goes into one pot; `undefined` where the page sets no limit. */
const IN_ONE_POT: Readonly<Partial<Record<Scale, number>>> = {
  'one batch at a time': 1,
  'whole batches': 1,
  'may be doubled': 2,
};
/** Pages whose recipes are not cut down: they set by their printed proportions and boil. */
export const wholeOnly = (scale: Scale): boolean => IN_ONE_POT[scale] !== undefined;

/**
 * Reads a number of batches.
 *
 * @throws StillroomError OUT_OF_RANGE for a part of a batch where the page allows whole ones only
 */
export function sizeOf({ name, batch }: RecipeRow, batches: number, path: string): Size {
  const most = IN_ONE_POT[batch.scale];
  if (most === undefined) return { batches, times: batches };
  if (!Number.isInteger(batches))
    fail('OUT_OF_RANGE', path, batches, `whole batches of ${name}, such as 1 or 2: half a batch of it may not set`);
  return { batches, times: batches <= most ? batches : 1 };
}
