import { describe, expect, test } from 'vitest';
import { seeded } from '../../src/common/seeded';
import { compareIn, exactIn, inUnit, quantityIn, valueIn } from '../../src/quantity/scale';
import { DIMENSIONS, unitsOf } from '../../src/quantity/units';
import { toDecimalIn as byDecimals } from '../helpers/oracle/scale';

const PAIRS = DIMENSIONS.flatMap((dimension) => {
  const units = unitsOf(dimension);
  return units.flatMap((from) => units.map((to) => [from, to] as const));
});
const asDefined = (value: number, from: string, to: string): number => byDecimals({ value, unit: from }, to).toNumber();
/** The conversions that give another double than the definition, or a zero of another sign. */
function differing(values: (index: number) => number, rounds: number): string[] {
  const found: string[] = [];
  for (let index = 0; index < rounds; index++) {
    const [from, to] = PAIRS[index % PAIRS.length] as (typeof PAIRS)[number];
    const value = values(index);
    const [ours, defined] = [inUnit(value, from, to), asDefined(value, from, to)];
    if (!Object.is(ours, defined)) found.push(`${value} ${from} in ${to}: ${ours}, not ${defined}`);
  }
  return found;
}

describe('a conversion is the double that its definition gives', () => {
  const random = seeded(14);
  const sign = () => (random() < 0.2 ? -1 : 1);
  const kinds: [what: string, value: () => number][] = [
    ['numbers as people write them', () => sign() * Number((random() * 10 ** (random() * 6)).toFixed(random() * 4))],
    ['results of a calculation', () => sign() * random() * 10 ** (random() * 18 - 9)],
    ['whole numbers', () => sign() * Math.round(random() * 10 ** (random() * 17))],
    ['parts in thirds and sixteenths', () => Math.round(random() * 500) / (3 + Math.floor(random() * 14))],
    ['any size', () => sign() * random() * 10 ** (random() * 240 - 120)],
  ];
  test.each(kinds)('%s: 20,000 over all pairs of units', (_, value) => {
    expect(differing(value, 20_000)).toEqual([]);
  });

  test('back from the double of a round number, where the result is all but halfway', () => {
    const round = () => Number((random() * 1000).toFixed(2));
    const values = (index: number): number => {
      const [from, to] = PAIRS[index % PAIRS.length] as (typeof PAIRS)[number];
      return asDefined(round(), to, from);
    };
    expect(differing(values, PAIRS.length)).toEqual([]);
  });

  test.each([
    [32, 'degF', 'degC'],
    [0, 'degC', 'K'],
    [-0, 'lb', 'kg'],
    [273.15, 'K', 'degC'],
    [5003999585967225, 'delta degC', 'delta degF'],
    [Number.MAX_VALUE, 'g', 'tonne'],
    [Number.MIN_VALUE, 'kg', 'g'],
    [Number.POSITIVE_INFINITY, 'kg', 'g'],
  ])('%s %s in %s', (value, from, to) => {
    expect(inUnit(value, from, to)).toBe(asDefined(value, from, to));
  });
});

test('the exact number is that of the definition, to 35 of its 40 digits', () => {
  for (const [from, to] of PAIRS) {
    const [ours, defined] = [exactIn({ value: 1.7, unit: from }, to), byDecimals({ value: 1.7, unit: from }, to)];
    expect(ours.toDigits(35).toString()).toBe(defined.toSignificantDigits(35).toFixed());
  }
});

test('absolute zero is zero: 40 digits leave a rest', () => {
  expect(inUnit(-459.67, 'degF', 'K')).toBe(0);
  expect(asDefined(-459.67, 'degF', 'K')).not.toBe(0);
});

test('valueIn and quantityIn', () => {
  expect(valueIn({ value: 1, unit: 'quart' }, 'cup')).toBe(4);
  expect(valueIn({ value: 1, unit: 'quart' }, 'quart')).toBe(1);
  expect(quantityIn(4, 'cup', 'quart')).toEqual({ value: 1, unit: 'quart' });
});

test.each([
  ['304.8 m is 1,000 ft', 304.8, 'm', 'ft', 1000, 0],
  ['the next double is above', 304.80000000000007, 'm', 'ft', 1000, 1],
  ['the one before is below', 304.79999999999995, 'm', 'ft', 1000, -1],
  ['the same unit', 3, 'ft', 'ft', 3, 0],
  ['below in the same unit', 2, 'ft', 'ft', 3, -1],
] as const)('compareIn: %s', (_, value, from, to, limit, order) => {
  expect(Math.sign(compareIn({ value, unit: from }, to, limit))).toBe(order);
});

test('compareIn asks exact numbers where the doubles are the same', () => {
  const quantity = { value: 1 / 3, unit: 'm' };
  const limit = inUnit(quantity.value, 'm', 'in');
  expect(Math.sign(compareIn(quantity, 'in', limit))).toBe(byDecimals(quantity, 'in').cmp(limit));
  expect(Math.sign(compareIn(quantity, 'in', limit))).not.toBe(0);
});
