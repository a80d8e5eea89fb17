import { describe, expect, test } from 'vitest';
import { listedSize, readJar } from '../../src/process/jar';
import { thrownBy as errorOf } from '../helpers/errors';

describe('readJar', () => {
  test.each([
    ['pint', 'pint', 16],
    ['Pints', 'pint', 16],
    ['pint jar', 'pint', 16],
    ['1 pint', 'pint', 16],
    ['16 oz', 'pint', 16],
    ['wide-mouth pint', 'pint', 16],
    ['half-pint (8 oz)', 'half-pint', 8],
    ['half pint', 'half-pint', 8],
    ['8 oz jelly jar', 'half-pint', 8],
    ['1 cup', 'half-pint', 8],
    ['quart', 'quart', 32],
    ['half-gallon (64 oz)', 'half-gallon', 64],
    ['12 oz', '12 oz', 12],
    ['1 1/2 pint (24 oz)', '1 1/2 pint', 24],
    ['28 fl oz', '28 fl oz', 28],
    [{ value: 0.5, unit: 'gallon' }, 'half-gallon', 64],
    [{ value: 12, unit: 'fl oz' }, '12 fl oz', 12],
  ] as const)('%o', (given, name, ounces) => {
    const jar = readJar(given);
    expect(jar.name).toBe(name);
    expect(listedSize(jar, ['half-pint', 'pint', 'quart', 'half-gallon'])).toBe(
      ounces <= 8 ? 'half-pint' : ounces <= 16 ? 'pint' : ounces <= 32 ? 'quart' : 'half-gallon',
    );
  });

  test.each([
    [undefined, 'MISSING'],
    [null, 'WRONG_TYPE'],
    [7, 'WRONG_TYPE'],
    ['', 'UNKNOWN_NAME'],
    ['bucket', 'UNKNOWN_NAME'],
    ['x'.repeat(10_000), 'UNKNOWN_NAME'],
    ['2 lb', 'WRONG_DIMENSION'],
    ['0 oz', 'OUT_OF_RANGE'],
    ['-1 pint', 'OUT_OF_RANGE'],
    ['1/0 cup', 'UNKNOWN_NAME'],
    [{ value: Number.NaN, unit: 'pint' }, 'OUT_OF_RANGE'],
    [{ value: 1, unit: 'kg' }, 'WRONG_DIMENSION'],
  ])('%o is an error', (given, code) => {
    expect(errorOf(() => readJar(given))).toMatchObject({ code, path: expect.stringMatching(/^jar/) });
  });

  test('the next larger listed size, and none beyond the largest', () => {
    expect(listedSize(readJar('12 oz'), ['quart'])).toBe('quart');
    expect(listedSize(readJar('500 mL'), ['pint', 'quart'])).toBe('quart');
    expect(listedSize(readJar('473.176473 mL'), ['pint', 'quart'])).toBe('pint');
    expect(listedSize(readJar('quart'), ['half-pint', 'pint'])).toBeUndefined();
  });
});
