import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foodProperties } from '../../src/freezing/index';
import { correlation, THERMAL_VEGETABLES } from '../../src/freezing/tables';
import { expectError } from '../helpers/errors';

const degC = (value: number) => ({ value, unit: 'degC' as const });
const apple = { moisture: 0.84, protein: 0.003, fat: 0.004, carbohydrate: 0.126, fiber: 0.024, ash: 0.003 };

describe('Choi and Okos', () => {
  // density of water at 20 degC (CRC): 998.2; conductivity 0.598 W/(m K) is common knowledge of handbooks, no source here
  test('pure water is water', () => {
    const water = foodProperties({ composition: { moisture: 1 }, temperature: '20 degC' });
    expect(Math.abs(water.density.value - 998.2)).toBeLessThan(3);
    expect(water.iceShare).toBe(0);
    expect(water.diffusivity).toBeCloseTo(water.conductivity / (water.density.value * water.specificHeat * 1000), 15);
  });

  test('the handbook table of vegetables: specific heat above freezing within 0.09 (it counts fiber twice)', () => {
    for (const row of THERMAL_VEGETABLES) {
      const share = (value: number | undefined) => (value ?? 0) / 100;
      const composition = {
        moisture: share(row.water),
        protein: share(row.protein),
        fat: share(row.fat),
        carbohydrate: share(row.carbohydrate) - share(row.fiber),
        fiber: share(row.fiber),
        ash: share(row.ash),
      };
      const once = foodProperties({ composition, temperature: '20 degC' }).specificHeat;
      expect(once - row.specificHeatAbove, row.food).toBeLessThan(0.005);
      expect(once - row.specificHeatAbove, row.food).toBeGreaterThan(-0.09);
    }
  });

  // Earle and Sweat (recalled) print conductivity by the water alone; frozen, Earle
  test('the quick equations for conductivity are within a fifth of it', () => {
    const composition = { moisture: 0.8, carbohydrate: 0.2 };
    const fresh = foodProperties({ composition, temperature: '20 degC' }).conductivity;
    expect(0.148 + 0.00493 * 80).toBeCloseTo(0.5424, 9);
    expect(Math.abs(fresh / 0.5424 - 1)).toBeLessThan(0.2);
    expect(Math.abs(fresh / (0.55 * 0.8 + 0.26 * 0.2) - 1)).toBeLessThan(0.2);
    const frozen = foodProperties({ composition, temperature: '-18 degC', initialFreezing: '-1 degC' }).conductivity;
    expect(Math.abs(frozen / (2.4 * 0.8 + 0.26 * 0.2) - 1)).toBeLessThan(0.2);
    const formulas = ['sweat-k', 'earle-k-above', 'earle-k-below'].map((id) => correlation(id).formula);
    expect(formulas).toEqual([
      'k = 0.148 + 0.00493 W',
      'k = 0.55 p/100 + 0.26 (100-p)/100',
      'k = 2.4 p/100 + 0.26 (100-p)/100',
    ]);
  });

  test('ice makes food lighter and a better conductor', () => {
    const thawed = foodProperties({ composition: apple, temperature: '5 degC' });
    const frozen = foodProperties({ composition: apple, temperature: '-20 degC', initialFreezing: '-1.1 degC' });
    expect(frozen.density.value).toBeLessThan(thawed.density.value);
    expect(frozen.conductivity).toBeGreaterThan(2 * thawed.conductivity);
    expect(frozen.otherSpecificHeats).toBeUndefined();
    expect(thawed.apparentSpecificHeat).toBeUndefined();
  });

  test('the apparent specific heat is the slope of the enthalpy', () => {
    fc.assert(
      fc.property(fc.double({ min: -35, max: -2, noNaN: true }), (t) => {
        const at = (temperature: number) =>
          foodProperties({ composition: apple, temperature: degC(temperature), initialFreezing: '-1.1 degC' });
        const slope = ((at(t + 0.001).enthalpy ?? 0) - (at(t - 0.001).enthalpy ?? 0)) / 0.002;
        expect(slope).toBeCloseTo(at(t).apparentSpecificHeat ?? 0, 3);
      }),
    );
  });

  test('every composition in range has finite, positive properties', () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.tuple(part, part, part, part, part, part),
        fc.double({ min: -40, max: 150, noNaN: true }),
        (parts, t) => {
          const sum = parts.reduce((total, value) => total + value, 0);
          fc.pre(sum > 0.01);
          const [water = 0, protein = 0, fat = 0, carbohydrate = 0, fiber = 0, ash = 0] = parts.map(
            (value) => value / sum,
          );
          const answer = foodProperties({
            composition: { moisture: water, protein, fat, carbohydrate, fiber, ash },
            temperature: degC(t),
            initialFreezing: '-1 degC',
          });
          for (const value of [answer.density.value, answer.specificHeat, answer.conductivity, answer.diffusivity]) {
            expect(Number.isFinite(value) && value > 0).toBe(true);
          }
          expect(answer.iceShare).toBeGreaterThanOrEqual(0);
          expect(answer.iceShare).toBeLessThanOrEqual(water);
        },
      ),
    );
  });

  test('bad input', () => {
    expectError(
      () => foodProperties({ composition: { moisture: 0.8 }, temperature: '20 degC' }),
      'CONTRADICTION',
      'composition',
    );
    expectError(() => foodProperties({ composition: apple, temperature: '-5 degC' }), 'MISSING', 'initialFreezing');
    expectError(() => foodProperties({ composition: apple, temperature: '160 degC' }), 'OUT_OF_RANGE', 'temperature');
    expectError(
      () => foodProperties({ composition: { ...apple, moisture: -1 }, temperature: '20 degC' }),
      'OUT_OF_RANGE',
      'composition.moisture',
    );
    expectError(
      () => foodProperties({ composition: { ...apple, sugar: 0.1 } as never, temperature: '20 degC' }),
      'UNKNOWN_FIELD',
      'composition.sugar',
    );
    expectError(
      () => foodProperties({ composition: apple, temperature: '-5 degC', initialFreezing: '1 degC' }),
      'OUT_OF_RANGE',
      'initialFreezing',
    );
  });
});
