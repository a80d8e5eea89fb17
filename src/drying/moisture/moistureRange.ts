import { fail } from '../../errors/StillroomError';
import { reading } from '../../quantity/fields';
import { sureRange } from '../../quantity/range';
import { parseShare } from '../../quantity/share';
import type { Range, ShareInput } from '../../quantity/types';

/** One moisture, or a range of them. */
export type MoistureRangeInput =
  | ShareInput
  | {
      /** The driest it may be: 0 to below 1, or percent. */
      readonly low: ShareInput;
      /** What it most likely is. */
      readonly likely: ShareInput;
      /** The wettest it may be. */
      readonly high: ShareInput;
    };

const BELOW_ONE = 'a moisture of at least 0 and below 1 (or the same in percent)';

function readOne(given: unknown, path: string): number {
  const value = parseShare(given, path);
  if (value >= 1) fail('OUT_OF_RANGE', path, given, BELOW_ONE);
  return value;
}

const ENDS = ['low', 'likely', 'high'];

function readMoistureRange(given: unknown): Range<number> {
  if (given === undefined) fail('MISSING', '', given, BELOW_ONE);
  if (typeof given !== 'object' || given === null || Array.isArray(given)) return sureRange(readOne(given, ''));
  const ends = given as Record<string, unknown>;
  const unknown = Object.keys(ends).find((key) => !ENDS.includes(key));
  if (unknown !== undefined) {
    fail('UNKNOWN_FIELD', unknown.slice(0, 60), unknown, 'one of the fields low, likely, high', { options: ENDS });
  }
  const range = {
    low: readOne(ends.low, 'low'),
    likely: readOne(ends.likely, 'likely'),
    high: readOne(ends.high, 'high'),
  };
  if (range.low > range.likely || range.likely > range.high) {
    fail('CONTRADICTION', '', given, 'low, likely and high in rising order');
  }
  return range;
}

/** A field that takes one moisture or `{ low, likely, high }`, wet basis, below 1. */
export const moistureRange = () => reading<MoistureRangeInput, Range<number>>(readMoistureRange);
