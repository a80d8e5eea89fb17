import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LogPoint, lethality } from '../../src/lethality/index';
import { codeAndPath as errorOf } from '../helpers/errors';

const F0 = { reference: '121.1 degC', z: '10 degC' } as const;
const at = (minutes: number, degC: number): LogPoint => ({
  time: { value: minutes, unit: 'min' },
  temperature: { value: degC, unit: 'degC' },
});

test('a minute at the reference temperature is a minute', () => {
  const answer = lethality({ log: [at(0, 121.1), at(7, 121.1)], ...F0 });
  expect(answer.minutes).toBe(7);
  expect(answer.straightLineMinutes).toBe(7);
});

test('FAO Fisheries Circular 784, section 1.5: rates 0 ... 0.776 every 5 min are worth 8.65 min', () => {
  const rates = [0.05, 0.1, 0.18, 0.26, 0.342, 0.41]; // sum 1.342, as printed
  const log = [
    at(25, -40),
    ...rates.map((rate, index) => at(30 + 5 * index, 121.1 + 10 * Math.log10(rate))),
    at(60, 121.1 + 10 * Math.log10(0.776)),
  ];
  expect(lethality({ log, ...F0 }).minutes).toBeCloseTo(8.65, 9);
});

const logs = fc
  .array(fc.tuple(fc.double({ min: 0.01, max: 10, noNaN: true }), fc.double({ min: 20, max: 130, noNaN: true })), {
    minLength: 2,
    maxLength: 40,
  })
  .map((steps) => {
    let minute = 0;
    return steps.map(([step, degC]) => {
      minute += step;
      return at(minute, degC);
    });
  });

describe('what holds for every record', () => {
  test('hotter readings are never worth less', () => {
    fc.assert(
      fc.property(logs, fc.double({ min: 0, max: 20, noNaN: true }), (log, rise) => {
        const hotter = log.map(({ time, temperature }) => ({
          time,
          temperature: { value: (temperature as { value: number }).value + rise, unit: 'degC' } as const,
        }));
        expect(lethality({ log: hotter, ...F0 }).minutes).toBeGreaterThanOrEqual(lethality({ log, ...F0 }).minutes);
      }),
    );
  });

  test('the straight line is never worth more than the trapezoid, and shares are shares', () => {
    fc.assert(
      fc.property(logs, (log) => {
        const { minutes, straightLineMinutes, shareAfterHottest } = lethality({ log, ...F0 });
        expect(straightLineMinutes).toBeLessThanOrEqual(minutes);
        expect(straightLineMinutes).toBeGreaterThan(0);
        expect(shareAfterHottest).toBeGreaterThanOrEqual(0);
        expect(shareAfterHottest).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('two parts of a record add up to the whole', () => {
    fc.assert(
      fc.property(logs, fc.nat(), (log, cut) => {
        if (log.length < 3) return;
        const middle = 1 + (cut % (log.length - 2));
        const part = (points: LogPoint[]) => lethality({ log: points, ...F0 }).minutes;
        const whole = part(log);
        expect(part(log.slice(0, middle + 1)) + part(log.slice(middle))).toBeCloseTo(whole, 9 - Math.log10(whole + 1));
      }),
    );
  });

  test('units of the record change nothing', () => {
    fc.assert(
      fc.property(logs, (log) => {
        const other = log.map(({ time, temperature }) => ({
          time: { value: (time as { value: number }).value * 60, unit: 's' } as const,
          temperature: { value: ((temperature as { value: number }).value * 9) / 5 + 32, unit: 'degF' } as const,
        }));
        const here = lethality({ log, ...F0 }).minutes;
        const there = lethality({ log: other, reference: '249.98 degF', z: '18 degF' }).minutes;
        expect(there / here).toBeCloseTo(1, 9);
      }),
    );
  });

  test('texts and quantities are read alike', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 200, max: 1300 })), {
          minLength: 2,
          maxLength: 9,
        }),
        (steps) => {
          let tenths = 0;
          const texts = steps.map(([step, degC]) => {
            tenths += step;
            return { time: `${tenths / 10} min`, temperature: `${degC / 10} degC` } as LogPoint;
          });
          const values = texts.map(({ time, temperature }) =>
            at(Number.parseFloat(time as string), Number.parseFloat(temperature as string)),
          );
          expect(lethality({ log: texts, ...F0 }).minutes).toBe(lethality({ log: values, ...F0 }).minutes);
        },
      ),
    );
  });
});

