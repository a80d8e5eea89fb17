import { expect, test } from 'vitest';
import { gaugePressure, testedProcess } from '../../src/process/index';
import { valueIn } from '../../src/quantity/scale';
import { steamTemperature } from '../../src/steam/index';
import { thrownBy as errorOf } from '../helpers/errors';

test('the printed bands, edges included', () => {
  const at = (method: 'dial-gauge' | 'weighted-gauge', acidity: 'low-acid' | 'acid', value: number) => {
    const answer = gaugePressure({ method, acidity, elevation: { value, unit: 'ft' } });
    return 'pressure' in answer ? answer.pressure.value : undefined;
  };
  const dial = [-100, 2000, 2000.1, 4000, 4001, 6000, 6001, 8000, 8000.1];
  expect(dial.map((value) => at('dial-gauge', 'low-acid', value))).toEqual([11, 11, 12, 12, 13, 13, 14, 14, undefined]);
  expect(dial.map((value) => at('dial-gauge', 'acid', value))).toEqual([6, 6, 7, 7, 8, 8, 9, 9, undefined]);
  const weighted = [0, 1000, 1000.1, 12300, 12300.1, 16000];
  expect(weighted.map((value) => at('weighted-gauge', 'low-acid', value))).toEqual([
    10,
    10,
    15,
    15,
    undefined,
    undefined,
  ]);
  expect(weighted.map((value) => at('weighted-gauge', 'acid', value))).toEqual([5, 5, 10, 10, undefined, undefined]);
});

test('agrees with the process tables', () => {
  for (const [food, acidity] of [
    ['carrots', 'low-acid'],
    ['rhubarb', 'acid'],
  ] as const) {
    for (const method of ['dial-gauge', 'weighted-gauge'] as const) {
      for (const elevation of ['0 ft', '2,500 ft', '7,900 ft'] as const) {
        const process = testedProcess({ food, pack: 'hot', jar: 'pint', method, elevation });
        expect(gaugePressure({ method, acidity, elevation })).toMatchObject({
          pressure: process.tested ? process.pressure : undefined,
        });
      }
    }
  }
});

test('the weighted gauge ends where its steam would be cooler than the coolest that is printed', () => {
  const degrees = (psi: number, feet: number) =>
    valueIn(
      steamTemperature({ gauge: { value: psi, unit: 'psi' }, elevation: { value: feet, unit: 'ft' } }).temperature,
      'degF',
    );
  for (const [low, high] of [
    [10, 15],
    [5, 10],
  ] as const) {
    const coolest = degrees(low, 1000);
    expect(degrees(high, 12_300)).toBeGreaterThan(coolest);
    expect(degrees(high, 12_500)).toBeLessThan(coolest);
  }
  for (const [method, elevation] of [
    ['weighted-gauge', '12,301 ft'],
    ['dial-gauge', '12,301 ft'],
    ['dial-gauge', '8,001 ft'],
  ] as const) {
    const answer = gaugePressure({ method, acidity: 'low-acid', elevation });
    expect(answer).toMatchObject({ tested: false });
    if ('instead' in answer) {
      if (elevation === '8,001 ft') expect(answer.instead[0]?.method).toBe('weighted-gauge');
      else for (const { text } of answer.instead) expect(text).not.toContain('weighted');
    }
  }
});

test('refuses above the dial-gauge table with what to use instead', () => {
  const answer = gaugePressure({ method: 'dial-gauge', acidity: 'acid', elevation: '2500 m' });
  expect(answer).toMatchObject({ tested: false, reason: { text: 'the dial-gauge tables end at 8,000 ft' } });
});

test('a dial-gauge answer says what to do with a gauge that is off', () => {
  const ids = (method: 'dial-gauge' | 'weighted-gauge') =>
    gaugePressure({ method, acidity: 'acid', elevation: '0 ft' }).cautions.map(({ id }) => id);
  expect(ids('dial-gauge')).toContain('dial-gauge-check');
  expect(ids('weighted-gauge')).not.toContain('dial-gauge-check');
});

test('bad input', () => {
  const good = { method: 'dial-gauge', acidity: 'acid', elevation: '0 ft' } as const;
  expect(errorOf(() => gaugePressure({ ...good, method: 'kettle' as 'dial-gauge' }))).toMatchObject({ path: 'method' });
  expect(errorOf(() => gaugePressure({ ...good, acidity: 'sour' as 'acid' }))).toMatchObject({ path: 'acidity' });
});
