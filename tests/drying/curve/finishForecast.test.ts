import { describe, expect, it } from 'vitest';
import { seeded } from '../../../src/common/seeded';
import { type FinishForecast, finishForecast } from '../../../src/drying/index';
import { errorOf } from '../helpers';

const g = (value: number) => ({ value, unit: 'g' as const });
const h = (value: number) => ({ value, unit: 'h' as const });

interface Simulation {
  weighings: [number, number];
  /** Share of the drying time at the last weighing. */
  until: [number, number];
  scaleError: number;
  tellScaleError: boolean;
}

/** Simulated trays that follow Page's model, weighed with noise; counts how often the interval held the time. */
function simulate({ weighings, until, scaleError, tellScaleError }: Simulation, runs: number) {
  const random = seeded(20250);
  const between = ([low, high]: [number, number]) => low + random() * (high - low);
  const noise = () => scaleError * Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  let held = 0;
  let known = 0;
  let made = 0;
  while (made < runs) {
    const n = between([0.8, 1.4]); // published exponents run from 0.75 to 1.37
    const finish = between([5, 20]);
    const start = between([800, 1200]);
    const stop = start * between([0.14, 0.22]);
    const floor = 0.8 * stop;
    const depth = Math.log((stop - floor) / (start - floor));
    const weight = (t: number) => floor + (start - floor) * Math.exp(depth * (t / finish) ** n);
    const count = Math.round(between(weighings));
    const last = finish * between(until);
    const series = Array.from({ length: count }, (_, i) => {
      const t = (i * last) / (count - 1);
      return { time: h(t), mass: g(weight(t) + noise()) };
    });
    const falls = series.every(({ mass: w }, i) => i === 0 || w.value <= (series[i - 1]?.mass.value ?? 0));
    if (!falls || (series[count - 1]?.mass.value ?? 0) <= stop) continue;
    made += 1;
    const forecast = finishForecast({
      weighings: series,
      stopWeight: g(stop),
      equilibriumWeight: g(floor),
      ...(tellScaleError ? { scaleError: g(scaleError) } : {}),
    });
    if (!forecast.known) continue;
    known += 1;
    const { low, high } = forecast.time;
    if (finish >= low.value && finish <= high.value) held += 1;
  }
  return { coverage: held / known, known };
}

describe('the 90 % interval over 1,000 simulated runs', () => {
  it.each<[string, Simulation, number?]>([
    ['five to eight weighings', { weighings: [5, 8], until: [0.4, 0.8], scaleError: 2, tellScaleError: false }],
    ['a known scale', { weighings: [4, 8], until: [0.4, 0.8], scaleError: 2, tellScaleError: true }],
    ['early weighings', { weighings: [5, 8], until: [0.25, 0.5], scaleError: 2, tellScaleError: false }, 400],
  ])(
    '%s',
    (_, simulation, runs = 1000) => {
      const { coverage, known } = simulate(simulation, runs);
      expect(known).toBeGreaterThan(0.9 * runs);
      expect(coverage).toBeGreaterThan(0.85);
      expect(coverage).toBeLessThan(0.95);
    },
    120_000,
  );
});

const CURVE = [1000, 842, 688, 564, 461, 385];
const weighings = CURVE.map((weight, i) => ({ time: h(i), mass: g(weight) }));
const known = (forecast: FinishForecast) => {
  if (!forecast.known) throw new Error(forecast.reason.text);
  return forecast;
};