test('spellings that are not plain are read too', () => {
  const log: LogPoint[] = [
    { time: '0 min', temperature: '121.1 °C' },
    { time: '1 h 30 min', temperature: '394.25 K' },
    { time: '1 1/2 h' as never, temperature: '121.1 degC' },
  ];
  expect(errorOf(() => lethality({ log, ...F0 }))).toEqual(['CONTRADICTION', 'log[2].time']);
  expect(lethality({ log: log.slice(0, 2), ...F0 }).minutes).toBeCloseTo(90, 9);
});

test('the hottest reading comes back as it was given, the last of equals', () => {
  const answer = lethality({
    log: [
      { time: '0 s', temperature: '200 degF' },
      { time: '60 s', temperature: '240 degF' },
      { time: '120 s', temperature: '240 degF' },
      { time: '300 s', temperature: '180 degF' },
    ],
    reference: '240 degF',
    z: '18 degF',
  });
  expect(answer.hottestPoint).toEqual({ time: { value: 120, unit: 's' }, temperature: { value: 240, unit: 'degF' } });
  expect(answer.longestGap).toEqual({ value: 180, unit: 's' });
  // after it: 3 min x (1 + 10^(-60/18))/2
  expect(answer.shareAfterHottest * answer.minutes).toBeCloseTo(1.5 * (1 + 10 ** (-60 / 18)), 9);
});

test('a record that is all cold is worth nothing, and says so without NaN', () => {
  const answer = lethality({ log: [at(0, -80), at(10, -80)], reference: '200 degC', z: '1 degC' });
  expect(answer.minutes).toBeGreaterThanOrEqual(0);
  expect(Number.isFinite(answer.straightLineMinutes)).toBe(true);
  expect(Number.isFinite(answer.shareAfterHottest)).toBe(true);
  // so little time and heat that a double holds none of it
  const nothing = lethality({ log: [at(0, -80), at(1e-60, -80)], reference: '200 degC', z: '1 degC' });
  expect(nothing.minutes).toBe(0);
  expect(nothing.shareAfterHottest).toBe(0);
});

test('a coarse record gets a caution, a fine one does not', () => {
  const ramp = (points: number) =>
    Array.from({ length: points + 1 }, (_, index) => at((10 * index) / points, 100 + (21.1 * index) / points));
  const ids = (log: LogPoint[]) => lethality({ log, ...F0 }).cautions.map(({ id }) => id);
  // on a straight ramp the trapezoid is high by (ln 10 dT/z)^2/12: 2.4 % with 9 steps, 1.97 % with 10
  expect(ids(ramp(9))).toContain('coarse-log');
  expect(ids(ramp(10))).not.toContain('coarse-log');
  // the exact area under a straight ramp, whatever the readings: dt/dT x z/ln 10 x (L_end - L_start)
  const exact = (10 / 21.1) * (10 / Math.LN10) * (1 - 10 ** -2.11);
  for (const points of [1, 2, 20]) {
    expect(lethality({ log: ramp(points), ...F0 }).straightLineMinutes).toBeCloseTo(exact, 9);
  }
});

test('it always says that it checks a record and sets no process', () => {
  const { cautions, basis } = lethality({ log: [at(0, 100), at(1, 100)], ...F0 });
  expect(cautions[0]?.id).toBe('record-check-only');
  expect(cautions.map(({ id }) => id)).toEqual(expect.arrayContaining(['coldest-spot', 'cooling-counts']));
  expect(basis.map(({ kind }) => kind)).toEqual(['measured', 'equation', 'equation']);
});

