import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitIsotherm } from '../../src/water-activity/fitIsotherm';
import { isothermActivity } from '../../src/water-activity/isothermActivity';
import { isothermMoisture } from '../../src/water-activity/isothermMoisture';
import { saturatedSaltHumidity } from '../../src/water-activity/saturatedSaltHumidity';

const SALTS = ['LiCl', 'MgCl2', 'NaCl', 'KCl'];
/** Dishes of 10 g at 5 percent moisture that came to rest on the curve X = A (aw / (1 - aw))^B. */
const dishesOf = (A: number, B: number, salts = SALTS, off = 0) =>
  salts.map((solute, index) => {
    const aw = saturatedSaltHumidity({ solute }).relativeHumidity;
    const X = A * (aw / (1 - aw)) ** B * (1 + (index % 2 === 0 ? off : -off));
    return { solute, massBefore: '10 g' as const, massAfter: { value: 9.5 * (1 + X), unit: 'g' as const } };
  });

describe('the isotherm of a powder over saturated salts', () => {
  test('is found again, and taken by the other functions', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.4, noNaN: true }),
        fc.double({ min: 0.2, max: 1.2, noNaN: true }),
        (A, B) => {
          const {
            isotherm: parameters,
            points,
            moistureError,
          } = fitIsotherm({ moisture: 0.05, dishes: dishesOf(A, B) });
          expect(parameters.A).toBeCloseTo(A, 9);
          expect(parameters.B).toBeCloseTo(B, 9);
          expect(points.every(({ residual }) => Math.abs(residual) < 1e-9)).toBe(true);
          expect(moistureError).toBeGreaterThan(0);
          const at = isothermMoisture({ parameters, waterActivity: 0.5 });
          expect(at.known && at.moisture).toBeCloseTo(A, 9);
          const back = isothermActivity({ parameters, moisture: A });
          expect(back.known && back.waterActivity).toBeCloseTo(0.5, 9);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('has the error of its scatter, and no less than that of the scale', () => {
    const even = fitIsotherm({ moisture: 0.05, dishes: dishesOf(0.15, 0.6) });
    const uneven = fitIsotherm({ moisture: 0.05, dishes: dishesOf(0.15, 0.6, SALTS, 0.05) });
    expect(uneven.moistureError).toBeGreaterThan(0.04);
    expect(even.moistureError).toBeLessThan(0.01);
    const coarse = fitIsotherm({ moisture: 0.05, scaleStep: '0.1 g', dishes: dishesOf(0.15, 0.6) });
    expect(coarse.moistureError / even.moistureError).toBeCloseTo(10, 6);
  });

  test('is not asked outside of its dishes', () => {
    const { isotherm: parameters } = fitIsotherm({ moisture: 0.05, dishes: dishesOf(0.15, 0.6, ['MgCl2', 'NaCl']) });
    expect(() => isothermMoisture({ parameters, waterActivity: 0.9 })).toThrow(/waterActivity/);
  });

  test('needs two salts, dishes that gained or kept water, and salts of the tables', () => {
    expect(() => fitIsotherm({ moisture: 0.05, dishes: dishesOf(0.15, 0.6, ['NaCl', 'NaCl']) })).toThrow(/two salts/);
    const dry = [{ solute: 'NaCl', massBefore: '10 g', massAfter: '9 g' }, ...dishesOf(0.15, 0.6, ['MgCl2'])] as const;
    expect(() => fitIsotherm({ moisture: 0.05, dishes: dry })).toThrow(/dry matter/);
    const lost = [
      { solute: 'stardust', massBefore: '10 g', massAfter: '11 g' },
      ...dishesOf(0.15, 0.6, ['MgCl2']),
    ] as const;
    expect(() => fitIsotherm({ moisture: 0.05, dishes: lost })).toThrow(/stardust/);
  });
});
