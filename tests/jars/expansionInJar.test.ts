import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { expansionInJar } from '../../src/jars/index';
import { codeOf, pathOf } from '../helpers/errors';

const raw = { fillTemperature: '20 degC', processTemperature: '100 degC' } as const;

describe('expansionInJar', () => {
  test('6% of headspace, 20 to 100 degC: 0.0391 of the jar, 0.6516 of the headspace', () => {
    // arithmetic on 998.21 and 958.35 kg/m3
    const answer = expansionInJar({ headspaceShare: 0.06, ...raw });
    expect(answer.growthShare).toBeCloseTo(0.0391, 4);
    expect(answer.headspaceTaken).toBeCloseTo(0.6516, 4);
    expect(answer.overflows).toBe(false);
    expect(answer.growthVolume).toBeUndefined();
  });

  test('a quart filled cold to half an inch runs over at the boil, to an inch it does not', () => {
    // (946.35 - 36.3) mL x 0.04159 = 37.85 mL against 36.3 mL
    const half = expansionInJar({ jar: 'quart', headspace: '1/2 in', ...raw });
    expect(half.overflows).toBe(true);
    expect(half.growthVolume).toEqual({ value: expect.closeTo(37.85 / 29.5735, 2), unit: 'fl oz' });
    expect(half.overflow?.value).toBeCloseTo((37.85 - 36.3) / 29.5735, 2);
    expect(half.cautions.map(({ id }) => id)).toContain('overflow');
    const inch = expansionInJar({ jar: 'quart', headspace: '1 in', ...raw });
    expect(inch).toMatchObject({ overflows: false, overflow: { value: 0, unit: 'fl oz' } });
    expect(inch.cautions.map(({ id }) => id)).not.toContain('overflow');
  });

  test('the same temperature grows nothing; a hotter process and a colder filling grow more', () => {
    expect(
      expansionInJar({ headspaceShare: 0.1, fillTemperature: '80 degC', processTemperature: '80 degC' }).growthShare,
    ).toBe(0);
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.double({ min: 61, max: 119, noNaN: true }),
        (fill, process) => {
          const grown = (from: number, to: number) =>
            expansionInJar({
              headspaceShare: 0.1,
              fillTemperature: { value: from, unit: 'degC' },
              processTemperature: { value: to, unit: 'degC' },
            }).growthShare;
          expect(grown(fill, process + 1)).toBeGreaterThan(grown(fill, process));
          expect(grown(fill - 1, process)).toBeGreaterThan(grown(fill, process));
        },
      ),
    );
  });

  test.each([
    [
      { headspaceShare: 0.06, fillTemperature: '90 degC', processTemperature: '80 degC' },
      'CONTRADICTION',
      'processTemperature',
    ],
    [{ ...raw }, 'MISSING', 'jar'],
    [{ jar: 'pint', ...raw }, 'MISSING', 'headspace'],
    [{ headspace: '1 in', ...raw }, 'MISSING', 'jar'],
    [{ jar: 'pint', headspace: '1 in', headspaceShare: 0.06, ...raw }, 'CONTRADICTION', 'headspaceShare'],
    [{ headspaceShare: 0, ...raw }, 'OUT_OF_RANGE', 'headspaceShare'],
    [{ headspaceShare: 1, ...raw }, 'OUT_OF_RANGE', 'headspaceShare'],
    [
      { headspaceShare: 0.06, fillTemperature: '20 degC', processTemperature: '200 degC' },
      'OUT_OF_RANGE',
      'processTemperature',
    ],
  ])('%j fails with %s at %s', (input, code, path) => {
    expect(codeOf(() => expansionInJar(input as never))).toBe(code);
    expect(pathOf(() => expansionInJar(input as never))).toBe(path);
  });
});
