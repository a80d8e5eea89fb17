import { Decimal } from '../common/decimal';
import { fail } from '../errors/StillroomError';
import { parseAmount, type Rounding } from './fractions';
import type { Money } from './types';

const EXPECTED = 'an amount with its three-letter currency code, such as "24.50 USD"';
const LARGEST = 1e12;

/**
 * Reads an amount of money: `"24.50 USD"` or `{ value, unit }`. Currencies are never converted.
 *
 * @throws StillroomError NOT_A_QUANTITY, WRONG_TYPE, OUT_OF_RANGE (below zero or beyond 10^12)
 *
 * @example
 * ```ts
 * import { parseMoney } from 'stillroom/quantity';
 *
 * parseMoney('24.50 USD'); // => { value: 24.5, unit: 'USD' }
 * ```
 */
export function parseMoney(given: unknown, path = ''): Money {
  if (given === undefined) fail('MISSING', path, given, EXPECTED);
  let value: number | undefined;
  let unit: unknown;
  if (typeof given === 'string') {
    const match = given.length <= 40 ? /^(.*\S)\s*([A-Z]{3})$/.exec(given.trim()) : null;
    value = match === null ? undefined : parseAmount(match[1] ?? '')?.toNumber();
    unit = match?.[2];
    if (value === undefined) fail('NOT_A_QUANTITY', path, given, EXPECTED);
  } else {
    if (typeof given !== 'object' || given === null || Array.isArray(given)) fail('WRONG_TYPE', path, given, EXPECTED);
    const fields = given as { value?: unknown; unit?: unknown };
    if (typeof fields.value !== 'number') fail('WRONG_TYPE', path, given, EXPECTED);
    value = fields.value;
    unit = fields.unit;
  }
  if (typeof unit !== 'string' || !/^[A-Z]{3}$/.test(unit)) fail('NOT_A_QUANTITY', path, given, EXPECTED);
  if (!(value >= 0 && value <= LARGEST)) fail('OUT_OF_RANGE', path, given, `${EXPECTED}, not below zero`);
  return { value, unit };
}

/** Less than this of a unit of money is the arithmetic's, and makes no further cent. */
const DIGITS = 8;
const WAYS = { nearest: Decimal.ROUND_HALF_UP, up: Decimal.ROUND_UP, down: Decimal.ROUND_DOWN } as const;

/** An amount without the noise of its arithmetic, to be rounded or shared out. */
export const withoutNoise = (value: Decimal | number): Decimal => new Decimal(value).toDecimalPlaces(DIGITS);

/** Rounds to the cent (two places), half up where nothing is said: the last step of every sum of money. */
export function toCents(value: Decimal | number, rounding: Rounding = 'nearest'): number {
  const amount = rounding === 'nearest' ? new Decimal(value) : withoutNoise(value);
  return amount.toDecimalPlaces(2, WAYS[rounding]).toNumber();
}
