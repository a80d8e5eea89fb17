import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foodProperties, iceFraction, initialFreezingPoint, propertiesFromWater } from '../../src/freezing/index';
import { THERMAL_VEGETABLES } from '../../src/freezing/tables';
import { expectError } from '../helpers/errors';

const degC = (value: number) => ({ value, unit: 'degC' as const });
const apple = { water: 0.84, protein: 0.003, fat: 0.004, carbohydrate: 0.126, fibre: 0.024, ash: 0.003 };

describe('Choi and Okos', () => {
  // density of water at 20 degC (CRC): 998.2; conductivity 0.598 W/(m K) is common knowledge of handbooks, no source here
  test('pure water is water', () => {
    const water = foodProperties({ composition: { water: 1 }, temperature: '20 degC' });
    expect(Math.abs(water.density.value - 998.2)).toBeLessThan(3);
    expect(water.ice).toBe(0);
    expect(water.diffusivity).toBeCloseTo(water.conductivity / (water.density.value * water.specificHeat * 1000), 15);
  });

  test('the handbook table of vegetables: specific heat above freezing within 0.09 (it counts fibre twice)', () => {
    for (const row of THERMAL_VEGETABLES) {
      const share = (value: number | undefined) => (value ?? 0) / 100;
      const composition = {
        water: share(row.water),
        protein: share(row.protein),
        fat: share(row.fat),
        carbohydrate: share(row.carbohydrate) - share(row.fibre),
        fibre: share(row.fibre),
        ash: share(row.ash),
      };
      const once = foodProperties({ composition, temperature: '20 degC' }).specificHeat;
      expect(once - row.specificHeatAbove, row.food).toBeLessThan(0.005);
      expect(once - row.specificHeatAbove, row.food).toBeGreaterThan(-0.09);
    }
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
          const [water = 0, protein = 0, fat = 0, carbohydrate = 0, fibre = 0, ash = 0] = parts.map(
            (value) => value / sum,
          );
          const answer = foodProperties({
            composition: { water, protein, fat, carbohydrate, fibre, ash },
            temperature: degC(t),
            initialFreezing: '-1 degC',
          });
          for (const value of [answer.density.value, answer.specificHeat, answer.conductivity, answer.diffusivity]) {
            expect(Number.isFinite(value) && value > 0).toBe(true);
          }
          expect(answer.ice).toBeGreaterThanOrEqual(0);
          expect(answer.ice).toBeLessThanOrEqual(water);
        },
      ),
    );
  });

  test('bad input', () => {
    expectError(
      () => foodProperties({ composition: { water: 0.8 }, temperature: '20 degC' }),
      'CONTRADICTION',
      'composition',
    );
    expectError(() => foodProperties({ composition: apple, temperature: '-5 degC' }), 'MISSING', 'initialFreezing');
    expectError(() => foodProperties({ composition: apple, temperature: '160 degC' }), 'OUT_OF_RANGE', 'temperature');
    expectError(
      () => foodProperties({ composition: { ...apple, water: -1 }, temperature: '20 degC' }),
      'OUT_OF_RANGE',
      'composition.water',
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

describe('ice', () => {
  test('none above the freezing point, more the colder, never more than the water', () => {
    expect(iceFraction({ water: 0.9, initialFreezing: '-1 degC', temperature: '-1 degC' })).toMatchObject({
      ice: 0,
      tchigeov: 0,
    });
    const cold = fc.double({ min: -40, max: -1.01, noNaN: true });
    fc.assert(
      fc.property(cold, cold, fc.double({ min: 0.01, max: 1, noNaN: true }), (one, other, water) => {
        const at = (t: number) => iceFraction({ water, initialFreezing: '-1 degC', temperature: degC(t) });
        const [colder, warmer] = [at(Math.min(one, other)), at(Math.max(one, other))];
        expect(colder.ice).toBeGreaterThanOrEqual(warmer.ice);
        expect(colder.tchigeov).toBeGreaterThanOrEqual(warmer.tchigeov);
        expect(colder.ice).toBeLessThanOrEqual(water);
        expect(colder.tchigeov).toBeLessThanOrEqual(water);
        expect(colder.ofWater).toBeCloseTo(colder.ice / water, 12);
      }),
    );
  });

  test('protein binds water', () => {
    const ice = (protein: number) =>
      iceFraction({ water: 0.7, protein, initialFreezing: '-1 degC', temperature: '-20 degC' }).ice;
    expect(ice(0) - ice(0.2)).toBeCloseTo(0.08 * 0.95, 9);
    // no negative ice where protein binds it all
    expect(iceFraction({ water: 0.1, protein: 0.9, initialFreezing: '-1 degC', temperature: '-20 degC' }).ice).toBe(0);
  });

  test('bad input', () => {
    expectError(
      () => iceFraction({ water: 0.9, protein: 0.2, initialFreezing: '-1 degC', temperature: '-5 degC' }),
      'CONTRADICTION',
      'protein',
    );
    expectError(
      () => iceFraction({ water: 0, initialFreezing: '-1 degC', temperature: '-5 degC' }),
      'OUT_OF_RANGE',
      'water',
    );
    expectError(
      () => iceFraction({ water: 0.9, initialFreezing: '-1 degC', temperature: '-50 degC' }),
      'OUT_OF_RANGE',
      'temperature',
    );
  });
});

describe('initial freezing points', () => {
  const point = (input: Parameters<typeof initialFreezingPoint>[0]) => {
    const answer = initialFreezingPoint(input);
    if (!answer.known) throw new Error(answer.reason.text);
    return answer;
  };
  test('a food of the pantry without a figure is not known', () => {
    expect(initialFreezingPoint({ food: 'rutabaga' })).toMatchObject({ known: true });
    expect(initialFreezingPoint({ food: 'feijoa' })).toMatchObject({
      known: false,
      reason: { code: 'not in these tables' },
    });
  });

  test('the handbook before the textbook before memory', () => {
    const carrot = point({ food: 'carrots' });
    expect(carrot.temperature).toEqual({ value: -1.4, unit: 'degC' });
    expect(carrot.others.map(({ temperature }) => temperature.value)).toEqual([29.5, -1]);
    expect(carrot.cautions).toEqual([]);
    expect(initialFreezingPoint({ food: 'tomatoes' })).toMatchObject({
      food: 'tomato',
      temperature: { value: -1 },
      others: [{ temperature: { value: -0.5 } }],
    });
  });

  test('a recalled point says so and has no heats', () => {
    const figs = point({ food: 'figs' });
    expect(figs.cautions.map(({ id }) => id)).toEqual(['recalled']);
    expect(figs.specificHeatAbove).toBeUndefined();
  });

  test('bad input', () => {
    expectError(() => initialFreezingPoint({ food: 'granite' }), 'UNKNOWN_NAME', 'food');
  });
});

describe('properties from water', () => {
  test('Sweat only from 60 % water', () => {
    expect(propertiesFromWater({ water: 0.5 }).conductivityAbove.sweat).toBeUndefined();
    expect(propertiesFromWater({ water: 0.8 }).conductivityAbove.sweat).toBeCloseTo(0.5424, 9);
  });

  test('pure water freezes with 335 kJ/kg, dry matter with none', () => {
    expect(propertiesFromWater({ water: 1 }).latentHeat.earle).toBe(335);
    expect(propertiesFromWater({ water: 0 }).latentHeat.earle).toBe(0);
  });

  test('bad input', () => {
    expectError(() => propertiesFromWater({ water: 84 }), 'OUT_OF_RANGE', 'water');
  });
});
