import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  isothermActivity,
  isothermFoods,
  isothermMoisture,
  monolayerMoisture,
  shiftWaterActivity,
} from '../../src/water-activity/index';
import { isotherms } from '../../src/water-activity/isotherm';
import { isothermEquations } from '../../src/water-activity/isothermEquations';
import { codeAndPath as errorOf } from '../helpers/errors';

const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);
const rows = isotherms.map((row, i) => [`${i} ${row.name} ${row.model} ${row.state}`, row] as const);
const ask = (row: (typeof isotherms)[number], t: number) => ({
  food: row.name,
  model: row.model,
  ...(row.state === '' ? {} : { state: row.state }),
  temperature: { value: t, unit: 'degC' } as const,
});

describe.each(rows)('set %s', (_, row) => {
  const [low, high] = row.temperature_degC ?? [20, 60];
  const middle = (low + high) / 2;

  test('is found by its own name, model, state and temperature', () => {
    const used = isothermMoisture({ ...ask(row, middle), waterActivity: 0.4 });
    expect([used.food, used.model, used.state ?? '']).toEqual([row.name, row.model, row.state]);
  });

  test('gives more moisture at more activity, and goes back to where it came from', () => {
    const { awRange } = isothermMoisture({ ...ask(row, middle), waterActivity: 0.4 });
    fc.assert(
      fc.property(fc.double({ min: Math.max(awRange[0], 0.01), max: awRange[1], noNaN: true }), (waterActivity) => {
        const { moisture, wetBasis } = isothermMoisture({ ...ask(row, middle), waterActivity });
        expect(moisture).toBeGreaterThan(0);
        expect(wetBasis).toBeCloseTo(moisture / (1 + moisture), 12);
        const back = isothermActivity({ ...ask(row, middle), moisture }).waterActivity;
        expect(back).toBeCloseTo(waterActivity, 9);
        const next = isothermMoisture({
          ...ask(row, middle),
          waterActivity: Math.min(waterActivity * 1.001, awRange[1]),
        });
        expect(next.moisture).toBeGreaterThan(moisture * (1 - 1e-12));
      }),
      { numRuns: 25 },
    );
  });

  test('refuses outside its activities and temperatures', () => {
    const { awRange } = isothermMoisture({ ...ask(row, middle), waterActivity: 0.4 });
    const above = { ...ask(row, middle), waterActivity: awRange[1] + 0.005 };
    expect(errorOf(() => isothermMoisture(above))).toEqual(['OUT_OF_RANGE', 'waterActivity']);
    const hot = { ...ask(row, 99), waterActivity: 0.4 };
    expect(errorOf(() => isothermMoisture(hot))).toEqual(['OUT_OF_RANGE', 'temperature']);
    expect(errorOf(() => isothermActivity({ ...ask(row, middle), moisture: 50 }))).toEqual([
      'OUT_OF_RANGE',
      'moisture',
    ]);
  });

  test('says where it comes from', () => {
    const { basis, cautions } = isothermMoisture({ ...ask(row, middle), waterActivity: 0.4 });
    expect(basis[0]?.source).toBe(row.source);
    if (row.caution !== undefined) expect(ids({ cautions })).toContain(row.caution);
    const formFromMemory = basis.some(({ kind }) => kind === 'recalled');
    expect(ids({ cautions }).includes('recalled')).toBe(formFromMemory);
  });
});

