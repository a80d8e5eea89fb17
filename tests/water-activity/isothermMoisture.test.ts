import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foodRows, nameOf } from '../../src/foods/tables';
import { isothermActivity, isothermMoisture } from '../../src/water-activity/index';
import { isothermEquations } from '../../src/water-activity/isothermEquations';
import { isotherms } from '../../src/water-activity/isothermTables';
import { codeAndPath as errorOf } from '../helpers/errors';
import { known } from '../helpers/known';

const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);
const rows = isotherms.map((row) => [row.id, row] as const);
const foodKind = (name: string) => foodRows.find((row) => row.name === name)?.kind;
const moistureOf = (input: Parameters<typeof isothermMoisture>[0]) => known(isothermMoisture(input));
const activityOf = (input: Parameters<typeof isothermActivity>[0]) => known(isothermActivity(input));
const ask = (row: (typeof isotherms)[number], t: number) => ({
  food: nameOf(row.food),
  set: row.id,
  temperature: { value: t, unit: 'degC' } as const,
});

describe.each(rows)('set %s', (_, row) => {
  const [low, high] = row.temperature_degC ?? [20, 60];
  const middle = (low + high) / 2;

  test('is found by its food and id', () => {
    const used = moistureOf({ ...ask(row, middle), waterActivity: 0.4 });
    expect([used.food, used.set, used.model, used.state ?? '']).toEqual([
      nameOf(row.food),
      row.id,
      row.model,
      row.state,
    ]);
  });

  test('gives more moisture at more activity, and goes back to where it came from', () => {
    const { waterActivityLimits: limits } = moistureOf({ ...ask(row, middle), waterActivity: 0.4 });
    fc.assert(
      fc.property(fc.double({ min: Math.max(limits.low, 0.01), max: limits.high, noNaN: true }), (waterActivity) => {
        const { moisture, wetMoisture } = moistureOf({ ...ask(row, middle), waterActivity });
        expect(moisture).toBeGreaterThan(0);
        expect(wetMoisture).toBeCloseTo(moisture / (1 + moisture), 12);
        const back = activityOf({ ...ask(row, middle), moisture }).waterActivity;
        expect(back).toBeCloseTo(waterActivity, 9);
        const next = moistureOf({
          ...ask(row, middle),
          waterActivity: Math.min(waterActivity * 1.001, limits.high),
        });
        expect(next.moisture).toBeGreaterThan(moisture * (1 - 1e-12));
      }),
      { numRuns: 25 },
    );
  });

  test('refuses outside its activities and temperatures', () => {
    const { waterActivityLimits: limits } = moistureOf({ ...ask(row, middle), waterActivity: 0.4 });
    const above = { ...ask(row, middle), waterActivity: limits.high + 0.005 };
    expect(errorOf(() => isothermMoisture(above))).toEqual(['OUT_OF_RANGE', 'waterActivity']);
    const hot = { ...ask(row, 99), waterActivity: 0.4 };
    expect(errorOf(() => isothermMoisture(hot))).toEqual(['OUT_OF_RANGE', 'temperature']);
    expect(errorOf(() => isothermActivity({ ...ask(row, middle), moisture: 50 }))).toEqual([
      'OUT_OF_RANGE',
      'moisture',
    ]);
  });

  test('says where it comes from', () => {
    const { basis, cautions } = moistureOf({ ...ask(row, middle), waterActivity: 0.4 });
    expect(basis[0]?.source).toBe(row.source);
    expect(new Set(basis.map(({ of }) => of))).toEqual(new Set(['moisture']));
    if (row.caution !== undefined) expect(ids({ cautions })).toContain(row.caution);
    const formFromMemory = basis.some(({ kind }) => kind === 'recalled');
    expect(ids({ cautions }).includes('recalled')).toBe(formFromMemory);
  });
});

