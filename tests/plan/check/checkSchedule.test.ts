import { describe, expect, test } from 'vitest';
import { checkSchedule, type FeasibleDay, planDay } from '../../../src/plan/index';
import type { ScheduledTask } from '../../../src/plan/request/daySchedule';
import { codeText } from '../../helpers/errors';
import { GARBAGE } from '../../helpers/garbage';
import { randomSmallKitchen } from '../randomSmallKitchen';

const plans: FeasibleDay[] = [];

describe('every plan of 220 small kitchens passes', () => {
  test.each(Array.from({ length: 11 }, (_, index) => 1 + 20 * index))('kitchens %i and the 19 after it', (first) => {
    for (let seed = first; seed < first + 20; seed++) {
      const plan = planDay(randomSmallKitchen(seed));
      if (!plan.feasible) throw new Error(`kitchen ${seed}: ${plan.reason.text}`);
      plans.push(plan);
      expect(checkSchedule(plan).broken, `kitchen ${seed}`).toEqual([]);
      // said again without the checker: no filling ends more than 20 minutes before the next load of its product
      const of = (kind: string, name: string) =>
        plan.schedule.tasks.filter((task) => task.kind === kind && task.forProducts.includes(name));
      for (const { name } of plan.products.filter(({ canning: jars }) => jars !== undefined)) {
        for (const { endMinute: end } of of('fill', name)) {
          const next = Math.min(...of('can', name).flatMap(({ startMinute: start }) => (start >= end ? [start] : [])));
          expect(next - end, `kitchen ${seed}: ${name}`).toBeLessThanOrEqual(20);
        }
      }
    }
  });
  test('most of them can something, some of it two products in one load, and some loads are less than full', () => {
    const canned = plans.filter(({ products }) => products.some(({ canning: jars }) => jars !== undefined));
    expect(plans.length).toBe(220);
    expect(canned.length).toBeGreaterThan(180);
    const loads = plans.flatMap(({ schedule }) => schedule.tasks.filter(({ kind }) => kind === 'can'));
    expect(loads.some(({ forProducts: products }) => products.length > 1)).toBe(true);
    expect(loads.some(({ units }) => (units?.count ?? 0) > 9)).toBe(true);
  });
});

/** A day by hand: cut 20, cook 20, fill 14, can 60; a second load an hour later. */
const hand = { hands: 1, burners: 2 };
const used = (resource: string, used = 1) => ({ resource, used });
const jars = { count: 7, unit: 'quart jar' };
const task = (kind: ScheduledTask['kind'], start: number, end: number, more: Partial<ScheduledTask> = {}) => ({
  kind,
  what: 'peaches',
  forProducts: ['peaches'],
  startMinute: start,
  endMinute: end,
  uses: kind === 'prepare' || kind === 'fill' ? [used('hands')] : kind === 'cook' ? [used('pot')] : [used('canner')],
  unattended: false,
  ...more,
});
const good = [
  task('prepare', 0, 20),
  task('heat canner', 10, 50, { what: 'canner', uses: [used('canner'), used('burners')] }),
  task('cook', 20, 40),
  task('fill', 40, 54, { units: jars }),
  task('load', 54, 58, { uses: [used('hands')] }),
  task('can', 54, 114, { units: jars }),
  task('unload', 110, 114, { uses: [used('hands')] }),
];
const day = (tasks: readonly object[], to = 200) => ({
  tasks,
  windows: [{ day: 0, startMinute: 0, endMinute: to }],
  resources: [
    ...Object.entries(hand).map(([resource, available]) => ({ resource, available })),
    { resource: 'pot', available: 1 },
    { resource: 'canner', available: 1 },
    { resource: 'freezer' },
  ],
});
const rules = (tasks: readonly object[], to?: number) => [
  ...new Set(checkSchedule(day(tasks, to)).broken.map(({ rule }) => rule)),
];
const LIFTS: readonly string[] = ['can', 'load', 'unload'];
/** A load moves with the lifting of its jars. */
const moved = (kind: string, by: number) =>
  good.map((each) =>
    each.kind === kind || (kind === 'can' && LIFTS.includes(each.kind))
      ? { ...each, startMinute: each.startMinute + by, endMinute: each.endMinute + by }
      : each,
  );

