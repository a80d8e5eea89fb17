import { describe, expect, test } from 'vitest';
import { brokenRules } from '../../../src/plan/check/checkTasks';
import type { DaySchedule, ScheduledTask, TaskKind, Window } from '../../../src/plan/request/daySchedule';
import type { CanStep, Job, Means, Portion } from '../../../src/plan/schedule/job';
import { fitsTogether } from '../../../src/plan/schedule/loadsThatFit';
import { scheduleJobs } from '../../../src/plan/schedule/scheduleJobs';

const means: Means = {
  start: 480,
  hands: 2,
  burners: 4,
  pots: [{ label: 'pot', litres: 10 }],
  canners: ['canner', 'second canner'],
  trays: 4,
};
const hours = (to: number): Window[] => [{ day: 0, startMinute: 0, endMinute: to }];
const portion = (product: string, more: Partial<Portion> = {}): Portion => ({
  product,
  what: 'peaches',
  raw: { value: 6, unit: 'kg' },
  filled: { count: 7, unit: 'quart jar' },
  prepare: 40,
  fill: 14,
  cook: { minutes: 20, litres: 5, stirred: false },
  drops: [],
  ...more,
});
const step = (throughBreaks = false, minutes = 60): CanStep => ({
  kind: 'can',
  jars: { count: 7, unit: 'quart jar' },
  lift: 3.5,
  canners: [{ canner: 0, minutes, warmUp: 30, throughBreaks }],
});
const load = (product: string, into = step(), more: Partial<Portion> = {}): Job => ({
  portions: [portion(product, more)],
  into,
  needs: [],
});
const order = (jobs: Job[], kitchen = means, windows = hours(600)): DaySchedule => {
  const schedule = scheduleJobs(jobs, kitchen, windows) as DaySchedule;
  expect(brokenRules(schedule)).toEqual([]);
  return schedule;
};
const of = ({ tasks }: DaySchedule, kind: TaskKind): ScheduledTask[] => tasks.filter((task) => task.kind === kind);
const times = (schedule: DaySchedule, kind: TaskKind) =>
  of(schedule, kind).map(({ startMinute: start, endMinute: end }) => [start, end]);

describe('breaks', () => {
  // prepared 20, cooked 20, filled 7; a break from 70 to 110: jars go in before it and come out after it
  const windows = [
    { day: 0, startMinute: 0, endMinute: 70 },
    { day: 0, startMinute: 110, endMinute: 400 },
  ];
  test('a boiling-water load runs on through one', () => {
    const through = order([load('peaches', step(true))], means, windows);
    expect(times(through, 'can')).toEqual([[54, 114]]);
    expect(of(through, 'can')[0]?.throughBreak).toBe(true);
  });
  test('a pressure canner is looked after, and waits until after it', () => {
    const after = order([load('peaches')], means, windows);
    expect(times(after, 'can')[0]?.[0]).toBeGreaterThanOrEqual(110);
    expect(of(after, 'can')[0]?.throughBreak).toBeUndefined();
  });
  test('nobody stirs in one', () => {
    const stirred = order(
      [load('jam', step(true), { cook: { minutes: 50, litres: 5, stirred: true } })],
      means,
      windows,
    );
    expect(times(stirred, 'cook')[0]?.[0]).toBeGreaterThanOrEqual(110);
  });
});

test('a canner that still runs is waited for, and a dryer is loaded when it is free', () => {
  const dried: Job = {
    portions: [portion('slices', { fill: 0, cook: undefined as never })],
    into: { kind: 'dry', units: { count: 4, unit: 'tray' }, amount: 4, minutes: 300, pack: 0 },
    needs: [],
  };
  const schedule = order([load('peaches'), dried], { ...means, busy: { dryer: 200, canners: [150] } });
  expect(times(schedule, 'dry')).toEqual([[200, 500]]);
  // free at 150, its water heated for 30
  expect(times(schedule, 'can')[0]?.[0]).toBe(180);
  expect(schedule.resources).toEqual(
    expect.arrayContaining([
      { resource: 'dryer trays', available: 4, busyUntilMinute: 200 },
      { resource: 'canner', available: 1, busyUntilMinute: 150 },
    ]),
  );
});

