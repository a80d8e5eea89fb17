import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundWater, milesIce } from '../../src/freezing/ice';
import { foodProperties } from '../../src/freezing/index';
import { correlation } from '../../src/freezing/tables';

/** Ice by Tchigeov, whose constants are recalled, as the table prints it: a second opinion on Miles. */
const tchigeov = (water: number, freezing: number, degC: number): number =>
  degC >= freezing ? 0 : Math.min(water, (1.105 * water) / (1 + 0.7138 / Math.log(freezing - degC + 1)));

describe('ice by Miles', () => {
  test('80 % water, 2 % protein at -18 degC: 0.748, and 0.709 by Tchigeov', () => {
    expect(milesIce(0.8 - boundWater(0.8, 0.02), -1, -18)).toBeCloseTo(0.748, 9);
    expect(tchigeov(0.8, -1, -18)).toBeCloseTo(0.7089253247663402, 9);
    expect(correlation('tchigeov-ice').formula).toContain('1.105 xwo / (1 + 0.7138 / ln(tf - t + 1))');
  });

  test('none above the freezing point, more the colder, never more than the water, and near Tchigeov', () => {
    expect(milesIce(0.9, -1, -1)).toBe(0);
    const cold = fc.double({ min: -40, max: -1.01, noNaN: true });
    fc.assert(
      fc.property(cold, cold, fc.double({ min: 0.01, max: 1, noNaN: true }), (one, other, water) => {
        const at = (degC: number) => milesIce(water, -1, degC);
        const [colder, warmer] = [Math.min(one, other), Math.max(one, other)];
        expect(at(colder)).toBeGreaterThanOrEqual(at(warmer));
        expect(at(colder)).toBeLessThanOrEqual(water);
        if (one < -5) expect(Math.abs(at(one) - tchigeov(water, -1, one))).toBeLessThan(0.1 * water);
      }),
    );
  });

  test('protein binds water, and never more than there is', () => {
    const ice = (protein: number) =>
      foodProperties({
        composition: { moisture: 0.7, protein, carbohydrate: 0.3 - protein },
        temperature: '-20 degC',
        initialFreezing: '-1 degC',
      }).iceShare;
    expect(ice(0) - ice(0.2)).toBeCloseTo(0.08 * 0.95, 9);
    expect(boundWater(0.1, 0.9)).toBe(0.1);
  });
});
