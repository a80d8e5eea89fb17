import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadsFor } from '../../src/jars/index';
import { methodRows } from '../../src/words/method';
import { codeOf, pathOf } from '../helpers/errors';

const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);

describe('loadsFor', () => {
  test('7 quarts or 9 pints a load (USDA guides)', () => {
    expect(loadsFor({ jars: 7, jar: 'quart' })).toMatchObject({ loads: 1, perLoad: 7, lastLoad: 7 });
    expect(loadsFor({ jars: 10, jar: 'pint' })).toMatchObject({ loads: 2, perLoad: 9, lastLoad: 1 });
    expect(loadsFor({ jars: 18, jar: 'pints', canner: 'large pressure canner' }).loads).toBe(1);
    expect(loadsFor({ jars: 5, jar: 'quart', canner: 'small pressure' })).toMatchObject({ loads: 2, lastLoad: 1 });
  });

  test.each([
    'boiling-water',
    'water bath canner',
    'atmospheric steam',
    'pressure canner',
    'dial-gauge',
    'weighted gauge',
  ])('a %s takes the usual load', (canner) => {
    expect(loadsFor({ jars: 9, jar: 'pint', canner }).perLoad).toBe(9);
  });

  test('a size with no printed load counts as the next larger one and says so', () => {
    for (const [jar, perLoad] of [
      ['4 oz', 9],
      ['half-pint', 9],
      ['12 oz', 9],
      ['24 oz', 7],
      ['28 oz', 7],
    ] as const) {
      const answer = loadsFor({ jars: 30, jar });
      expect(answer.perLoad).toBe(perLoad);
      expect(ids(answer)).toContain('load-not-printed');
      expect(answer.basis.at(-1)?.kind).toBe('common-practice');
    }
    expect(ids(loadsFor({ jars: 30, jar: 'pint' }))).toEqual(['rack-differs']);
  });

  test('every name of a canner is understood', () => {
    for (const { name, synonyms = [] } of methodRows) {
      for (const canner of [name, ...synonyms]) {
        expect(loadsFor({ jars: 14, jar: 'quart', canner })).toMatchObject({ loads: 2, perLoad: 7 });
      }
    }
  });

  test('a jar named by its volume is counted as the next larger size', () => {
    expect(loadsFor({ jars: 9, jar: '500 mL' })).toMatchObject({ loads: 2, perLoad: 7 });
    expect(loadsFor({ jars: 9, jar: '500 mL', canner: { '500 mL': 9, quart: 7 } }).perLoad).toBe(9);
  });

  test('your own canner goes before the printed load', () => {
    const own = loadsFor({ jars: 20, jar: 'pint', canner: { quart: 5, pint: 8 } });
    expect(own).toMatchObject({ loads: 3, perLoad: 8, lastLoad: 4, cautions: [] });
    expect(own.basis).toEqual([{ of: 'perLoad', kind: 'measured', note: 'pint jars in a full load' }]);
    expect(loadsFor({ jars: 20, jar: 'half-pint', canner: { quarts: 5 } }).perLoad).toBe(5);
    expect(loadsFor({ jars: 4, jar: { size: 'pint', brimful: '495 mL', mouth: 'regular' } }).perLoad).toBe(9);
  });

  test('a half-gallon load is never guessed', () => {
    expect(pathOf(() => loadsFor({ jars: 3, jar: 'half-gallon' }))).toBe('canner');
    const own = loadsFor({ jars: 3, jar: 'half-gallon', canner: { 'half-gallon': 4 } });
    expect(own.loads).toBe(1);
    expect(ids(own)).toEqual(['half-gallon-juice-only']);
  });

  test('a small last load matters only under pressure; the figure is recalled and says so', () => {
    const pressure = loadsFor({ jars: 10, jar: 'pint', canner: 'pressure' });
    expect(ids(pressure)).toContain('small-pressure-load');
    expect(pressure.basis.at(-1)).toMatchObject({ kind: 'recalled' });
    expect(ids(loadsFor({ jars: 10, jar: 'pint' }))).not.toContain('small-pressure-load');
    expect(ids(loadsFor({ jars: 13, jar: 'pint', canner: 'pressure' }))).not.toContain('small-pressure-load');
  });

  test('full loads and the last one hold every jar', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 40 }), (jars, pint) => {
        const { loads, perLoad, lastLoad } = loadsFor({ jars, jar: 'pint', canner: { pint } });
        expect((loads - 1) * perLoad + lastLoad).toBe(jars);
        expect(lastLoad).toBeGreaterThan(0);
        expect(lastLoad).toBeLessThanOrEqual(perLoad);
      }),
    );
  });

  test.each([
    [{ jars: 10_000, jar: 'pint' }, 'OUT_OF_RANGE', 'jars'],
    [{ jars: 0, jar: 'pint' }, 'OUT_OF_RANGE', 'jars'],
    [{ jars: 2.5, jar: 'pint' }, 'OUT_OF_RANGE', 'jars'],
    [{ jars: Number.NaN, jar: 'pint' }, 'OUT_OF_RANGE', 'jars'],
    [{ jars: '9', jar: 'pint' }, 'WRONG_TYPE', 'jars'],
    [{ jars: 9, jar: 'tub' }, 'UNKNOWN_NAME', 'jar'],
    [{ jars: 9, jar: { brimful: '1 L' } }, 'MISSING', 'canner'],
    [{ jars: 9, jar: {} }, 'MISSING', 'jar.brimful'],
    [{ jars: 9, jar: { size: 'tub' } }, 'UNKNOWN_NAME', 'jar.size'],
    [{ jars: 9, jar: 'pint', canner: 'oven' }, 'UNKNOWN_NAME', 'canner'],
    [{ jars: 9, jar: 'pint', canner: 7 }, 'WRONG_TYPE', 'canner'],
    [{ jars: 9, jar: 'pint', canner: { pint: 0 } }, 'OUT_OF_RANGE', 'canner.pint'],
    [{ jars: 9, jar: 'pint', canner: { tub: 4 } }, 'UNKNOWN_NAME', 'canner.tub'],
    [{ jars: 9, jar: 'quart', canner: { pint: 9 } }, 'MISSING', 'canner'],
    [{ jars: 9, jar: 'quart', canner: {} }, 'MISSING', 'canner'],
  ])('%j fails with %s at %s', (input, code, path) => {
    expect(codeOf(() => loadsFor(input as never))).toBe(code);
    expect(pathOf(() => loadsFor(input as never))).toBe(path);
  });
});
