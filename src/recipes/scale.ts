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

type Batch = RecipeRow['batch'];

/** The most times the printed recipe goes into one pot; `undefined` where the page sets no limit. */
const IN_ONE_POT: Readonly<Partial<Record<Batch['scale'], number>>> = {
  'one batch at a time': 1,
  'whole batches': 1,
  'may be doubled': 2,
};
const inOnePot = ({ scale, whole }: Batch): number | undefined => IN_ONE_POT[scale] ?? (whole === true ? 1 : undefined);
/** Recipes that are not cut down: they set by their printed proportions and boil, or no page prints them smaller. */
export const wholeOnly = (batch: Batch): boolean => inOnePot(batch) !== undefined;

/** The batches that an amount of food makes in a day: whole ones where only whole ones are made, never above `most`. */
export function batchesHere(batch: Batch, found: number): number {
  const whole = wholeOnly(batch) ? Math.floor(found + 1e-9) : found;
  return Math.min(whole, batch.most ?? whole);
}

/**
 * Reads a number of batches.
 *
 * @throws StillroomError OUT_OF_RANGE for a part of a batch where only whole ones are made, and for more than the most
 */
export function sizeOf({ name, batch }: RecipeRow, batches: number, path: string): Size {
  if (batch.most !== undefined && batches > batch.most)
    fail('OUT_OF_RANGE', path, batches, `at most ${batch.most} batches of ${name}: make the rest on another day`);
  const most = inOnePot(batch);
  if (most === undefined) return { batches, times: batches };
  if (!Number.isInteger(batches))
    fail(
      'OUT_OF_RANGE',
      path,
      batches,
      `whole batches of ${name}, such as 1 or 2: no page prints it smaller, and a part of it may not set`,
    );
  return { batches, times: batches <= most ? batches : 1 };
}
