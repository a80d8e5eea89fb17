import { describe, expect, test } from 'vitest';
import { checkSchedule } from '../../../src/plan/check/checkSchedule';
import type { DaySchedule, Window } from '../../../src/plan/request/daySchedule';
import { rowsOf } from '../../../src/plan/schedule/blocks';
import { clockAt, workedBy } from '../../../src/plan/schedule/hours';
import type { Job, Means } from '../../../src/plan/schedule/job';
import { fitsAlone } from '../../../src/plan/schedule/loadsThatFit';
import { scheduleJobs } from '../../../src/plan/schedule/scheduleJobs';
import { clashes, randomJobs } from './randomJobs';

const capacityOf = (means: Means) => new Map(rowsOf(means).map(({ name, capacity }) => [name, capacity]));

describe('on 100 random days', () => {
  const gaps: number[] = [];
  test.each(Array.from({ length: 100 }, (_, index) => index + 1))(
    'day %i: nothing is used twice, nothing waits too long, the bound holds',
    (seed) => {
      const { jobs: all, means, windows } = randomJobs(seed);
      // a load that this kitchen cannot have ready in time is for the plan to make smaller
      const jobs = all.filter((job) => job.into?.kind !== 'can' || fitsAlone(job, means));
      expect(jobs.length).toBeGreaterThan(0);
      const schedule = scheduleJobs(jobs, means, windows) as DaySchedule;
      expect(schedule).toBeDefined();
      expect(clashes(schedule.tasks, capacityOf(means), windows)).toEqual([]);
      // the hours may be too short here: that is for the plan to see to
      const last = windows[windows.length - 1] as Window;
      const longer = [
        ...windows.slice(0, -1),
        { ...last, endMinute: Math.max(last.endMinute, schedule.allDoneMinute) },
      ];
      expect(checkSchedule({ ...schedule, windows: longer }).broken).toEqual([]);
      expect(schedule.lowerBound).toBeLessThanOrEqual(schedule.makespan);
      const worked = (clock: number) => workedBy(clock, windows);
      expect(schedule.gap).toBeCloseTo(worked(schedule.makespan) / worked(schedule.lowerBound) - 1, 12);
      expect(schedule.allDoneMinute).toBeGreaterThanOrEqual(schedule.makespan);
      gaps.push(schedule.gap);
    },
  );
  test('the gap to the bound: a fifth at the median, more where much must wait for little', () => {
    const sorted = gaps.toSorted((one, other) => one - other);
    expect(sorted.length).toBe(100);
    expect(sorted[50]).toBeLessThan(0.25);
    // the bound does not know that no jar waits over 20 minutes
    expect(sorted[90]).toBeLessThan(0.55);
  });
});

