import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/index';
import { parseQuantity } from '../../src/quantity/parseQuantity';

describe('what people write', () => {
  test.each([
    ['62 lb', 62, 'lb'],
    ['1 1/2 cups', 1.5, 'cup'],
    ['1-1/2 cups', 1.5, 'cup'],
    ['1½ cups', 1.5, 'cup'],
    ['1 ½ cups', 1.5, 'cup'],
    ['½ in', 0.5, 'in'],
    ['½in', 0.5, 'in'],
    ['3/8 inch', 0.375, 'in'],
    ['3⁄8 inch', 0.375, 'in'],
    ['.5 tsp', 0.5, 'tsp'],
    ['2.50 kg', 2.5, 'kg'],
    ['3,400 ft', 3400, 'ft'],
    ['1,234,567.5 g', 1234567.5, 'g'],
    ['2 lb 3 oz', 2.1875, 'lb'],
    ['2 lb and 3 oz', 2.1875, 'lb'],
    ['1 cup + 2 tbsp', 1.125, 'cup'],
    ['5 ft 4 in', 64 / 12, 'ft'],
    ['1 h 30 min', 1.5, 'h'],
    ['-40 degF', -40, 'degF'],
    ['−40 degF', -40, 'degF'],
    ['240 °F', 240, 'degF'],
    ['5 in3', 5, 'in3'],
    ['12 fl oz', 12, 'fl oz'],
    ['  7   Quarts ', 7, 'quart'],
  ])('%s', (text, value, unit) => expect(parseQuantity(text)).toEqual({ value, unit }));

  test('an object', () => {
    expect(parseQuantity({ value: 3, unit: 'pounds' })).toEqual({ value: 3, unit: 'lb' });
    expect(parseQuantity({ value: 18, unit: 'degF' }, 'temperatureDifference')).toEqual({
      value: 18,
      unit: 'delta degF',
    });
  });
});

describe('what cannot be read', () => {
  test.each<[unknown, string]>([
    ['', 'NOT_A_QUANTITY'],
    ['   ', 'NOT_A_QUANTITY'],
    ['cup', 'NOT_A_QUANTITY'],
    ['5', 'NOT_A_QUANTITY'],
    ['1/0 cup', 'NOT_A_QUANTITY'],
    ['1 1/0 cup', 'NOT_A_QUANTITY'],
    ['1,5 kg', 'NOT_A_QUANTITY'],
    ['2 lb -3 oz', 'UNKNOWN_UNIT'],
    ['-2 lb 3 oz', 'NOT_A_QUANTITY'],
    ['2 lb 3 cups', 'NOT_A_QUANTITY'],
    ['10 degC 5 degC', 'NOT_A_QUANTITY'],
    ['x'.repeat(10_000), 'NOT_A_QUANTITY'],
    ['1'.repeat(10_000), 'NOT_A_QUANTITY'],
    ['1 C', 'UNKNOWN_UNIT'],
    ['1 T', 'UNKNOWN_UNIT'],
    ['1 ton', 'UNKNOWN_UNIT'],
    ['1 furlong', 'UNKNOWN_UNIT'],
    [5, 'WRONG_TYPE'],
    [Number.NaN, 'WRONG_TYPE'],
    [null, 'WRONG_TYPE'],
    [[], 'WRONG_TYPE'],
    [undefined, 'MISSING'],
    [{ value: 1 }, 'WRONG_TYPE'],
    [{ value: '1', unit: 'g' }, 'WRONG_TYPE'],
    [{ value: Number.NaN, unit: 'g' }, 'OUT_OF_RANGE'],
    [{ value: Number.POSITIVE_INFINITY, unit: 'g' }, 'OUT_OF_RANGE'],
    [{ value: 1, unit: 'g', size: 2 }, 'UNKNOWN_FIELD'],
    [{ value: 1, unit: 'x'.repeat(10_000) }, 'WRONG_TYPE'],
    [JSON.parse('{"value":1,"unit":"g","__proto__":1}'), 'UNKNOWN_FIELD'],
  ])('%s', (given, code) => {
    expect(() => parseQuantity(given)).toThrow(expect.objectContaining({ code }));
  });

  test('the message says what would be right', () => {
    expect(() => parseQuantity('2 cups', 'mass', 'raw')).toThrow(
      'raw: expected a mass such as "62 lb" or "2 lb 3 oz", not a volume',
    );
    expect(() => parseQuantity('8 oz', 'volume')).toThrow('a volume in ounces is written "fl oz"');
    expect(() => parseQuantity('1 C')).toThrow('write "cup" or "degC"');
    expect(() => parseQuantity('1 furlong', 'length')).toThrow('units: m, mm, cm');
    expect(() => parseQuantity('', 'temperatureDifference')).toThrow('a difference of temperature');
    expect(() => parseQuantity('', 'area')).toThrow('an area such as');
  });

  test('any text gives a finite quantity or the one error', () => {
    const kitchen = fc.stringMatching(/^[-0-9 .,/½¼a-z"'+]{0,24}$/);
    fc.assert(
      fc.property(fc.oneof(kitchen, fc.string()), (text) => {
        try {
          expect(Number.isFinite(parseQuantity(text).value)).toBe(true);
        } catch (error) {
          expect(error).toBeInstanceOf(StillroomError);
        }
      }),
      { numRuns: 3000 },
    );
  });
});