test('people by name: as many as the hands, nobody twice at once, work stays with the same person', () => {
  const schedule = order([load('one'), load('two')], { ...means, names: ['cook', 'helper'] });
  for (const { who, uses } of schedule.tasks)
    expect(who?.length ?? 0).toBe(uses.find(({ resource }) => resource === 'hands')?.used ?? 0);
  const lifts = [...of(schedule, 'load'), ...of(schedule, 'unload')].filter(
    ({ forProducts: products }) => products[0] === 'one',
  );
  expect(new Set(lifts.flatMap(({ who = [] }) => who)).size).toBe(1);
  expect(order([load('one')]).tasks.every(({ who }) => who === undefined)).toBe(true);
});

test('what is salted stands for as long as its recipe says, and is cooked within the hour', () => {
  const schedule = order([load('pickles', step(), { soak: 180 })]);
  const [[, cut] = []] = times(schedule, 'prepare');
  expect(times(schedule, 'stand')).toEqual([[cut, (cut ?? 0) + 180]]);
  const wait = (times(schedule, 'cook')[0]?.[0] ?? 0) - (cut ?? 0) - 180;
  expect(wait).toBeGreaterThanOrEqual(0);
  expect(wait).toBeLessThanOrEqual(60);
});

test('a crock goes on for weeks, past the last hours, and is not waited for', () => {
  const kraut: Job = {
    portions: [portion('kraut', { cook: undefined as never })],
    into: { kind: 'ferment', units: { count: 1, unit: 'crock' }, amount: 0, minutes: 40_320, pack: 0 },
    needs: [],
  };
  const schedule = order([kraut], means, hours(120));
  const [[start = 0, end = 0] = []] = times(schedule, 'ferment');
  expect(end - start).toBe(40_320);
  expect(schedule.makespan).toBeLessThanOrEqual(120);
  expect(schedule.allDoneMinute).toBeLessThanOrEqual(120);
});

describe('one pot of sauce for two loads', () => {
  const sauce = (minutes: number): Job => {
    const apart = [0, 1].map(() =>
      load('sauce', step(true, minutes), { cook: { minutes: 30, litres: 5, stirred: false } }),
    );
    return {
      ...(apart[0] as Job),
      portions: [portion('sauce', { prepare: 80, cook: { minutes: 30, litres: 10, stirred: false } })],
      together: {
        hot: 60,
        more: [{ filled: { count: 7, unit: 'quart jar' }, fill: 14, into: step(true, minutes) }],
        apart,
      },
    };
  };
  test('is cooked once and kept hot, on its burner, until the last jar is filled', () => {
    const schedule = order([sauce(50)]);
    expect(of(schedule, 'cook').length).toBe(1);
    expect(of(schedule, 'can').length).toBe(2);
    const [hot] = of(schedule, 'keep hot') as [ScheduledTask];
    expect(hot.startMinute).toBe(of(schedule, 'cook')[0]?.endMinute);
    expect(hot.endMinute).toBe(Math.max(...of(schedule, 'fill').map(({ endMinute: end }) => end)));
    expect(hot.endMinute - hot.startMinute).toBeLessThanOrEqual(60);
    expect(hot.uses.map(({ resource }) => resource).sort()).toEqual(['burners', 'pot']);
  });
  test('is cooked twice where the canner is not free in time', () => {
    expect(fitsTogether(sauce(50), means)).toBe(true);
    expect(fitsTogether(sauce(110), means)).toBe(false);
    const schedule = order([sauce(110)]);
    expect(of(schedule, 'cook').length).toBe(2);
    expect(of(schedule, 'keep hot')).toEqual([]);
  });
});
