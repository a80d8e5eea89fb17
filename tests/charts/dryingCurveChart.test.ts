import { expect, test } from 'vitest';
import { dryingCurveChart } from '../../src/charts/index';
import { type FinishForecastInput, finishForecast, type KnownFinish } from '../../src/drying/index';
import { appleTray } from '../docs/pageCharts';

const forecast = (input: FinishForecastInput) => finishForecast(input) as KnownFinish;

test('the curve ends at the stop weight at the expected time, and the band at the ends of the forecast', () => {
  const { data } = dryingCurveChart(appleTray);
  const { time } = forecast(appleTray);
  const last = data.values[data.values.length - 1];
  expect(last?.after).toBe(time.likely.value);
  expect(last?.weighs).toBeCloseTo(165, 6);
  expect(last?.low).toBeCloseTo(time.low.value, 9);
  expect(last?.high).toBeCloseTo(time.high.value, 9);
});

test('without a target moisture the curve still meets the stop weight: floor and forecast assume the same', () => {
  const { targetMoisture: _, ...open } = appleTray;
  const { values } = dryingCurveChart(open).data;
  const last = values[values.length - 1];
  expect(last?.after).toBe(forecast(open).time.likely.value);
  // the start weight is fitted again, so a wrong floor misses by grams
  expect(last?.weighs).toBeCloseTo(165, 3);
});

test('the curve falls all the way and runs through the weighings', () => {
  const { values } = dryingCurveChart(appleTray).data;
  for (let i = 1; i < values.length; i++) {
    expect(values[i]?.weighs ?? 0).toBeLessThanOrEqual((values[i - 1]?.weighs ?? 0) + 1e-9);
  }
  const hourly = values.filter(({ after, low }) => low === undefined && Number.isInteger(after));
  expect(hourly.map(({ after }) => after)).toEqual([0, 1, 2, 3, 4, 5]);
  const weighed = [1000, 835, 695, 560, 470, 380];
  hourly.forEach(({ weighs }, hour) => {
    expect(Math.abs(weighs - (weighed[hour] ?? 0))).toBeLessThan(12);
  });
});

test('weighings without scatter give back the curve they were made with (Page, k 0.2, n 1.1)', () => {
  const weightAt = (t: number): number => 140 + 860 * Math.exp(-0.2 * t ** 1.1);
  const { values } = dryingCurveChart({
    weighings: [0, 1, 2, 3, 4, 5].map((t) => ({ time: `${t} h`, mass: { value: weightAt(t), unit: 'g' } })),
    stopWeight: '180 g',
    equilibriumWeight: '140 g',
  }).data;
  for (const { after, weighs } of values) expect(weighs).toBeCloseTo(weightAt(after), 2);
});

test('the tare and other units are counted', () => {
  const grams = dryingCurveChart(appleTray).data.values;
  const kilograms = dryingCurveChart({
    ...appleTray,
    weighings: appleTray.weighings.map(({ time, mass }) => ({
      time,
      mass: { value: (Number.parseFloat(String(mass)) + 500) / 1000, unit: 'kg' },
    })),
    stopWeight: '665 g',
    tare: '500 g',
  }).data.values;
  kilograms.forEach(({ weighs }, index) => {
    expect(weighs * 1000 - 500).toBeCloseTo(grams[index]?.weighs ?? 0, 3);
  });
});

test('where the weighings cannot tell yet, no curve is drawn and the reason stands on the chart', () => {
  const input = { weighings: appleTray.weighings.slice(0, 3), stopWeight: '165 g' } as const;
  const { data, title, layer } = dryingCurveChart(input);
  expect(finishForecast(input).known).toBe(false);
  expect(data.values).toEqual([]);
  expect(title.subtitle.join(' ')).toContain('No forecast yet');
  expect(JSON.stringify(layer)).toContain('"weighs":695');
});

test('a tray past its stop weight is done', () => {
  const { title } = dryingCurveChart({ ...appleTray, stopWeight: '400 g' });
  expect(title.subtitle.join(' ')).toContain('(4 to 5 h): it is done');
});

test('bad input is that of finishForecast', () => {
  expect(() => dryingCurveChart({ weighings: [], stopWeight: '1 g' })).toThrow(/^weighings: /);
  expect(() => dryingCurveChart(undefined as never)).toThrow('one object of named fields');
});