// A day by hand: one pair of hands, one canner, two loads of 30 min to prepare, 20 to cook, 10 to fill, 60 to can.
describe('two loads by hand', () => {
  const means: Means = {
    start: 480,
    hands: 1,
    burners: 2,
    pots: [{ label: 'pot', litres: 5 }],
    canners: ['canner'],
    trays: 0,
  };
  const load = (product: string, warmUp = 0): Job => ({
    portions: [
      {
        product,
        what: 'peaches',
        raw: { value: 6, unit: 'kg' },
        filled: { count: 7, unit: 'quart jar' },
        prepare: 30,
        fill: 10,
        cook: { minutes: 20, litres: 5, stirred: false },
        drops: [],
      },
    ],
    into: {
      kind: 'can',
      jars: { count: 7, unit: 'quart jar' },
      lift: 3.5,
      canners: [{ canner: 0, minutes: 60, warmUp }],
    },
    needs: [],
  });
  const day = [{ day: 0, startMinute: 0, endMinute: 600 }];
  const ends = (tasks: DaySchedule['tasks'], kind: string) =>
    tasks.filter((task) => task.kind === kind).map(({ startMinute: start, endMinute: end }) => [start, end]);

  test('the second is cut while the first cooks, put down to fill it, and filled before that is out', () => {
    const { tasks, makespan, lowerBound, gap } = scheduleJobs([load('one'), load('two')], means, day) as DaySchedule;
    expect(ends(tasks, 'can')).toEqual([
      [60, 120],
      [120, 180],
    ]);
    expect(tasks.filter(({ kind, forProducts: [name] }) => kind === 'prepare' && name === 'two')).toMatchObject([
      { startMinute: 42, endMinute: 50, goesOnMinute: 64, raw: { value: 1.6 } },
      { startMinute: 64, endMinute: 86, raw: { value: 4.4 } },
    ]);
    // from 116 to 120 the only pair of hands lifts the first load out
    expect(ends(tasks, 'fill')).toEqual([
      [50, 60],
      [106, 116],
    ]);
    expect([makespan, lowerBound, gap]).toEqual([180, 180, 0]);
  });
  test('with two pairs of hands the canner never waits: 40 min, then 60 and 60', () => {
    const schedule = scheduleJobs([load('one'), load('two')], { ...means, hands: 2 }, day) as DaySchedule;
    expect([schedule.makespan, schedule.lowerBound, schedule.gap]).toEqual([160, 160, 0]);
  });
  test('a cold canner is heated meanwhile, and its first load waits for it', () => {
    const { tasks } = scheduleJobs([load('one', 80), load('two', 80)], means, day) as DaySchedule;
    expect(ends(tasks, 'heat canner')).toEqual([[0, 80]]);
    expect(ends(tasks, 'can')[0]).toEqual([80, 140]);
  });
  test('hours that end before the second load: the next day, the canner heated again', () => {
    const days = [
      { day: 0, startMinute: 0, endMinute: 150 },
      { day: 1, startMinute: 1440, endMinute: 1700 },
    ];
    const { tasks, makespan, windows } = scheduleJobs([load('one', 10), load('two', 10)], means, days) as DaySchedule;
    expect(ends(tasks, 'can')).toEqual([
      [60, 120],
      [1500, 1560],
    ]);
    expect(ends(tasks, 'heat canner').length).toBe(2);
    expect([makespan, windows]).toEqual([1560, days]);
  });
  test('hours that are too short run on after the last window, never between two', () => {
    expect(
      scheduleJobs([load('one'), load('two')], means, [{ day: 0, startMinute: 0, endMinute: 100 }])?.makespan,
    ).toBe(180);
  });
  test('trimmings are there when enough has been cut, not before', () => {
    // the canner heats for 80 min, so the fruit is not cut at the start, when there would be time for the stock
    const [portion] = load('one').portions as [Job['portions'][number]];
    const cut = { ...load('one', 80), portions: [{ ...portion, drops: [{ lot: 0, kg: 1 }] }] };
    const { cook: _, ...raw } = portion;
    const stock = (kg: number): Job => ({
      portions: [{ ...raw, product: 'stock', prepare: 5, fill: 5, drops: [] }],
      needs: [{ lot: 0, kg }],
    });
    const { tasks } = scheduleJobs([stock(1), cut], means, day) as DaySchedule;
    const prepared = (product: string) =>
      tasks.find(({ kind, forProducts: products }) => kind === 'prepare' && products.includes(product));
    expect(prepared('one')?.startMinute).toBeGreaterThan(5);
    expect(prepared('stock')?.startMinute).toBeGreaterThanOrEqual(prepared('one')?.endMinute ?? 1e9);
    expect(scheduleJobs([stock(1.1), cut], means, day)).toBeUndefined();
  });
  test('a canner is not kept hot for hours: its water is heated when the load is near', () => {
    const trimmed: Job = { ...load('late', 20), needs: [{ lot: 0, kg: 1 }] };
    const [portion] = load('early').portions as [Job['portions'][number]];
    const early: Job = { portions: [{ ...portion, prepare: 200, drops: [{ lot: 0, kg: 1 }] }], needs: [] };
    const { tasks } = scheduleJobs([early, trimmed], means, day) as DaySchedule;
    const [[, hot]] = ends(tasks, 'heat canner') as [[number, number]];
    const [[start]] = ends(tasks, 'can') as [[number, number]];
    expect(start).toBeGreaterThan(200);
    expect(start - hot).toBeLessThanOrEqual(60 + 60);
  });
  test('work that fits no pot is no schedule', () => {
    expect(scheduleJobs([load('one')], { ...means, pots: [{ label: 'pot', litres: 4 }] }, day)).toBeUndefined();
  });
  test('nothing to do takes no time', () => {
    expect(scheduleJobs([], means, day)).toEqual({
      startClock: 480,
      tasks: [],
      windows: day,
      resources: expect.any(Array),
      makespan: 0,
      lowerBound: 0,
      gap: 0,
      allDoneMinute: 0,
    });
  });
});

test('the clock over a break', () => {
  const windows = [
    { day: 0, startMinute: 0, endMinute: 100 },
    { day: 1, startMinute: 1440, endMinute: 1500 },
  ];
  expect([0, 100, 101, 160, 170].map((worked) => clockAt(worked, windows))).toEqual([0, 100, 1441, 1500, 1510]);
  expect([0, 100, 700, 1441, 1510].map((clock) => workedBy(clock, windows))).toEqual([0, 100, 100, 101, 170]);
});
