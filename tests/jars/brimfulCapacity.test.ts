import { describe, expect, test } from 'vitest';
import { brimfulCapacity } from '../../src/jars/index';
import { codeOf, pathOf } from '../helpers/errors';

describe('brimfulCapacity', () => {
  test.each([
    // CRC densities of water at 1 atm
    [20, 998.2071],
    [30, 995.6502],
    [60, 983.2],
  ])('a liter of water at %d degC weighs %d g', (value, grams) => {
    const { brimful } = brimfulCapacity({
      water: { value: grams, unit: 'g' },
      temperature: { value, unit: 'degC' },
    });
    expect(brimful.unit).toBe('mL');
    expect(brimful.value).toBeCloseTo(1000, 0);
  });

  test('a weight in ounces gives fluid ounces', () => {
    expect(brimfulCapacity({ water: '17 oz', temperature: '68 degF' }).brimful).toEqual({
      // 17 oz = 481.9417 g; / 0.9982 g/mL = 482.81 mL = 16.326 fl oz
      value: expect.closeTo(16.326, 3),
      unit: 'fl oz',
    });
    expect(brimfulCapacity({ water: '1 lb', temperature: '68 degF' }).brimful.unit).toBe('fl oz');
  });

  test.each([
    [{ water: '0 g', temperature: '20 degC' }, 'OUT_OF_RANGE', 'water'],
    [{ water: '500 mL', temperature: '20 degC' }, 'WRONG_DIMENSION', 'water'],
    [{ water: '500 g', temperature: '-5 degC' }, 'OUT_OF_RANGE', 'temperature'],
    [{ water: '500 g' }, 'MISSING', 'temperature'],
  ])('%j fails with %s at %s', (input, code, path) => {
    expect(codeOf(() => brimfulCapacity(input as never))).toBe(code);
    expect(pathOf(() => brimfulCapacity(input as never))).toBe(path);
  });
});
