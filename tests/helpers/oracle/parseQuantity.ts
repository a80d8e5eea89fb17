/** What the reader of quantities is checked against: a grammar that reads every number as a decimal. */

import { fail, show } from '../../../src/errors/StillroomError';
import type { Quantity } from '../../../src/quantity/types';
import { DIMENSIONS, type Dimension, isPointOnly, unitsOf } from '../../../src/quantity/units';
import { isUsualSize } from '../../../src/quantity/usualSize';
import {
  type Amount,
  isDigit,
  isSpace,
  isTwofold,
  isVulgar,
  LONGEST_TEXT,
  oneReadingOf,
  scanAmount,
  skip,
} from './amount';
import { Decimal } from './decimal';
import { type FoundUnit, findUnit } from './findUnit';
import { toDecimalIn } from './scale';

/** An example of each dimension, for error messages. */
const EXAMPLES: Readonly<Record<Dimension, string>> = {
  mass: '"62 lb" or "2 lb 3 oz"',
  volume: '"1 1/2 cups" or "500 mL"',
  length: '"½ in" or "3,400 ft"',
  area: '"140 in2"',
  temperature: '"212 degF" or "100 degC"',
  temperatureDifference: '"18 degF" or "10 degC"',
  pressure: '"11 psi" or "101.325 kPa"',
  time: '"20 min" or "1 h 30 min"',
  energy: '"2 kWh"',
  power: '"1500 W"',
  density: '"1.05 g/mL"',
};

/** A hint for the traps in which one word could be two units. */
const HINTS: ReadonlyMap<string, string> = new Map([
  ['c', 'C could be cups or degrees Celsius: write "cup" or "degC"'],
  ['t', 'T and t are read in two ways: write "tbsp" or "tsp"'],
  ['ton', 'a ton differs by country: write "short ton" or "tonne"'],
  ['tons', 'a ton differs by country: write "short ton" or "tonne"'],
  ['$', 'write the currency code, as in "3.50 USD"'],
]);

const article = (dimension: Dimension): string => {
  const words: Partial<Record<Dimension, string>> = {
    area: 'an area',
    energy: 'an energy',
    temperatureDifference: 'a difference of temperature',
  };
  return words[dimension] ?? `a ${dimension}`;
};
const wanted = (dimension: Dimension): string => `${article(dimension)} such as ${EXAMPLES[dimension]}`;

function unitOrFail(text: string, dimension: Dimension | undefined, path: string, given: unknown) {
  const found = findUnit(text, dimension);
  if (found === undefined) {
    const hint = HINTS.get(text.trim().toLowerCase());
    const expected = dimension === undefined ? 'a known unit' : wanted(dimension);
    const known = dimension === undefined ? '' : ` (units: ${unitsOf(dimension).slice(0, 12).join(', ')})`;
    fail('UNKNOWN_UNIT', path, given, hint ?? `${expected}${known}`);
  }
  if (dimension !== undefined && found.dimension !== dimension) {
    const hint = found.unit === 'oz' && dimension === 'volume' ? '; a volume in ounces is written "fl oz"' : '';
    fail('WRONG_DIMENSION', path, given, `${wanted(dimension)}, not ${article(found.dimension)}${hint}`);
  }
  return found;
}

/** Where a unit ends: before the amount of a next part, as in `2 lb 3 oz` and `2 lb and 3 oz`, or at the end. */
function unitEnd(text: string, start: number): number {
  let at = start;
  while (at < text.length) {
    const gap = skip(text, at, (sign) => !isSpace(sign) && sign !== undefined);
    let next = skip(text, gap, isSpace);
    if (text[next] === '+') next = skip(text, next + 1, isSpace);
    else if (text.startsWith('and', next) && isSpace(text[next + 3])) next = skip(text, next + 3, isSpace);
    const sign = text[next];
    if (isDigit(sign) || isVulgar(sign) || sign === '.' || sign === ',') return gap;
    at = skip(text, gap, isSpace);
  }
  return text.length;
}

interface Part {
  readonly amount: Amount;
  readonly unit: string;
  readonly end: number;
}

/** One amount with its unit from this place on; nothing when there is none. */
function scanPart(text: string, at: number): Part | undefined {
  let start = at;
  if (text[start] === '+') start += 1;
  else if (text.startsWith('and', start) && isSpace(text[start + 3])) start += 3;
  const amount = scanAmount(text, skip(text, start, isSpace));
  if (amount === undefined) return undefined;
  const from = skip(text, amount.end, isSpace);
  const end = unitEnd(text, from);
  const unit = text.slice(from, end);
  return unit === '' || '.,+'.includes(unit.charAt(0)) ? undefined : { amount, unit, end: skip(text, end, isSpace) };
}

/** Whether a quantity of this size may be meant; says so of a bound of the field as well. */
export type Possible = (value: Decimal, unit: string) => boolean;
const anything: Possible = () => true;

/**
 * The one number that an amount means. With a unit that only people with a decimal point write (`3,400 ft`), or where
 * nobody would write the other reading, there is one; otherwise the error shows both.
 */
function oneValue(
  amount: Amount,
  { dimension, unit }: FoundUnit,
  possible: Possible,
  path: string,
  text: string,
): Decimal {
  const { point, comma } = amount;
  if (point !== undefined) {
    if (!isTwofold(amount) || isPointOnly({ dimension, unit })) return point;
    const may = (value: Decimal) => isUsualSize(value.toNumber(), unit, dimension) && possible(value, unit);
    if (comma !== undefined && !may(comma)) return point;
  }
  return fail('NOT_A_QUANTITY', path, text, oneReadingOf(amount, unit));
}

