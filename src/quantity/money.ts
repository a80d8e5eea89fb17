import { type Exact, exact, type Rounding } from '../common/exact';
import { fail } from '../errors/StillroomError';
import { amountOf, isTwofold, numberOf, oneReadingOf } from './amount';
import type { Money } from './types';

const EXPECTED = 'an amount with its three-letter currency code, such as "24.50 USD"';
const LARGEST = 1e12;
const LONGEST_TEXT = 40;
const CURRENCY = /^[A-Z]{3}$/;

/** Currencies of countries that write a decimal point only; `1,250 EUR` is read in two ways, `1,250 USD` in one. */
const POINT_ONLY = new Set(['AUD', 'GBP', 'NZD', 'USD']);

/** The number of an amount of money, where its currency leaves one reading. */
function readMoneyNumber(text: string, currency: string, path: string): number | undefined {
  const amount = amountOf(text);
  if (amount === undefined || (amount.point === undefined && amount.comma === undefined)) return undefined;
  const { point } = amount;
  if (point !== undefined && (POINT_ONLY.has(currency) || !isTwofold(amount))) return numberOf(point);
  return fail('NOT_A_QUANTITY', path, `${text.trim()} ${currency}`, oneReadingOf(amount, currency));
}

/**
 * Reads an amount of money: `"24.50 USD"` or `{ value, unit }`. Currencies are never converted. A number that people
 * of two countries would read differently (`1,250 EUR`) is refused, showing both readings.
 *
 * @throws StillroomError NOT_A_QUANTITY, WRONG_TYPE, OUT_OF_RANGE (below zero or beyond 10^12)
 */
export function parseMoney(given: unknown, path = ''): Money {
  if (given === undefined) fail('MISSING', path, given, EXPECTED);
  let value: number | undefined;
  let unit: unknown;
  if (typeof given === 'string') {
    const text = given.length <= LONGEST_TEXT ? given.trim() : '';
    unit = text.slice(-3);
    value = CURRENCY.test(text.slice(-3)) ? readMoneyNumber(text.slice(0, -3), text.slice(-3), path) : undefined;
    if (value === undefined) fail('NOT_A_QUANTITY', path, given, EXPECTED);
  } else {
    if (typeof given !== 'object' || given === null || Array.isArray(given)) fail('WRONG_TYPE', path, given, EXPECTED);
    const fields = given as { value?: unknown; unit?: unknown };
    if (typeof fields.value !== 'number') fail('WRONG_TYPE', path, given, EXPECTED);
    value = fields.value;
    unit = fields.unit;
  }
  if (typeof unit !== 'string' || !CURRENCY.test(unit)) fail('NOT_A_QUANTITY', path, given, EXPECTED);
  if (!(value >= 0 && value <= LARGEST)) fail('OUT_OF_RANGE', path, given, `${EXPECTED}, not below zero`);
  return { value, unit };
}

/** Anything smaller than this comes from the arithmetic, and adds no cent. */
const DIGITS = 8;

/** An amount without the noise of its arithmetic, to be rounded or shared out. */
export const withoutNoise = (value: Exact | number): Exact => exact(value).toPlaces(DIGITS);

/** Rounds to the cent (two places), half up by default: the last step of every sum of money. */
export function toCents(value: Exact | number, rounding: Rounding = 'nearest'): number {
  const amount = rounding === 'nearest' ? exact(value) : withoutNoise(value);
  return amount.toPlaces(2, rounding).toNumber();
}
