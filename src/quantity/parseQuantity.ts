import { exact } from '../common/exact';
import { fail, show } from '../errors/StillroomError';
import {
  type Amount,
  type Figure,
  isSpace,
  isTwofold,
  LONGEST_TEXT,
  numberOf,
  oneReadingOf,
  scanAmount,
  skipSpaces,
  startsNumber,
} from './amount';
import { exactIn } from './scale';
import type { Quantity } from './types';
import { DIMENSIONS, type Dimension, type FoundUnit, findUnit, isPointOnly, unitsOf } from './units';
import { isUsualSize } from './usualSize';

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
const wanted = (dimension: Dimension | undefined): string =>
  dimension === undefined
    ? 'an amount and a unit, such as "62 lb"'
    : `${article(dimension)} such as ${EXAMPLES[dimension]}`;

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

const PLUS = 43;
/** What may join two parts is skipped: `+`, or `and` with a space after it. */
function skipJoin(text: string, at: number): number {
  if (text.charCodeAt(at) === PLUS) return at + 1;
  return text.startsWith('and', at) && isSpace(text.charCodeAt(at + 3)) ? at + 3 : at;
}

/** Where a unit ends: before the amount of a next part, as in `2 lb 3 oz` and `2 lb and 3 oz`, or at the end. */
function unitEnd(text: string, start: number): number {
  let at = start;
  while (at < text.length) {
    let gap = at;
    while (gap < text.length && !isSpace(text.charCodeAt(gap))) gap += 1;
    if (gap === text.length) return gap;
    at = skipSpaces(text, gap);
    if (startsNumber(text.charCodeAt(skipSpaces(text, skipJoin(text, at))))) return gap;
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
  const amount = scanAmount(text, skipSpaces(text, skipJoin(text, at)));
  if (amount === undefined) return undefined;
  const from = skipSpaces(text, amount.end);
  const end = unitEnd(text, from);
  const unit = text.slice(from, end);
  return unit === '' || '.,+'.includes(unit.charAt(0)) ? undefined : { amount, unit, end: skipSpaces(text, end) };
}

/** Whether a quantity of this size may be meant; says so of a bound of the field as well. */
export type Possible = (value: number, unit: string) => boolean;
const anything: Possible = () => true;

/**
 * The one number that an amount means. With a unit that only people with a decimal point write (`3,400 ft`), or where
 * nobody would write the other reading, there is one; otherwise the error shows both.
 */
function oneValue(amount: Amount, found: FoundUnit, possible: Possible, path: string, text: string): Figure {
  const { point, comma } = amount;
  const { dimension, unit } = found;
  if (point !== undefined) {
    if (!isTwofold(amount) || isPointOnly(found)) return point;
    const may = (value: number) => isUsualSize(value, unit, dimension) && possible(value, unit);
    if (comma !== undefined && !may(numberOf(comma))) return point;
  }
  return fail('NOT_A_QUANTITY', path, text, oneReadingOf(amount, unit));
}

const unread = (text: string, dimension: Dimension | undefined, path: string): never =>
  fail('NOT_A_QUANTITY', path, text, wanted(dimension));

function parseText<D extends Dimension>(
  text: string,
  dimension: D | undefined,
  path: string,
  possible: Possible,
): Quantity<D> {
  const whole = text.length > LONGEST_TEXT ? '' : text.trim();
  if (whole === '') unread(text, dimension, path);
  let total: Quantity<D> | undefined;
  for (let at = 0; at < whole.length; ) {
    const scanned = scanPart(whole, at);
    if (scanned === undefined || (scanned.amount.point === undefined && scanned.amount.comma === undefined)) {
      return unread(text, dimension, path);
    }
    at = scanned.end;
    const found = unitOrFail(scanned.unit, dimension, path, text);
    const value = oneValue(scanned.amount, found, possible, path, text);
    const part = { value: numberOf(value), unit: found.unit } as Quantity<D>;
    if (total === undefined) {
      total = part;
      continue;
    }
    // "2 lb 3 oz": the parts add up in the first one's unit; a second part is never negative or of another kind
    const first = findUnit(total.unit, dimension);
    const negative = part.value < 0 || total.value < 0;
    if (negative || first?.dimension !== found.dimension || isPoint(found.dimension)) unread(text, dimension, path);
    const sum = exact(total.value).plus(exactIn(part, total.unit));
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
  if (given === undefined) fail('MISSING', path, given, wanted(dimension));
  const quantity =
    typeof given === 'string' ? parseText(given, dimension, path, possible) : readObject(given, dimension, path);
  if (!Number.isFinite(quantity.value)) fail('OUT_OF_RANGE', path, given, `${wanted(dimension)}, finite`);
  return quantity;
}

function readObject<D extends Dimension>(given: unknown, dimension: D | undefined, path: string): Quantity<D> {
  if (typeof given !== 'object' || given === null || Array.isArray(given)) {
    fail('WRONG_TYPE', path, given, wanted(dimension));
  }
  for (const key in given) {
    if (key === 'value' || key === 'unit' || !Object.hasOwn(given, key)) continue;
    fail('UNKNOWN_FIELD', path, given, `only value and unit, not ${show(key)}`);
  }
  const { value, unit } = given as { value?: unknown; unit?: unknown };
  if (typeof unit !== 'string' || unit.length > LONGEST_TEXT) fail('WRONG_TYPE', path, given, wanted(dimension));
  if (typeof value !== 'number') {
    fail('WRONG_TYPE', path, given, `${wanted(dimension)}, with a number for its value`);
  }
  if (!Number.isFinite(value)) fail('OUT_OF_RANGE', path, value, `${wanted(dimension)}, finite`);
  return { value, unit: unitOrFail(unit, dimension, path, unit).unit } as Quantity<D>;
}
