import * as z from 'zod/mini';
import { fail, StillroomError } from '../../errors/StillroomError';
import { parseShare } from '../../quantity/share';
import type { Range, ShareInput } from '../../quantity/types';

/** A moisture that is one ratio, or a range of them. */
export type MoistureRangeInput =
  | ShareInput
  | { readonly low: ShareInput; readonly likely: ShareInput; readonly high: ShareInput };

const BELOW_ONE = 'a moisture of at least 0 and below 1 (or the same in percent)';

function readOne(given: unknown, path: string): number {
  const value = parseShare(given, path);
  if (value >= 1) fail('OUT_OF_RANGE', path, given, BELOW_ONE);
  return value;
}

function readMoistureRange(given: unknown): Range<number> {
  if (given === undefined) fail('MISSING', '', given, BELOW_ONE);
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    const value = readOne(given, '');
    return { low: value, likely: value, high: value };
  }
  const ends = given as Record<string, unknown>;
  const unknown = Object.keys(ends).find((key) => !['low', 'likely', 'high'].includes(key));
  if (unknown !== undefined) fail('UNKNOWN_FIELD', unknown.slice(0, 60), unknown, 'low, likely and high');
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
export const moistureRange = () =>
  z.pipe(
    z.custom<MoistureRangeInput>(() => true),
    z.transform((given: MoistureRangeInput, context): Range<number> => {
      try {
        return readMoistureRange(given);
      } catch (error) {
        if (!(error instanceof StillroomError)) throw error;
        context.issues.push({ code: 'custom', input: given, message: error.message, params: { error } });
        return z.NEVER as never;
      }
    }),
  );