function parseText<D extends Dimension>(
  text: string,
  dimension: D | undefined,
  path: string,
  possible: Possible,
): Quantity<D> {
  const expected = dimension === undefined ? 'an amount and a unit, such as "62 lb"' : wanted(dimension);
  const whole = text.length > LONGEST_TEXT ? '' : text.trim();
  if (whole === '') fail('NOT_A_QUANTITY', path, text, expected);
  let total: Quantity<D> | undefined;
  for (let at = 0; at < whole.length; ) {
    const scanned = scanPart(whole, at);
    const { amount } = scanned ?? {};
    if (scanned === undefined || (amount?.point === undefined && amount?.comma === undefined)) {
      fail('NOT_A_QUANTITY', path, text, expected);
    }
    at = scanned.end;
    const found = unitOrFail(scanned.unit, dimension, path, text);
    const value = oneValue(scanned.amount, found, possible, path, text);
    const part = { value: value.toNumber(), unit: found.unit } as Quantity<D>;
    if (total === undefined) {
      total = part;
      continue;
    }
    // "2 lb 3 oz": the parts add up in the first one's unit; a second part is never negative or of another kind
    const first = findUnit(total.unit, dimension);
    if (value.isNegative() || total.value < 0 || first?.dimension !== found.dimension || isPoint(found.dimension)) {
      fail('NOT_A_QUANTITY', path, text, expected);
    }
    const sum = new Decimal(total.value).plus(toDecimalIn(part, total.unit));
    total = { value: sum.toNumber(), unit: total.unit };
  }
  return total as Quantity<D>;
}

/** Temperatures are points on a scale and do not add up; money is read elsewhere. */
const isPoint = (dimension: Dimension): boolean => dimension === 'temperature';

/**
 * Reads a quantity: a string such as `"1 1/2 cups"`, `"2 lb 3 oz"` or `"½ in"`, or `{ value, unit }`.
 *
 * A number that people of two countries would read differently is refused, showing both readings: `1,250 kg`,
 * `1.036 m`, `0,500 L`. A comma between thousands is read where no other reading makes sense: with a US or imperial
 * unit (`3,400 ft`), with two groups (`1,000,000 g`), or where the other size is one nobody writes down.
 *
 * @param given - what the caller wrote, at most 100 characters
 * @param dimension - what it must be, such as `mass`; any, when left out
 * @param path - the field's name for the error
 * @returns plain `{ value, unit }` with the unit's canonical name
 * @throws StillroomError NOT_A_QUANTITY, UNKNOWN_UNIT, WRONG_DIMENSION, WRONG_TYPE, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { parseQuantity } from 'stillroom/quantity';
 *
 * parseQuantity('1½ cups'); // => { value: 1.5, unit: 'cup' }
 * parseQuantity('2 lb 3 oz', 'mass'); // => { value: 2.1875, unit: 'lb' }
 * parseQuantity('3,400 ft', 'length'); // => { value: 3400, unit: 'ft' }
 * parseQuantity('1,250 kg', 'mass'); // throws StillroomError NOT_A_QUANTITY
 * parseQuantity('2 cups', 'mass'); // throws StillroomError WRONG_DIMENSION
 * ```
 */
export function parseQuantity<D extends Dimension = Dimension>(given: unknown, dimension?: D, path = ''): Quantity<D> {
  if (dimension !== undefined && !DIMENSIONS.includes(dimension)) {
    fail('UNKNOWN_NAME', 'dimension', dimension, `a kind of quantity: ${DIMENSIONS.join(', ')}`);
  }
  return readQuantity(given, dimension, path);
}

/** `parseQuantity` for a field: `possible` says which of two readings the field may hold. */
export function readQuantity<D extends Dimension = Dimension>(
  given: unknown,
  dimension?: D,
  path = '',
  possible: Possible = anything,
): Quantity<D> {
  const expected = dimension === undefined ? 'an amount and a unit, such as "62 lb"' : wanted(dimension);
  if (given === undefined) fail('MISSING', path, given, expected);
  const quantity =
    typeof given === 'string'
      ? parseText(given, dimension, path, possible)
      : readObject(given, dimension, path, expected);
  if (!Number.isFinite(quantity.value)) fail('OUT_OF_RANGE', path, given, `${expected}, finite`);
  return quantity;
}

function readObject<D extends Dimension>(
  given: unknown,
  dimension: D | undefined,
  path: string,
  expected: string,
): Quantity<D> {
  if (typeof given !== 'object' || given === null || Array.isArray(given)) fail('WRONG_TYPE', path, given, expected);
  const extra = Object.keys(given).find((key) => key !== 'value' && key !== 'unit');
  if (extra !== undefined) fail('UNKNOWN_FIELD', path, given, `only value and unit, not ${show(extra)}`);
  const { value, unit } = given as { value?: unknown; unit?: unknown };
  if (typeof unit !== 'string' || unit.length > LONGEST_TEXT) fail('WRONG_TYPE', path, given, expected);
  if (typeof value !== 'number') fail('WRONG_TYPE', path, given, `${expected}, with a number for its value`);
  if (!Number.isFinite(value)) fail('OUT_OF_RANGE', path, value, `${expected}, finite`);
  return { value, unit: unitOrFail(unit, dimension, path, unit).unit } as Quantity<D>;
}
