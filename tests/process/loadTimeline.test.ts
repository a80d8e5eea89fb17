import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LoadTimeline, type LoadTimelineInput, loadTimeline } from '../../src/process/index';
import { thrownBy as errorOf } from '../helpers/errors';
import { BEANS as beans } from './loads';

const peaches = { ...beans, food: 'peach', form: 'halves', method: 'boiling-water', waterVolume: '16 quarts' } as const;
const load = (input: LoadTimelineInput): LoadTimeline => {
  const answer = loadTimeline(input);
  if (!answer.tested) expect.fail(answer.reason.text);
  return answer;
};
const step = (answer: LoadTimeline, name: string) => answer.steps.find((line) => line.what === name)?.minutes;

describe('a pressure canner', () => {
  test('has the printed steps around the tested time', () => {
    const answer = load(beans);
    expect(answer.steps.map((line) => line.what)).toEqual([
      'heat the water',
      'load the jars',
      'heat to steady steam',
      'vent',
      'come to pressure',
      'process',
      'lose pressure',
      'wait with the weight off',
      'unload',
    ]);
    expect(step(answer, 'vent')).toEqual({ low: 10, likely: 10, high: 10 });
    expect(step(answer, 'come to pressure')).toEqual({ low: 3, likely: 4, high: 5 });
    expect(step(answer, 'process')).toEqual({ low: 25, likely: 25, high: 25 });
    expect(step(answer, 'lose pressure')?.likely).toBe(45);
    expect(step(answer, 'wait with the weight off')?.likely).toBe(10);
  });

  test('quarts of fish: 20 minutes of heating at the least, however strong the burner', () => {
    const fish = { ...beans, food: 'salmon', form: 'pieces', pack: 'raw', burnerPower: '30 kW' } as const;
    expect(step(load(fish), 'heat to steady steam')).toEqual({ low: 20, likely: 20, high: 20 });
    expect(load(fish).cautions.map(({ id }) => id)).toContain('fish-quart-heating');
    expect(step(load({ ...fish, jar: 'pint' }), 'heat to steady steam')?.high).toBeLessThan(20);
  });

  test('a load of pints from steady steam: the worked example of 95 minutes less 15 of heat-up', () => {
    // reference, sched-pc-pints: 15 + 10 + 5 + 25 + 30 + 10; the heat-up is an assumption there, 25 min the process of
    // hot-packed carrots in pints
    const answer = load({ ...beans, food: 'carrots', jar: 'pint' });
    const printed = ['vent', 'come to pressure', 'process', 'lose pressure', 'wait with the weight off'];
    const minutes = printed.reduce((total, name) => total + (step(answer, name)?.high ?? Number.NaN), 0);
    expect(minutes).toBe(95 - 15);
  });
});

describe('a boiling-water canner', () => {
  test('heats, loads, comes back to the boil, processes, rests and unloads', () => {
    const answer = load(peaches);
    expect(answer.steps.map((line) => line.what)).toEqual([
      'heat the water',
      'load the jars',
      'heat to a boil',
      'process',
      'rest',
      'unload',
    ]);
    expect(step(answer, 'rest')?.likely).toBe(5);
  });

  test('heat-up is the energy over the power that reaches the pot', () => {
    // 16 quarts = 15.1416 kg from 12 to 82.22 degC at 4.19 kJ/(kg K) = 4455 kJ; 2.4 kW at 50 % = 3712 s = 61.88 min
    const answer = load({ ...peaches, efficiency: 0.5 });
    const minutes = (15.141647136 * 4.186 * ((180 - 32) / 1.8 - 12)) / (2.4 * 0.5) / 60;
    expect(step(answer, 'heat the water')?.low).toBeCloseTo(minutes, 9);
    expect(step(answer, 'heat the water')?.high).toBeCloseTo(minutes, 9);
  });

  test('a second load starts hot', () => {
    const second = load({ ...peaches, waterTemperature: '95 degC' });
    expect(second.steps[0]?.what).toBe('load the jars');
    expect(second.totalMinutes.likely).toBeLessThan(load(peaches).totalMinutes.likely);
  });

  test('hotter food comes back to the boil sooner', () => {
    const at = (fillTemperature: '95 degC' | '20 degC') =>
      step(load({ ...peaches, fillTemperature }), 'heat to a boil')?.likely ?? 0;
    expect(at('95 degC')).toBeLessThan(at('20 degC'));
  });

  test('raw-packed jars go into cooler water', () => {
    const raw = load({ ...peaches, pack: 'raw' });
    expect(step(raw, 'heat the water')?.likely).toBeLessThan(step(load(peaches), 'heat the water')?.likely ?? 0);
  });
});

test('a refused process has no timeline', () => {
  expect(loadTimeline({ ...beans, method: 'boiling-water' })).toMatchObject({ tested: false });
  expect(loadTimeline({ ...beans, food: 'banana' })).toMatchObject({ tested: false });
});

test('the process is never shortened, the ranges are in order, and more power is never slower', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 100 }),
      fc.double({ min: 0.5, max: 60, noNaN: true }),
      fc.double({ min: 200, max: 20_000, noNaN: true }),
      fc.double({ min: 0, max: 3000, noNaN: true }),
      fc.constantFrom(beans, peaches),
      (jars, litres, watts, metres, question) => {
        const input = {
          ...question,
          jars,
          waterVolume: { value: litres, unit: 'L' },
          elevation: { value: metres, unit: 'm' },
        } as const;
        const answer = loadTimeline({ ...input, burnerPower: { value: watts, unit: 'W' } });
        if (!answer.tested) return;
        expect(step(answer, 'process')?.low).toBe(answer.process.minutes);
        for (const { minutes } of [...answer.steps, { minutes: answer.totalMinutes }]) {
          expect(minutes.low).toBeLessThanOrEqual(minutes.likely);
          expect(minutes.likely).toBeLessThanOrEqual(minutes.high);
          expect(Number.isFinite(minutes.high)).toBe(true);
        }
        const stronger = load({ ...input, burnerPower: { value: watts * 2, unit: 'W' } });
        expect(stronger.totalMinutes.likely).toBeLessThanOrEqual(answer.totalMinutes.likely);
      },
    ),
  );
});

test.each([
  [{ jars: 0 }, 'OUT_OF_RANGE', 'jars'],
  [{ jars: 10_000 }, 'OUT_OF_RANGE', 'jars'],
  [{ jars: 1.5 }, 'OUT_OF_RANGE', 'jars'],
  [{ waterVolume: '2 lb' }, 'WRONG_DIMENSION', 'waterVolume'],
  [{ waterVolume: '0 L' }, 'OUT_OF_RANGE', 'waterVolume'],
  [{ burnerPower: '0 W' }, 'OUT_OF_RANGE', 'burnerPower'],
  [{ burnerPower: undefined }, 'MISSING', 'burnerPower'],
  [{ efficiency: 0 }, 'OUT_OF_RANGE', 'efficiency'],
  [{ waterTemperature: '120 degC' }, 'OUT_OF_RANGE', 'waterTemperature'],
  [{ food: 'zebra' }, 'UNKNOWN_NAME', 'food'],
  [{ colour: 'red' }, 'UNKNOWN_FIELD', 'colour'],
])('%o is an error', (wrong, code, path) => {
  expect(errorOf(() => loadTimeline({ ...beans, ...wrong } as unknown as LoadTimelineInput))).toMatchObject({
    code,
    path,
  });
});
test('a wrong argument altogether', () => {
  expect(errorOf(() => loadTimeline(undefined as unknown as LoadTimelineInput))).toMatchObject({ path: 'jars' });
});
