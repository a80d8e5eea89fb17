import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convert } from '../../src/quantity/convert';
import { quantityIn, valueIn } from '../../src/quantity/scale';
import { DIMENSIONS, unitsOf } from '../../src/quantity/units';

const loose = convert as (quantity: unknown, unit: unknown) => { value: number; unit: string };

describe('convert', () => {
  test.each([
    ['1 cup', 'mL', 236.5882365],
    ['1 bushel', 'in3', 2150.42],
    ['2 lb 3 oz', 'oz', 35],
    ['½ in', 'mm', 12.7],
    ['1 1/2 cups', 'tsp', 72],
    ['212 °F', 'degC', 100],
    ['0 degC', 'K', 273.15],
    ['1 bar', 'kPa', 100],
  ])('%s in %s', (from, to, value) => expect(loose(from, to)).toEqual({ value, unit: to }));

  test('spelled units come back by their own name', () => {
    expect(loose({ value: 2, unit: 'pounds' }, 'ounces')).toEqual({ value: 32, unit: 'oz' });
    expect(loose('18 delta degF', 'degC')).toEqual({ value: 10, unit: 'delta degC' });
  });

  test('the same unit leaves the value as it was', () => expect(loose('0.1 g', 'g').value).toBe(0.1));

  test('there and back is the same to 1 part in 10^15', () => {
    const pairs = DIMENSIONS.flatMap((dimension) => {
      const units = unitsOf(dimension);
      return units.flatMap((from) => units.map((to) => [from, to] as const));
    });
    fc.assert(
      fc.property(fc.constantFrom(...pairs), fc.double({ min: 1e-6, max: 1e9, noNaN: true }), ([from, to], value) => {
        const back = loose(loose({ value, unit: from }, to), from).value;
        // temperatures shift: the last digit of a small number is lost against 273.15
        const scale = /deg|^K$/.test(from) ? Math.max(value, 1000) : value;
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-15 * scale);
      }),
      { numRuns: 2000 },
    );
  });

  test.each([
    ['2 cups', 'lb', 'WRONG_DIMENSION', 'unit'],
    ['2 cups', 'parsec', 'UNKNOWN_UNIT', 'unit'],
    ['2 cups', 3, 'WRONG_TYPE', 'unit'],
    ['two cups', 'mL', 'NOT_A_QUANTITY', 'quantity'],
    [undefined, 'mL', 'MISSING', 'quantity'],
  ])('%s in %s: %s', (from, to, code, path) => {
    expect(() => loose(from, to)).toThrow(expect.objectContaining({ name: 'StillroomError', code, path }));
  });
});

test('valueIn and quantityIn', () => {
  expect(valueIn({ value: 1, unit: 'quart' }, 'cup')).toBe(4);
  expect(valueIn({ value: 1, unit: 'quart' }, 'quart')).toBe(1);
  expect(quantityIn(4, 'cup', 'quart')).toEqual({ value: 1, unit: 'quart' });
});