describe('choosing among the sets of a food', () => {
  test('without a temperature the set nearest 25 degC is taken, and said', () => {
    const potato = moistureOf({ food: 'potatoes', waterActivity: 0.5 });
    expect(potato.temperature).toEqual({ value: 30, unit: 'degC' });
    expect(ids(potato)).toEqual(expect.arrayContaining(['isotherm-temperature-chosen', 'sets-disagree']));
  });

  test('an equation by its short name', () => {
    expect(moistureOf({ food: 'pasta', model: 'Oswin', waterActivity: 0.5, temperature: '30 degC' }).model).toBe(
      'Oswin, linear in T',
    );
    expect(moistureOf({ food: 'potato', model: 'GAB', waterActivity: 0.5, temperature: '45 degC' }).model).toBe(
      'GAB, Arrhenius',
    );
  });

  test('unknown names offer what there is', () => {
    expect(errorOf(() => isothermMoisture({ food: 'gravel', waterActivity: 0.5 }))).toEqual(['UNKNOWN_NAME', 'food']);
    expect(errorOf(() => isothermMoisture({ food: 'kiwi', model: 'Peleg', waterActivity: 0.5 }))).toEqual([
      'UNKNOWN_NAME',
      'model',
    ]);
    expect(errorOf(() => isothermMoisture({ food: 'pasta', set: 'cooked', waterActivity: 0.5 }))).toEqual([
      'UNKNOWN_NAME',
      'set',
    ]);
    expect(() => isothermMoisture({ food: 'kiwi', model: 'Peleg', waterActivity: 0.5 })).toThrow(/GAB; BET/);
    expect(() => isothermMoisture({ food: 'kiwi', waterActivity: 0.7 })).toThrow(/from 0 to 0\.675/);
  });

  test('a set and a model of it may stand together', () => {
    const set = 'kiwifruit-bet-30';
    expect(moistureOf({ food: 'kiwi', set, model: 'BET', waterActivity: 0.4 }).set).toBe(set);
    expect(errorOf(() => isothermMoisture({ food: 'kiwi', set, model: 'GAB', waterActivity: 0.4 }))).toEqual([
      'UNKNOWN_NAME',
      'model',
    ]);
  });

  test('every food of the pantry has an answer or a no that says what to do instead', () => {
    let answered = 0;
    for (const { name } of foodRows) {
      const answer = isothermMoisture({ food: name, waterActivity: 0.4 });
      if (answer.known) answered += 1;
      else {
        expect(answer.reason).toEqual({ code: 'no-isotherm', text: `These tables have no isotherm of ${name}.` });
        expect(answer.instead.some(({ food }) => food === 'kiwifruit')).toBe(true);
        expect(answer.instead.some(({ text }) => /fruitWaterActivity/.test(text))).toBe(foodKind(name) === 'fruit');
      }
    }
    expect(answered).toBeGreaterThanOrEqual(new Set(isotherms.map(({ food }) => food)).size);
    expect(isothermActivity({ food: 'mango', moisture: 0.2 }).known).toBe(false);
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
      const { moisture } = moistureOf({ ...at, waterActivity });
      expect(activityOf({ ...at, moisture }).waterActivity).toBeCloseTo(waterActivity, 9);
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

describe('own constants, refused', () => {
  const half = { waterActivity: 0.5 };
  const bad: [string, unknown, [string, string]][] = [
    ['neither food nor parameters', {}, ['MISSING', 'food']],
    ['both', { food: 'potato', parameters: { M0: 1, C: 1 } }, ['CONTRADICTION', 'food']],
    ['a set of a food', { set: 'kiwifruit-gab-30', parameters: { M0: 1, C: 1 } }, ['CONTRADICTION', 'set']],
    ['no object', { parameters: 7 }, ['WRONG_TYPE', 'parameters']],
    ['no model', { parameters: { A: 1, B: 1 } }, ['MISSING', 'parameters.model']],
    ['no such model', { parameters: { model: 'Magic', A: 1 } }, ['UNKNOWN_NAME', 'parameters.model']],
    ['a model that is no text', { parameters: { model: 4, A: 1 } }, ['WRONG_TYPE', 'parameters.model']],
    ['a constant that is no number', { parameters: { model: 'Oswin', A: 'x', B: 1 } }, ['WRONG_TYPE', 'parameters.A']],
    ['a negative monolayer', { parameters: { M0: -0.1, C: 10, K: 0.9 } }, ['OUT_OF_RANGE', 'parameters.M0']],
    ['no temperature', { parameters: { model: 'modified Halsey', A: -3, B: 0, C: 1 } }, ['MISSING', 'temperature']],
    [
      'a range of words',
      { parameters: { M0: 0.1, C: 10, waterActivityLimits: { low: 'a', high: 'b' } } },
      ['WRONG_TYPE', 'parameters.waterActivityLimits'],
    ],
    [
      'no range',
      { parameters: { M0: 0.1, C: 10, waterActivityLimits: 0.5 } },
      ['WRONG_TYPE', 'parameters.waterActivityLimits'],
    ],
    [
      'a range upside down',
      { parameters: { M0: 0.1, C: 10, waterActivityLimits: { low: 0.6, high: 0.2 } } },
      ['OUT_OF_RANGE', 'parameters.waterActivityLimits'],
    ],
    [
      'outside the given range',
      { parameters: { M0: 0.1, C: 10, waterActivityLimits: { low: 0.1, high: 0.4 } } },
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
    expect(activityOf({ parameters, moisture: 3 }).waterActivity).toBeLessThan(1 / 1.143);
  });

  test('the model may stand beside the parameters', () => {
    const one = moistureOf({ parameters: { A: 0.15, B: 0.4 }, model: 'oswin' as 'Oswin', waterActivity: 0.5 });
    expect(one.moisture).toBeCloseTo(0.15, 12);
    expect(one.basis[0]?.kind).toBe('measured');
  });
});
