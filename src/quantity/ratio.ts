import { fail } from '../errors/StillroomError';
import { parseAmount } from './fractions';

const EXPECTED = 'a ratio from 0 to 1, or a percentage such as "85 %"';

/**
 * Reads a ratio: a number from 0 to 1, or a text in percent.
 *
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
export function parseRatio(given: unknown, path = ''): number {
  if (given === undefined) fail('MISSING', path, given, EXPECTED);
  if (typeof given === 'number') {
    if (!(given >= 0 && given <= 1)) fail('OUT_OF_RANGE', path, given, EXPECTED);
    return given;
  }
  if (typeof given !== 'string') fail('WRONG_TYPE', path, given, EXPECTED);
  const text = given.trim();
  const percent = text.length <= 40 && text.endsWith('%') ? parseAmount(text.slice(0, -1)) : undefined;
  if (percent === undefined) fail('NOT_A_QUANTITY', path, given, EXPECTED);
  const ratio = percent.div(100).toNumber();
  if (!(ratio >= 0 && ratio <= 1)) fail('OUT_OF_RANGE', path, given, EXPECTED);
  return ratio;
}