const good = [at(0, 100), at(1, 110)];
test.each([
  ['one reading', { log: [at(0, 100)], ...F0 }, ['OUT_OF_RANGE', 'log']],
  ['no reading', { log: [], ...F0 }, ['OUT_OF_RANGE', 'log']],
  ['no log', F0, ['MISSING', 'log']],
  ['a log that is no list', { log: 'warm', ...F0 }, ['WRONG_TYPE', 'log']],
  ['out of order', { log: [at(0, 100), at(10, 110), at(5, 110)], ...F0 }, ['CONTRADICTION', 'log[2].time']],
  ['the same time twice', { log: [at(0, 100), at(0, 100)], ...F0 }, ['CONTRADICTION', 'log[1].time']],
  ['too long a gap', { log: [...good, at(6.1, 110)], longestGap: '5 min', ...F0 }, ['OUT_OF_RANGE', 'log[2].time']],
  ['a time below zero', { log: [at(-1, 100), at(1, 110)], ...F0 }, ['OUT_OF_RANGE', 'log[0].time']],
  ['a flame', { log: [at(0, 100), at(1, 900)], ...F0 }, ['OUT_OF_RANGE', 'log[1].temperature']],
  ['NaN', { log: [at(0, 100), at(1, Number.NaN)], ...F0 }, ['OUT_OF_RANGE', 'log[1].temperature']],
  ['Infinity', { log: [at(0, 100), at(Infinity, 100)], ...F0 }, ['OUT_OF_RANGE', 'log[1].time']],
  ['no unit', { log: [at(0, 100), { time: '5', temperature: '100 degC' }], ...F0 }, ['NOT_A_QUANTITY', 'log[1].time']],
  [
    'a wrong unit',
    { log: [at(0, 100), { time: '5 min', temperature: '10 psi' }], ...F0 },
    ['WRONG_DIMENSION', 'log[1].temperature'],
  ],
  ['a missing time', { log: [at(0, 100), { temperature: '100 degC' }], ...F0 }, ['MISSING', 'log[1].time']],
  ['an extra field', { log: [at(0, 100), { ...at(1, 100), probe: 2 }], ...F0 }, ['UNKNOWN_FIELD', 'log[1].probe']],
  [
    'an extra part',
    { log: [at(0, 100), { time: { value: 1, unit: 'min', note: '' }, temperature: '99 degC' }], ...F0 },
  ],
  ['nothing where a reading belongs', { log: [at(0, 100), null], ...F0 }, ['WRONG_TYPE', 'log[1]']],
  ['a list where a reading belongs', { log: [at(0, 100), [1, 2]], ...F0 }, ['WRONG_TYPE', 'log[1]']],
  ['no z', { log: good, reference: '121.1 degC' }, ['MISSING', 'z']],
  ['z of nothing', { log: good, reference: '121.1 degC', z: '0 degC' }, ['OUT_OF_RANGE', 'z']],
  ['a far reference', { log: good, reference: '500 degC', z: '10 degC' }, ['OUT_OF_RANGE', 'reference']],
])('%s is refused', (_, input, error = ['UNKNOWN_FIELD', 'log[1].time']) => {
  expect(errorOf(() => lethality(input as never))).toEqual(error);
});

test('a gap just as long as allowed is taken', () => {
  expect(lethality({ log: [at(0, 100), at(5, 100)], longestGap: '5 min', ...F0 }).longestGap.value).toBe(5);
});

test('100,000 readings take time in proportion: far less than the hundredfold of 10,000 that pairs would', () => {
  const log = (readings: number) =>
    Array.from({ length: readings }, (_, second) => ({
      time: `${second} s` as const,
      temperature: `${200 + (second % 50)} degF` as const,
    }));
  const [short, long] = [log(10_000), log(100_000)];
  const took = (points: LogPoint[]): number => {
    const start = performance.now();
    lethality({ log: points, reference: '250 degF', z: '18 degF' });
    return performance.now() - start;
  };
  const ratios = Array.from({ length: 4 }, () => took(long) / Math.min(took(short), took(short)));
  expect(Math.min(...ratios)).toBeLessThan(40);
});