describe('choosing among the sets of a food', () => {
  test('without a temperature the set nearest 25 degC is taken, and said', () => {
    const potato = isothermMoisture({ food: 'potatoes', waterActivity: 0.5 });
    expect(potato.temperature).toEqual({ value: 30, unit: 'degC' });
    expect(ids(potato)).toEqual(expect.arrayContaining(['isotherm-temperature-chosen', 'sets-disagree']));
  });

  test('an equation by its short name', () => {
    expect(isothermMoisture({ food: 'pasta', model: 'Oswin', waterActivity: 0.5, temperature: '30 degC' }).model).toBe(
      'Oswin, linear in T',
    );
    expect(isothermMoisture({ food: 'potato', model: 'GAB', waterActivity: 0.5, temperature: '45 degC' }).model).toBe(
      'GAB',
    );
  });

  test('unknown names offer what there is', () => {
    expect(errorOf(() => isothermMoisture({ food: 'mango', waterActivity: 0.5 }))).toEqual(['UNKNOWN_NAME', 'food']);
    expect(errorOf(() => isothermMoisture({ food: 'kiwi', model: 'Peleg', waterActivity: 0.5 }))).toEqual([
      'UNKNOWN_NAME',
      'model',
    ]);
    expect(errorOf(() => isothermMoisture({ food: 'pasta', state: 'cooked', waterActivity: 0.5 }))).toEqual([
      'UNKNOWN_NAME',
      'state',
    ]);
    expect(() => isothermMoisture({ food: 'kiwi', model: 'Peleg', waterActivity: 0.5 })).toThrow(/GAB; BET/);
    expect(() => isothermMoisture({ food: 'kiwi', waterActivity: 0.7 })).toThrow(/from 0 to 0\.675/);
  });

  test('every food is listed once with its sets', () => {
    const listed = isothermFoods();
    expect(listed.flatMap(({ sets }) => sets)).toHaveLength(isotherms.length);
    expect(new Set(listed.map(({ food }) => food)).size).toBe(listed.length);
  });
});

/** Made-up constants of a plausible size for each equation. */
const CONSTANTS: Record<string, Record<string, number>> = {
  GAB: { M0: 0.1, C: 10, K: 0.9 },
  'GAB, Arrhenius': { m0: 0.0322, dHm_K: 178, c0: 2.37, dHc_K: 1791, k0: 1.38, dHk_K: -137 },
  BET: { M0: 0.1, C: 10 },
  Oswin: { A: 0.15, B: 0.4 },
  'Oswin, linear in T': { k0: 0.176, k1: -0.0017, n0: 0.18, n1: 0.007 },
  'Oswin, percent and kelvin': { k0: 94.4, k1: -0.27, n0: -1.77, n1: 0.0085 },
  Halsey: { A: 0.05, B: 1.2 },
  Henderson: { A: 5, B: 1.1 },
  'Henderson, four constants': { A: 1.3638e-11, B: 257.28, C: 4.1686, D: 2.906 },
  'modified Henderson': { A: 0.05, B: 1.1, C: 50 },
  'modified Halsey': { A: -3, B: -0.01, C: 1.3 },
  'modified Oswin': { A: 0.2, B: -0.001, C: 2.5 },
  'modified Chung-Pfost': { A: 400, B: 20, C: 60 },
  'modified GAB': { A: 0.1, B: 0.8, C: 300 },
  Peleg: { C1: 0.15, C2: 0.7, C3: 0.4, C4: 8 },
  Smith: { A: 0.03, B: 0.1 },
  'Adam and Shove': { A: 0.01, B: 0.2, C: 0.1, D: 0.2 },
  'Iglesias and Chirife': { A: 2, B: -2.5, X05: 0.003 },
};

describe.each(isothermEquations.map(({ model }) => model))('own constants of %s', (model) => {
  const parameters = { model, ...CONSTANTS[model] };
  const at = { parameters, temperature: '30 degC' } as const;

  test('goes there and back', () => {
    for (const waterActivity of [0.2, 0.5, 0.8]) {
      const { moisture } = isothermMoisture({ ...at, waterActivity });
      expect(isothermActivity({ ...at, moisture }).waterActivity).toBeCloseTo(waterActivity, 9);
    }
  });

  test('every constant is asked for and no other', () => {
    for (const key of Object.keys(CONSTANTS[model] ?? {})) {
      const { [key]: _, ...rest } = parameters as Record<string, number | string>;
      expect(errorOf(() => isothermMoisture({ ...at, parameters: rest, waterActivity: 0.5 }))).toEqual([
        'MISSING',
        `parameters.${key}`,
      ]);
    }
    const more = { ...parameters, Q: 1 };
    expect(errorOf(() => isothermMoisture({ ...at, parameters: more, waterActivity: 0.5 }))).toEqual([
      'UNKNOWN_FIELD',
      'parameters.Q',
    ]);
  });
});

