import { describe, expect, test } from 'vitest';
import { formatQuantity } from '../../src/quantity/formatQuantity';

describe('formatQuantity', () => {
  test.each([
    [{ value: 1, unit: 'cup' }, {}, '1 cup'],
    [{ value: 1.5, unit: 'cup' }, {}, '1 1/2 cups'],
    [{ value: 0.25, unit: 'cup' }, {}, '1/4 cup'],
    [{ value: 0, unit: 'cup' }, {}, '0 cups'],
    [{ value: 7 / 3, unit: 'cup' }, { fraction: 3 }, '2 1/3 cups'],
    [{ value: 1.01, unit: 'cup' }, { rounding: 'up', fraction: 8 }, '1 1/8 cups'],
    [{ value: 1.99, unit: 'cup' }, { rounding: 'down', fraction: 8 }, '1 7/8 cups'],
    [{ value: 437, unit: 'g' }, { step: 5, rounding: 'down' }, '435 g'],
    [{ value: 3400, unit: 'ft' }, { unit: 'm' }, '1036 m'],
    [{ value: 62, unit: 'lb' }, { unit: 'kg' }, '28.12 kg'],
    [{ value: 212, unit: 'degF' }, { unit: 'degC' }, '100 °C'],
    [{ value: 5, unit: 'delta degF' }, { unit: 'degC', step: 0.1 }, '2.8 °C'],
    [{ value: 12345.6, unit: 'J' }, {}, '12345.6 J'],
    [{ value: -12345, unit: 'ft' }, {}, '-12,345 ft'],
  ] as const)('%o %o', (quantity, options, text) => expect(formatQuantity(quantity, options)).toBe(text));

  test('a text is read first', () => expect(formatQuantity('2 lb 3 oz')).toBe('2 1/4 lb'));

  test.each([
    ['1 cup', { unit: 'g' }, 'WRONG_DIMENSION'],
    ['1 cup', { unit: 'parsec' }, 'WRONG_DIMENSION'],
    ['1 cup', { step: 0 }, 'OUT_OF_RANGE'],
    ['1 cup', { step: Number.NaN }, 'OUT_OF_RANGE'],
    ['cup', {}, 'NOT_A_QUANTITY'],
  ] as const)('%s %o: %s', (quantity, options, code) => {
    expect(() => formatQuantity(quantity, options)).toThrow(expect.objectContaining({ code }));
  });
});