test('a list of holds is the sum of its parts, and agrees with a record of the same', () => {
  const held = lethality({
    heldAt: [
      { temperature: '111.1 degC', time: '30 min' },
      { temperature: '121.1 degC', time: '120 s' },
    ],
    ...F0,
  });
  expect(held.minutesOfEach[0]).toBeCloseTo(3, 9);
  expect(held.minutesOfEach[1]).toBeCloseTo(2, 9);
  expect(held.minutes).toBeCloseTo(5, 9);
  const record = lethality({
    log: [
      { time: '0 min', temperature: '111.1 degC' },
      { time: '30 min', temperature: '111.1 degC' },
    ],
    ...F0,
  });
  expect(record.minutes).toBeCloseTo(held.minutesOfEach[0] as number, 9);
});

test('every answer of arithmetic says that it is not a process or that resistance varies', () => {
  const first = { temperature: '80 degC', dValue: '10 min' } as const;
  const answers = [
    lethality({ heldAt: [{ temperature: '100 degC', time: '1 min' }], ...F0 }),
    lethality({ heldAt: [{ temperature: '100 degC', time: '1 min' }], ...F0, dValue: '1 min' }),
  ];
  for (const { cautions, basis } of answers) {
    expect(cautions.map(({ id }) => id)).toContain('record-check-only');
    expect(basis.length).toBeGreaterThan(0);
  }
  const z = lethality({ first, second: { temperature: '90 degC', dValue: '1 min' } });
  expect(z.cautions.map(({ id }) => id)).toEqual(['resistance-varies']);
});

test.each([
  [() => lethality({ heldAt: [], log: [], ...F0 } as never), ['CONTRADICTION', 'heldAt']],
  [() => lethality({ heldAt: [], ...F0 }), ['OUT_OF_RANGE', 'heldAt']],
])('bad input %# is refused', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});

test('a printed hold is worth its own time at any other temperature', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.double({ min: 80, max: 130, noNaN: true }),
      fc.double({ min: 10, max: 20, noNaN: true }),
      (minutes, degC, zDegrees) => {
        const z = { value: zDegrees, unit: 'delta degC' } as const;
        const temperature = { value: degC, unit: 'degC' } as const;
        const held = { temperature: '100 degC', time: { value: minutes, unit: 'min' } } as const;
        const moved = lethality({ heldAt: [held], reference: temperature, z }).minutes;
        const back = { temperature, time: { value: moved, unit: 'min' } } as const;
        expect(lethality({ heldAt: [back], reference: '100 degC', z }).minutes).toBeCloseTo(minutes, 6);
        if (degC > 100) expect(moved).toBeLessThan(minutes);
      },
    ),
  );
});

test('a D value counts the reductions of holds and of a record', () => {
  const holds = [{ temperature: '121.1 degC', time: '2.52 min' }] as const;
  const held = lethality({ heldAt: [...holds], ...F0, dValue: '12.6 s' });
  expect(held.reductions).toBeCloseTo(12, 9); // handbook Table 10.10: 12 x 0.21
  expect(held.cautions.map(({ id }) => id)).toContain('published-heat-no-process');
  const log = [
    { time: '0 min', temperature: '121.1 degC' },
    { time: '3 min', temperature: '121.1 degC' },
  ] as const;
  expect(lethality({ log: [...log], ...F0, dValue: '0.25 min' }).reductions).toBeCloseTo(12, 9);
  expect(lethality({ log: [...log], ...F0 })).not.toHaveProperty('reductions');
  expect(errorOf(() => lethality({ heldAt: [...holds], ...F0, dValue: '0 min' }))).toEqual(['OUT_OF_RANGE', 'dValue']);
});