describe('the inverses as printed', () => {
  const X = 0.12;
  test('GAB: the quadratic', () => {
    const { M0, C, K } = { M0: 0.1, C: 10, K: 0.9 };
    const [a, b, c] = [(K * (1 - C)) / (M0 * C), (C - 2) / (M0 * C) - 1 / X, 1 / (M0 * C * K)];
    const root = (-b - Math.sqrt(b * b - 4 * a * c)) / (2 * a);
    expect(isothermActivity({ parameters: { M0, C, K }, moisture: X }).waterActivity).toBeCloseTo(root, 9);
  });
  test('Oswin, Halsey, Henderson, Smith', () => {
    const activity = (parameters: Record<string, number | string>) =>
      isothermActivity({ parameters, moisture: X }).waterActivity;
    expect(activity({ model: 'Oswin', A: 0.15, B: 0.4 })).toBeCloseTo((X / 0.15) ** 2.5 / (1 + (X / 0.15) ** 2.5), 9);
    expect(activity({ model: 'Halsey', A: 0.05, B: 1.2 })).toBeCloseTo(Math.exp(-0.05 / X ** 1.2), 9);
    expect(activity({ model: 'Henderson', A: 5, B: 1.1 })).toBeCloseTo(1 - Math.exp(-5 * X ** 1.1), 9);
    expect(activity({ model: 'Smith', A: 0.03, B: 0.1 })).toBeCloseTo(1 - Math.exp((0.03 - X) / 0.1), 9);
  });
  test('with temperature: Henderson, Halsey, Oswin, Chung-Pfost', () => {
    const temperature = '30 degC' as const;
    const activity = (parameters: Record<string, number | string>) =>
      isothermActivity({ parameters, temperature, moisture: X }).waterActivity;
    expect(activity({ model: 'modified Henderson', A: 0.05, B: 1.1, C: 50 })).toBeCloseTo(
      1 - Math.exp(-0.05 * 80 * X ** 1.1),
      9,
    );
    expect(activity({ model: 'modified Halsey', A: -3, B: -0.01, C: 1.3 })).toBeCloseTo(
      Math.exp(-Math.exp(-3.3) * X ** -1.3),
      9,
    );
    expect(activity({ model: 'modified Oswin', A: 0.2, B: -0.001, C: 2.5 })).toBeCloseTo(
      1 / ((0.17 / X) ** 2.5 + 1),
      9,
    );
    expect(activity({ model: 'modified Chung-Pfost', A: 400, B: 20, C: 60 })).toBeCloseTo(
      Math.exp((-400 / 90) * Math.exp(-20 * X)),
      9,
    );
  });
});