describe('a day by hand', () => {
  test('stands as it is', () => expect(checkSchedule(day(good)).broken).toEqual([]));
  test('the load 7 min later: the first jars have waited more than 20 min', () => {
    // the first is filled at 42, the second at 44 ... and the load begins at 64
    expect(rules(moved('can', 10))).toEqual(['wait', 'order']);
    expect(rules(moved('can', 8))).toEqual([]);
  });
  test.each([
    ['a load before its jars are filled', moved('can', -10), ['wait', 'order']],
    ['cooked before it is cut', moved('prepare', 5), ['overlap', 'order']],
    ['cut more than an hour before', [...moved('prepare', 0)].map(late(62)), ['wait']],
    ['cooked and not filled at once', moved('cook', -0).map(shiftFill(2)), ['wait']],
    ['two things in one pot', [...good, task('cook', 30, 50, { forProducts: ['plums'] })], ['overlap']],
    [
      'what is not there',
      [...good, task('cook', 60, 70, { forProducts: ['plums'], uses: [used('kettle')] })],
      ['overlap'],
    ],
    ['a canner heated for nothing', [...good, task('heat canner', 120, 140)], ['order']],
    [
      'dried packed before it is dry',
      [...good, task('pack', 150, 160, { forProducts: ['pears'] })],
      ['overlap', 'order'],
    ],
    ['ends before it starts', [...good, task('pack', 160, 150, { forProducts: ['pears'] })], ['order']],
    ['fewer jars filled than canned', good.filter(({ kind }) => kind !== 'fill'), ['order']],
  ] as const)('%s', (_, tasks, expected) => {
    const found = rules(tasks);
    for (const each of expected.slice(-1)) expect(found).toContain(each);
  });
  test('after the hours, and what goes on by itself started at night', () => {
    expect(rules(good, 100)).toEqual(['hours']);
    const dry = task('dry', 210, 600, { forProducts: ['pears'], unattended: true, uses: [] });
    expect(rules([...good, dry])).toEqual(['hours']);
    expect(rules([...good, { ...dry, startMinute: 190 }])).toEqual([]);
  });
  test('what is not limited is never too much', () => {
    const freeze = task('freeze', 60, 600, { forProducts: ['pears'], unattended: true, uses: [used('freezer', 99)] });
    expect(rules([...good, freeze])).toEqual([]);
  });
});
/** Everything but the cutting later. */
function late(by: number) {
  return (each: (typeof good)[number]) =>
    each.kind === 'prepare' ? each : { ...each, startMinute: each.startMinute + by, endMinute: each.endMinute + by };
}
/** The filling, and what follows it, later. */
function shiftFill(by: number) {
  return (each: (typeof good)[number]) =>
    each.kind === 'fill' || LIFTS.includes(each.kind)
      ? { ...each, startMinute: each.startMinute + by, endMinute: each.endMinute + by }
      : each;
}

describe('a plan that is tampered with', () => {
  const plan = planDay(randomSmallKitchen(4)) as FeasibleDay;
  const first = (kind: string) => plan.schedule.tasks.findIndex((each) => each.kind === kind);
  const changed = (index: number, change: (each: ScheduledTask) => Partial<ScheduledTask>) => ({
    ...plan,
    schedule: {
      ...plan.schedule,
      tasks: plan.schedule.tasks.map((each, at) => (at === index ? { ...each, ...change(each) } : each)),
    },
  });
  const ruleOf = (index: number, change: (each: ScheduledTask) => Partial<ScheduledTask>) => {
    expect(index).toBeGreaterThanOrEqual(0);
    return checkSchedule(changed(index, change)).broken.map(({ rule }) => rule);
  };
  test('is found out', () => {
    expect(checkSchedule(plan).broken).toEqual([]);
    expect(checkSchedule(plan.schedule).broken).toEqual([]);
    const inJars = new Set(plan.products.flatMap(({ name, canning: jars }) => (jars === undefined ? [] : [name])));
    const filling = plan.schedule.tasks.findIndex(
      ({ kind, forProducts: products }) => kind === 'fill' && products.some((name) => inJars.has(name)),
    );
    expect(ruleOf(first('can'), ({ startMinute: start }) => ({ endMinute: start + 1 }))).toContain('work');
    expect(
      ruleOf(first('can'), ({ startMinute: start, endMinute: end }) => ({
        startMinute: start + 25,
        endMinute: end + 25,
      })),
    ).toContain('wait');
    expect(ruleOf(filling, ({ units }) => ({ units: { count: (units?.count ?? 0) - 1, unit: 'jar' } }))).toContain(
      'work',
    );
    expect(
      ruleOf(first('prepare'), ({ startMinute: start, endMinute: end }) => ({
        startMinute: start - 1e4,
        endMinute: end - 1e4,
      })),
    ).toContain('hours');
  });
});

test.each(GARBAGE.map((each) => [each]))('no order of work: %j', (garbage) => {
  expect(codeText(() => checkSchedule(garbage as object))).toMatch(/^(MISSING|WRONG_TYPE)/);
});
test('wrong fields are named', () => {
  const bad = (more: object) => codeText(() => checkSchedule({ ...day(good), ...more }));
  expect(bad({ tasks: [1] })).toBe('WRONG_TYPE tasks[0]');
  expect(bad({ tasks: [{ ...good[0], startMinute: 'soon' }] })).toBe('WRONG_TYPE tasks[0].startMinute');
  expect(bad({ tasks: [{ ...good[0], endMinute: Number.NaN }] })).toBe('OUT_OF_RANGE tasks[0].endMinute');
  expect(bad({ tasks: [{ ...good[0], uses: [{ resource: 'hands', used: -1 }] }] })).toBe(
    'OUT_OF_RANGE tasks[0].uses[0].used',
  );
  expect(bad({ tasks: [{ ...good[3], units: { count: 1.5, unit: 'jar' } }] })).toBe(
    'OUT_OF_RANGE tasks[0].units.count',
  );
  expect(bad({ windows: [{ day: 0.5, startMinute: 0, endMinute: 9 }] })).toBe('OUT_OF_RANGE windows[0].day');
  expect(bad({ tasks: [{ ...good[0], who: 'cook' }] })).toBe('WRONG_TYPE tasks[0].who');
  expect(bad({ tasks: [{ ...good[0], leastMinutes: -1 }] })).toBe('OUT_OF_RANGE tasks[0].leastMinutes');
  expect(bad({ resources: [{ resource: 'canner', busyUntilMinute: 'noon' }] })).toBe(
    'WRONG_TYPE resources[0].busyUntilMinute',
  );
  expect(bad({ tasks: Array(10_001).fill(good[0]) })).toBe('TOO_MUCH tasks');
  expect(bad({ resources: undefined })).toBe('MISSING resources');
  expect(codeText(() => checkSchedule({ feasible: false }))).toBe('CONTRADICTION feasible');
  expect(codeText(() => checkSchedule({ feasible: true, schedule: day(good), products: [{ name: 'peaches' }] }))).toBe(
    'WRONG_TYPE products',
  );
});
