import { fail } from '../errors/StillroomError';
import { parseAmount } from './fractions';

const expectedUpTo = (most: number): string =>
  most === 1 ? 'a ratio from 0 to 1, or a percentage such as "85 %"' : `a ratio from 0 to ${most}, or a percentage`;

/**
 * Reads a ratio: a number from 0 to 1, or a text in percent.
 *
 * @param most - the largest it may be: 1, or more where the whole is not what it is a share of (moisture on dry basis)
 * @throws StillroomError WRONG_TYPE, NOT_A_QUANTITY, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { parseRatio } from 'stillroom/quantity';
 *
 * parseRatio('85.5 %'); // => 0.855
 * parseRatio(85); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function parseRatio(given: unknown, path = '', most = 1): number {
  const expected = expectedUpTo(most);
  if (given === undefined) fail('MISSING', path, given, expected);
  if (typeof given === 'number') {
    if (!(given >= 0 && given <= most)) fail('OUT_OF_RANGE', path, given, expected);
    return given;
  }
  if (typeof given !== 'string') fail('WRONG_TYPE', path, given, expected);
  const text = given.trim();
  const percent = text.length <= 40 && text.endsWith('%') ? parseAmount(text.slice(0, -1)) : undefined;
  if (percent === undefined) fail('NOT_A_QUANTITY', path, given, expected);
  const ratio = percent.div(100).toNumber();
  if (!(ratio >= 0 && ratio <= most)) fail('OUT_OF_RANGE', path, given, expected);
  return ratio;
}