describe('own constants, refused', () => {
  const half = { waterActivity: 0.5 };
  const bad: [string, unknown, [string, string]][] = [
    ['neither food nor parameters', {}, ['MISSING', 'food']],
    ['both', { food: 'potato', parameters: { M0: 1, C: 1 } }, ['CONTRADICTION', 'food']],
    ['no object', { parameters: 7 }, ['WRONG_TYPE', 'parameters']],
    ['no model', { parameters: { A: 1, B: 1 } }, ['MISSING', 'parameters.model']],
    ['no such model', { parameters: { model: 'Magic', A: 1 } }, ['UNKNOWN_NAME', 'parameters.model']],
    ['a model that is no text', { parameters: { model: 4, A: 1 } }, ['WRONG_TYPE', 'parameters.model']],
    ['a constant that is no number', { parameters: { model: 'Oswin', A: 'x', B: 1 } }, ['WRONG_TYPE', 'parameters.A']],
    ['a negative monolayer', { parameters: { M0: -0.1, C: 10, K: 0.9 } }, ['OUT_OF_RANGE', 'parameters.M0']],
    ['no temperature', { parameters: { model: 'modified Halsey', A: -3, B: 0, C: 1 } }, ['MISSING', 'temperature']],
    ['a range of words', { parameters: { M0: 0.1, C: 10, awRange: ['a', 'b'] } }, ['WRONG_TYPE', 'parameters.awRange']],
    ['no range', { parameters: { M0: 0.1, C: 10, awRange: 0.5 } }, ['WRONG_TYPE', 'parameters.awRange']],
    [
      'a range upside down',
      { parameters: { M0: 0.1, C: 10, awRange: [0.6, 0.2] } },
      ['OUT_OF_RANGE', 'parameters.awRange'],
    ],
    [
      'outside the given range',
      { parameters: { M0: 0.1, C: 10, awRange: [0.1, 0.4] } },
      ['OUT_OF_RANGE', 'waterActivity'],
    ],
    ['no moisture there', { parameters: { model: 'Smith', A: -1, B: 0.1 } }, ['OUT_OF_RANGE', 'waterActivity']],
  ];
  test.each(bad)('%s', (_, input, expected) => {
    expect(errorOf(() => isothermMoisture({ ...half, ...(input as object) } as never))).toEqual(expected);
  });

  test('the pole of GAB with K above 1 is never crossed', () => {
    const parameters = { M0: 0.2, C: 11.84, K: 1.143 };
    for (const waterActivity of [1 / 1.143, 0.88, 0.95]) {
      expect(errorOf(() => isothermMoisture({ parameters, waterActivity }))).toEqual(['OUT_OF_RANGE', 'waterActivity']);
    }
    expect(isothermActivity({ parameters, moisture: 3 }).waterActivity).toBeLessThan(1 / 1.143);
  });

  test('the model may stand beside the parameters', () => {
    const one = isothermMoisture({ parameters: { A: 0.15, B: 0.4 }, model: 'oswin', waterActivity: 0.5 });
    expect(one.moisture).toBeCloseTo(0.15, 12);
    expect(one.basis[0]?.kind).toBe('measured');
  });
});

describe('monolayer values', () => {
  test('recalled ones say so', () => {
    expect(ids(monolayerMoisture({ food: 'gelatin' }))).toContain('recalled');
    expect(ids(monolayerMoisture({ food: 'kiwi' }))).not.toContain('recalled');
    expect(errorOf(() => monolayerMoisture({ food: 'chalk' }))).toEqual(['UNKNOWN_NAME', 'food']);
  });
});

describe('another temperature', () => {
  const same = { waterActivity: 0.5, from: '20 degC', to: '20 degC', food: 'blueberry' } as const;
  test('nothing changes where it stays, it rises with warmth and goes back', () => {
    expect(shiftWaterActivity(same).waterActivity).toBe(0.5);
    const warm = shiftWaterActivity({ ...same, to: '35 degC' });
    expect(warm.waterActivity).toBeGreaterThan(0.5);
    expect(warm.range.low).toBeLessThan(warm.range.high);
    const back = shiftWaterActivity({
      waterActivity: warm.waterActivity,
      from: '35 degC',
      to: '20 degC',
      heatOfSorption: 5.5,
    });
    expect(back.waterActivity).toBeCloseTo(0.5, 12);
    expect(back.basis[0]?.kind).toBe('measured');
  });
  test('refusals', () => {
    const { food: _, ...bare } = same;
    expect(errorOf(() => shiftWaterActivity(bare))).toEqual(['MISSING', 'food']);
    expect(errorOf(() => shiftWaterActivity({ ...same, heatOfSorption: 4 }))).toEqual(['CONTRADICTION', 'food']);
    expect(
      errorOf(() => shiftWaterActivity({ ...bare, waterActivity: 0.95, to: '90 degC', heatOfSorption: 20 })),
    ).toEqual(['OUT_OF_RANGE', 'to']);
  });
});
