import { describe, expect, test } from 'vitest';
import { jobsOf } from '../../../../src/plan/fit/jobs';
import type { PlanDayInput } from '../../../../src/plan/index';
import { windowsOf } from '../../../../src/plan/kitchen/hours';
import { decide, isMade } from '../../../../src/plan/program/decide';
import { keyOf } from '../../../../src/plan/program/decisions';
import { type Prepared, prepare } from '../../../../src/plan/program/prepare';
import { toProgram } from '../../../../src/plan/program/program';
import { scheduleJobs } from '../../../../src/plan/schedule/scheduleJobs';
import { meetsBounds } from '../../../../src/plan/solver/linearProgram';
import { optimize } from '../../../../src/plan/solver/optimize';
import { randomDay } from '../../randomDay';
import { randomSmallKitchen } from '../../randomSmallKitchen';

const inTime = ({ program }: Prepared) =>
  program.bounds.filter(({ of }) => of.of === 'hands in time').map(({ name, terms, max }) => ({ name, terms, max }));

describe('hands in time', () => {
  const day: PlanDayInput = {
    lots: [{ food: 'peach', raw: '60 lb' }],
    kitchen: {
      elevation: '100 m',
      hours: '8 h',
      hands: 2,
      pots: [{ volume: '14 quarts' }],
      canners: [{ method: 'boiling-water', holds: { quart: 7 } }],
      freezer: { room: '40 L' },
    },
    products: [
      { make: 'jars', from: 'peach', form: 'halves', pack: 'hot', jar: 'quart' },
      { make: 'frozen', from: 'peach', form: 'slices' },
    ],
  };
  const prepared = prepare(day);
  test('what is canned is filled before its load, and cut before it is cooked as well', () => {
    const [first] = prepared.makings;
    const { canning, cook, handsPerKg } = first?.activity ?? {};
    const minutes = canning?.canners[0]?.minutes ?? 0;
    const step = (after: number) => 5 * Math.floor(after / 5);
    const [filled, cut] = [step(minutes), step(minutes + (cook?.minutes ?? 0))];
    const rows = inTime(prepared);
    expect(rows.map(({ name }) => name)).toEqual([
      keyOf({ of: 'hands in time', before: filled }),
      keyOf({ of: 'hands in time', before: cut }),
    ]);
    expect(rows.map(({ max }) => max)).toEqual([2 * (480 - filled), 2 * (480 - cut)]);
    // of what is frozen nothing has to be done before that
    expect(rows[1]?.terms).toEqual([['raw|0|0', handsPerKg]]);
  });
  test('no rows where nothing is canned', () => {
    const { products = [], ...rest } = day;
    expect(inTime(prepare({ ...rest, products: products.slice(1) }))).toEqual([]);
  });
});

const SHARES = [0.6, 0.75, 0.85, 0.95];

describe('no work that fits the hours breaks a row', () => {
  const fitting: number[] = [];
  const days = [
    ...Array.from({ length: 60 }, (_, seed) => randomDay(seed + 1)),
    ...Array.from({ length: 60 }, (_, seed) => randomSmallKitchen(seed + 1)),
  ];
  test.each(days.map((day, index) => [index, day] as const))('day %i', (index, day) => {
    const prepared = prepare(day);
    const { capacity, makings, means, request } = prepared;
    const { windows: _, ...bySums } = capacity;
    const activities = makings.map(({ activity }) => activity);
    // some of the minutes, without the rows: a plan that is likelier to fit
    const minutes = capacity.minutes * (SHARES[index % SHARES.length] as number);
    const program = toProgram(activities, { ...bySums, minutes }, request.aim ?? 'most worth');
    const found = optimize(program);
    if (!found.feasible) return;
    const kept = makings.flatMap((making) => {
      const decided = decide(making, found.values);
      return isMade(decided) ? [{ making, decided }] : [];
    });
    const windows = windowsOf(request.kitchen);
    const schedule = scheduleJobs(jobsOf(prepared, kept, found.values), means, windows);
    if (schedule === undefined || schedule.makespan > (windows[windows.length - 1]?.endMinute ?? 0)) return;
    const rows = prepared.program.bounds.filter(({ of }) => of.of === 'hands in time');
    if (rows.length > 0) fitting.push(index);
    expect(meetsBounds({ variables: [], bounds: rows }, found.values)).toBe(true);
  });
  test('of which there were enough', () => expect(fitting.length).toBeGreaterThan(40));
});
