import { Decimal } from '../common/decimal';
import { fail, show } from '../errors/StillroomError';
import { AMOUNT, parseAmount, VULGAR_CHARACTERS } from './fractions';
import { toDecimalIn } from './scale';
import type { Quantity } from './types';
import { type Dimension, findUnit, unitsOf } from './units';

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
const HINTS: Readonly<Record<string, string>> = {
  c: 'C could be cups or degrees Celsius: write "cup" or "degC"',
  t: 'T and t are read in two ways: write "tbsp" or "tsp"',
  ton: 'a ton differs by country: write "short ton" or "tonne"',
  tons: 'a ton differs by country: write "short ton" or "tonne"',
  $: 'write the currency code, as in "3.50 USD"',
};

const LONGEST = 100;
const ONE_PART = new RegExp(
  String.raw`^(?:\+|and\s)?\s*(${AMOUNT})\s*([^\d\s.,${VULGAR_CHARACTERS}+].*?)(?=\s+(?:\+\s*|and\s+)?[\d.${VULGAR_CHARACTERS}]|$)`,
);

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
    const hint = HINTS[text.trim().toLowerCase()];
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

function parseText<D extends Dimension>(text: string, dimension: D | undefined, path: string): Quantity<D> {
  const expected = dimension === undefined ? 'an amount and a unit, such as "62 lb"' : wanted(dimension);
  let rest = text.trim();
  if (rest === '' || rest.length > LONGEST) fail('NOT_A_QUANTITY', path, text, expected);
  let total: Quantity<D> | undefined;
  while (rest !== '') {
    const match = ONE_PART.exec(rest);
    const amount = match === null ? undefined : parseAmount(match[1] ?? '');
    if (match === null || amount === undefined) fail('NOT_A_QUANTITY', path, text, expected);
    const found = unitOrFail(match[2] ?? '', dimension, path, text);
    rest = rest.slice(match[0].length).trim();
    const part = { value: amount.toNumber(), unit: found.unit } as Quantity<D>;
    if (total === undefined) {
      total = part;
      continue;
    }
    // "2 lb 3 oz": the parts add up in the first one's unit; a second part is never negative or of another kind
    const first = findUnit(total.unit, dimension);
    if (amount.isNegative() || total.value < 0 || first?.dimension !== found.dimension || isPoint(found.dimension)) {
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
 * Reads a quantity: a text such as `"1 1/2 cups"`, `"2 lb 3 oz"` or `"½ in"`, or `{ value, unit }`.
 *
 * @param given - what the caller wrote
 * @param dimension - what it must be; any, when left out
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
 * parseQuantity('2 cups', 'mass'); // throws StillroomError WRONG_DIMENSION
 * ```
 */
export function parseQuantity<D extends Dimension = Dimension>(given: unknown, dimension?: D, path = ''): Quantity<D> {
  const expected = dimension === undefined ? 'an amount and a unit, such as "62 lb"' : wanted(dimension);
  if (given === undefined) fail('MISSING', path, given, expected);
  const quantity =
    typeof given === 'string' ? parseText(given, dimension, path) : readObject(given, dimension, path, expected);
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
  if (typeof unit !== 'string' || unit.length > LONGEST) fail('WRONG_TYPE', path, given, expected);
  if (typeof value !== 'number') fail('WRONG_TYPE', path, given, `${expected}, with a number for its value`);
  if (!Number.isFinite(value)) fail('OUT_OF_RANGE', path, value, `${expected}, finite`);
  return { value, unit: unitOrFail(unit, dimension, path, unit).unit } as Quantity<D>;
}