describe('finishForecast', () => {
  it('tells more with every weighing', () => {
    const widths = [4, 5, 6].map((count) => {
      const { low, high } = known(
        finishForecast({ weighings: weighings.slice(0, count), stopWeight: '188 g', scaleError: '2 g' }),
      ).time;
      return high.value - low.value;
    });
    expect(widths[1]).toBeLessThan(widths[0] as number);
    expect(widths[2]).toBeLessThan(widths[1] as number);
  });

  it('is in order, never before the last weighing, and remaining counts from it', () => {
    const { time, remaining, finished: done } = known(finishForecast({ weighings, stopWeight: '188 g' }));
    expect(done).toBe(false);
    expect(time.low.value).toBeGreaterThanOrEqual(5);
    expect(time.likely.value).toBeGreaterThan(time.low.value);
    expect(time.high.value).toBeGreaterThan(time.likely.value);
    expect(remaining.likely.value).toBeCloseTo(time.likely.value - 5, 10);
  });

  it('fits a curve without noise to its own constants', () => {
    // k 0.2, n 1.2, floor 150, start 1000 g: the stop weight 188 g comes at (ln(850/38)/0.2)^(1/1.2) h
    const series = [0, 1, 2, 3, 4, 5, 6].map((t) => ({ time: h(t), mass: g(150 + 850 * Math.exp(-0.2 * t ** 1.2)) }));
    const { curve, time, scatter } = known(
      finishForecast({ weighings: series, stopWeight: '188 g', equilibriumWeight: '150 g' }),
    );
    expect(curve?.k).toBeCloseTo(0.2, 6);
    expect(curve?.n).toBeCloseTo(1.2, 6);
    const finish = (Math.log(850 / 38) / 0.2) ** (1 / 1.2);
    expect(time.likely.value).toBeCloseTo(finish, 5);
    expect(time.high.value - time.low.value).toBeLessThan(0.01);
    expect(scatter?.value).toBeLessThan(1e-6);
  });

  it('gives the same forecast in other units, with a tare, or from the moistures', () => {
    const plain = known(finishForecast({ weighings, stopWeight: '188 g', targetMoisture: 0.2 }));
    const pounds = known(
      finishForecast({
        weighings: weighings.map(({ time, mass }) => ({
          time: { value: time.value * 60, unit: 'min' },
          mass: { value: mass.value / 453.59237, unit: 'lb' },
        })),
        stopWeight: '188 g',
        targetMoisture: 0.2,
      }),
    );
    expect(pounds.time.likely.unit).toBe('min');
    expect(pounds.time.likely.value / 60).toBeCloseTo(plain.time.likely.value, 6);
    expect(pounds.stopWeight.value).toBeCloseTo(188 / 453.59237, 10);
    const tared = known(
      finishForecast({
        weighings: weighings.map(({ time, mass }) => ({ time, mass: g(mass.value + 300) })),
        stopWeight: '488 g',
        tare: '300 g',
        targetMoisture: 0.2,
      }),
    );
    expect(tared.time.high.value).toBeCloseTo(plain.time.high.value, 3);
    // solids 150.4 g of 1000: moisture 0.8496, and 188 g at 20 %
    const moist = known(finishForecast({ weighings, moisture: 0.8496, targetMoisture: 0.2 }));
    expect(moist.stopWeight.value).toBeCloseTo(188, 8);
    expect(moist.time.likely.value).toBeCloseTo(plain.time.likely.value, 6);
  });

  it('knows a tray that is done', () => {
    const forecast = known(finishForecast({ weighings, stopWeight: '423 g' }));
    expect(forecast).toMatchObject({
      finished: true,
      time: { low: h(4), likely: h(4.5), high: h(5) },
      remaining: { likely: h(0) },
    });
    expect(forecast.curve).toBeUndefined();
  });

  it('takes Lewis for three weighings, and a scale whose error is known', () => {
    const three = weighings.slice(0, 3);
    expect(finishForecast({ weighings: three, stopWeight: '188 g' })).toMatchObject({ known: false });
    const lewis = known(
      finishForecast({
        weighings: [0, 2, 5].map((i) => weighings[i] as (typeof weighings)[0]),
        stopWeight: '188 g',
        model: 'lewis',
        scaleError: '5 g',
      }),
    );
    expect(lewis.curve).toMatchObject({ model: 'lewis', n: 1 });
    const page = known(
      finishForecast({
        weighings: [0, 2, 5].map((i) => weighings[i] as (typeof weighings)[0]),
        stopWeight: '188 g',
        scaleError: '1 g',
      }),
    );
    expect(page.scatter).toBeUndefined();
  });

  it('counts the scatter where it is far above the scale', () => {
    const wild = [1000, 800, 750, 520, 500, 330].map((weight, i) => ({ time: h(i), mass: g(weight) }));
    const told = finishForecast({ weighings: wild, stopWeight: '188 g', scaleError: '0.1 g' });
    const untold = finishForecast({ weighings: wild, stopWeight: '188 g' });
    expect(told).toEqual(untold);
  });

  it('says when the data cannot tell yet', () => {
    const flat = [0, 1, 2, 3].map((t) => ({ time: h(t), mass: g(1000) }));
    expect(finishForecast({ weighings: flat, stopWeight: '188 g' })).toMatchObject({
      known: false,
      reason: { code: 'no-loss-yet' },
    });
    const within = [1000, 999, 998, 997].map((weight, i) => ({ time: h(i), mass: g(weight) }));
    expect(finishForecast({ weighings: within, stopWeight: '188 g', scaleError: '2 g' })).toMatchObject({
      known: false,
    });
    // levelled off above the stop weight: it will never come
    const level = [1000, 600, 402, 400, 399.5, 399.4].map((weight, i) => ({ time: h(i), mass: g(weight) }));
    const answer = finishForecast({ weighings: level, stopWeight: '188 g' });
    expect(answer).toMatchObject({ known: false, reason: { code: 'too-wide' }, stopWeight: g(188) });
    expect(JSON.stringify(answer)).not.toMatch(/null|NaN|Infinity/);
  });

  it('takes ten thousand weighings, and finds the curve that they lie on', () => {
    const long = Array.from({ length: 10_000 }, (_, i) => ({
      time: h(i / 2000),
      mass: g(150 + 850 * Math.exp(-0.25 * (i / 2000))),
    }));
    const forecast = { stopWeight: '188 g', equilibriumWeight: '150 g' } as const;
    const { time, curve } = known(finishForecast({ ...forecast, weighings: long }));
    expect(time.likely.value).toBeCloseTo(Math.log(850 / 38) / 0.25, 6);
    expect(curve?.n).toBeCloseTo(1, 6);
    const more = [...long, { time: h(6), mass: g(300) }];
    expect(errorOf(() => finishForecast({ ...forecast, weighings: more })).code).toBe('TOO_MUCH');
  });

  it.each<[string, Record<string, unknown>, string, string]>([
    ['two weighings', { weighings: weighings.slice(0, 2) }, 'OUT_OF_RANGE', 'weighings'],
    ['no weighings', { weighings: undefined }, 'MISSING', 'weighings'],
    [
      'a rising weight',
      { weighings: [...weighings, { time: h(6), mass: g(386) }] },
      'CONTRADICTION',
      'weighings[6].mass',
    ],
    [
      'a rise above the scale',
      { scaleError: '1 g', weighings: [...weighings, { time: h(6), mass: g(389) }] },
      'CONTRADICTION',
      'weighings[6].mass',
    ],
    [
      'a repeated time',
      { weighings: [...weighings, { time: h(5), mass: g(380) }] },
      'CONTRADICTION',
      'weighings[6].time',
    ],
    [
      'a time going back',
      { weighings: [...weighings, { time: h(4), mass: g(380) }] },
      'CONTRADICTION',
      'weighings[6].time',
    ],
    ['a stop above the start', { stopWeight: '1000 g' }, 'CONTRADICTION', 'stopWeight'],
    ['a stop below the tare', { tare: '190 g' }, 'CONTRADICTION', 'stopWeight'],
    ['an equilibrium above the stop', { equilibriumWeight: '188 g' }, 'CONTRADICTION', 'equilibriumWeight'],
    ['no stop', { stopWeight: undefined }, 'MISSING', 'stopWeight'],
    ['both stop and moisture', { moisture: 0.8 }, 'CONTRADICTION', 'moisture'],
    [
      'a wetter target',
      { stopWeight: undefined, moisture: 0.2, targetMoisture: 0.2 },
      'CONTRADICTION',
      'targetMoisture',
    ],
    [
      'a late first weighing',
      { stopWeight: undefined, moisture: 0.8, targetMoisture: 0.2, weighings: weighings.slice(1) },
      'CONTRADICTION',
      'weighings[0].time',
    ],
    [
      'a tare above the start',
      { stopWeight: undefined, moisture: 0.8, targetMoisture: 0.2, tare: '2 kg' },
      'CONTRADICTION',
      'tare',
    ],
    ['another field', { speed: 1 }, 'UNKNOWN_FIELD', 'speed'],
  ])('refuses %s', (_, change, code, path) => {
    const input = { weighings, stopWeight: '188 g', ...change };
    expect(errorOf(() => finishForecast(input as never))).toMatchObject({ code, path });
  });
});
