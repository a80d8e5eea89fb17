import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jarsFor } from '../../src/jars/index';
import { valueIn } from '../../src/quantity/scale';
import { codeOf, pathOf } from '../helpers/errors';

/** Takes 500 mL of food under 1 cm of headspace. */
const halfLiter = { brimful: { value: 500 + 9 * Math.PI, unit: 'mL' }, opening: '6 cm' } as const;

describe('jarsFor', () => {
  test('an exact number of jars leaves nothing and readies no jar too many', () => {
    const jars = jarsFor({ volume: '5 L', jar: halfLiter, headspace: '1 cm' });
    expect(jars).toMatchObject({ full: 10, jarsToReady: 10, remainder: { value: 0, unit: 'L' } });
    expect(jars.cautions.map(({ id }) => id)).not.toContain('part-filled-jar');
  });

  test('what is left goes into one jar more, which is not for the canner', () => {
    const jars = jarsFor({ volume: '5200 mL', jar: halfLiter, headspace: '1 cm' });
    expect(jars).toMatchObject({ full: 10, jarsToReady: 11, remainder: { value: expect.closeTo(200, 6), unit: 'mL' } });
    expect(jars.cautions.map(({ id }) => id)).toContain('part-filled-jar');
  });

  test('less than a jarful fills none', () => {
    expect(jarsFor({ volume: '1 cup', jar: 'quart', headspace: '1/2 in' })).toMatchObject({
      full: 0,
      jarsToReady: 1,
      remainder: { value: expect.closeTo(1, 12), unit: 'cup' },
    });
  });

  test('no food is lost: full jars and the remainder make up the volume; jars to ready are full or one more', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('half-pint', 'pint', 'wide-mouth pint', 'quart'),
        fc.double({ min: 0.01, max: 500, noNaN: true }),
        fc.constantFrom('1/4 in', '1/2 in', '1 in'),
        (jar, liters, headspace) => {
          const answer = jarsFor({ volume: { value: liters, unit: 'L' }, jar, headspace: headspace as '1 in' });
          const each = valueIn(answer.fillVolume, 'L');
          expect(answer.full * each + answer.remainder.value).toBeCloseTo(liters, 6);
          expect(answer.remainder.value).toBeGreaterThanOrEqual(0);
          expect(answer.remainder.value).toBeLessThan(each);
          expect(answer.jarsToReady - answer.full).toBe(answer.remainder.value > 0 ? 1 : 0);
        },
      ),
    );
  });

  test.each([
    [{ volume: '0 L', jar: 'pint', headspace: '1/2 in' }, 'OUT_OF_RANGE', 'volume'],
    [{ volume: '3 lb', jar: 'pint', headspace: '1/2 in' }, 'WRONG_DIMENSION', 'volume'],
    [{ volume: '', jar: 'pint', headspace: '1/2 in' }, 'NOT_A_QUANTITY', 'volume'],
    [{ volume: '1/0 cup', jar: 'pint', headspace: '1/2 in' }, 'NOT_A_QUANTITY', 'volume'],
    [{ volume: '10000 L', jar: 'pint', headspace: '1/2 in' }, 'TOO_MUCH', 'volume'],
    [{ volume: '3 L', jar: 'pint', headspace: '10 in' }, 'OUT_OF_RANGE', 'headspace'],
    [{ volume: '3 L', headspace: '1/2 in' }, 'MISSING', 'jar'],
  ])('%j fails with %s at %s', (input, code, path) => {
    expect(codeOf(() => jarsFor(input as never))).toBe(code);
    expect(pathOf(() => jarsFor(input as never))).toBe(path);
  });
});
