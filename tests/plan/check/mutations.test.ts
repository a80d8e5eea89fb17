import { describe, expect, test } from 'vitest';
import { brokenRules } from '../../../src/plan/check/checkTasks';
import type { DaySchedule, ScheduledTask } from '../../../src/plan/request/daySchedule';
import { orderOf } from './orderOf';

type Change = Partial<ScheduledTask> | undefined;
const orders = Array.from({ length: 64 }, (_, index) => orderOf(8 + index)).filter(
  (each): each is DaySchedule => each !== undefined,
);
const canned = (schedule: DaySchedule, task: ScheduledTask) =>
  schedule.tasks.some(
    ({ kind, forProducts: products }) => kind === 'can' && products.some((name) => task.forProducts.includes(name)),
  );

/**
 * The first order of work that has such a task, with that task changed, or taken out.
 */
function changed(
  has: (task: ScheduledTask, schedule: DaySchedule) => boolean,
  change: (task: ScheduledTask, schedule: DaySchedule) => Change,
): DaySchedule {
  for (const schedule of orders) {
    const found = schedule.tasks.find((task) => has(task, schedule));
    if (found === undefined) continue;
    const to = change(found, schedule);
    const tasks = schedule.tasks.flatMap((task) => {
      if (task !== found) return [task];
      return to === undefined ? [] : [{ ...task, ...to }];
    });
    return { ...schedule, tasks };
  }
  throw new Error('no order of work has such a task');
}
const is = (kind: ScheduledTask['kind']) => (task: ScheduledTask) => task.kind === kind;
const by = (minutes: number) => (task: ScheduledTask) => ({
  startMinute: task.startMinute + minutes,
  endMinute: task.endMinute + minutes,
});
const gone = () => undefined;

test('the orders of work stand as they are', () => {
  expect(orders.length).toBeGreaterThan(50);
  for (const schedule of orders) expect(brokenRules(schedule)).toEqual([]);
});

/** What a scheduler could get wrong, one thing at a time, and the words of the rule that finds it. */
const MISTAKES: readonly (readonly [string, DaySchedule, RegExp])[] = [
  [
    'more hands than there are',
    changed(is('prepare'), () => ({ uses: [{ resource: 'hands', used: 4 }] })),
    /^overlap: hands: \d+ in use/,
  ],
  [
    'two batches in one pot',
    changed(is('cook'), ({ uses }) => ({ uses: [...uses, ...uses] })),
    /^overlap: (pot \d|burners): 2 in use, there is 1/,
  ],
  ['what is not there', changed(is('cook'), () => ({ uses: [{ resource: 'kettle', used: 1 }] })), /^overlap: kettle/],
  [
    'one person at two things',
    changed(
      ({ who, startMinute: start, endMinute: end }, { tasks }) =>
        who?.length === 1 &&
        tasks.some(
          (task) =>
            task.who?.length === 1 && task.who[0] !== who[0] && task.startMinute < end && task.endMinute > start,
        ),
      ({ who, startMinute: start, endMinute: end }, { tasks }) => {
        const other = tasks.find(
          (task) =>
            task.who?.length === 1 && task.who[0] !== who?.[0] && task.startMinute < end && task.endMinute > start,
        );
        return { who: other?.who as readonly string[] };
      },
    ),
    /^overlap: \w+: does two things at once/,
  ],
  [
    'fewer people than hands',
    changed(
      ({ who }) => who !== undefined,
      () => ({ who: [] }),
    ),
    /^overlap: .*pairs of hands, and 0 people/,
  ],
  ['work before the day begins', changed(is('prepare'), by(-3000)), /^hours: prepare .* nobody is there/],
  [
    'work in a break',
    changed(
      ({ kind, endMinute: end }, { windows: [first, second] }) =>
        kind === 'prepare' && second?.day === 0 && end <= (first?.endMinute ?? 0),
      ({ startMinute: start, endMinute: end }, { windows: [first] }) => ({
        startMinute: first?.endMinute ?? 0,
        endMinute: (first?.endMinute ?? 0) + end - start,
      }),
    ),
    /^hours: prepare/,
  ],
  [
    'a canner that is looked after, in a break',
    changed(
      ({ kind, throughBreak }) => kind === 'can' && throughBreak === true,
      () => ({ throughBreak: undefined as never }),
    ),
    /^hours: can/,
  ],
  [
    'a canner at night',
    changed(
      ({ kind }) => kind === 'can',
      ({ startMinute: start, endMinute: end }) => ({
        startMinute: start - 3000,
        endMinute: end - 3000,
        throughBreak: true,
      }),
    ),
    /^hours: can/,
  ],
  ['a dryer loaded at night', changed(is('dry'), by(-3000)), /^hours: dry .* started/],
  [
    'cooked before it is prepared',
    changed(({ kind }) => kind === 'prepare', by(400)),
    /^order: .*before it is prepared/,
  ],
  [
    'put down and not taken up',
    changed(
      ({ goesOnMinute }) => goesOnMinute !== undefined,
      ({ goesOnMinute = 0 }) => ({ goesOnMinute: goesOnMinute + 1 }),
    ),
    /^order: .*put down half prepared/,
  ],
  [
    'put down for too long',
    changed(({ goesOnMinute }) => goesOnMinute !== undefined, by(-70)),
    /^wait: .*some of it prepared, then waits/,
  ],
  ['prepared too long before', changed(is('prepare'), by(-70)), /^wait: .*prepared, then waits/],
  [
    'filled before it is cooked',
    changed(
      (task, schedule) => task.kind === 'cook' && canned(schedule, task),
      ({ endMinute: end }) => ({ endMinute: end + 5 }),
    ),
    /^order: .*fill before it is cooked/,
  ],
  [
    'cooked, and not filled at once',
    changed(
      (task, { tasks }) =>
        task.kind === 'cook' &&
        !tasks.some(({ kind, startMinute: start }) => kind === 'keep hot' && start === task.endMinute),
      ({ endMinute: end }) => ({ endMinute: end - 3 }),
    ),
    /^wait: .*cooked, then waits 3 min/,
  ],
  ['a jar that waits for its load', changed(is('can'), by(60)), /^wait: .*no load takes it within 20 min/],
  [
    'a load without its jars',
    changed(
      (task, schedule) => task.kind === 'fill' && canned(schedule, task),
      ({ units }) => ({ units: { count: (units?.count ?? 1) - 1, unit: 'jar' } }),
    ),
    /^order: .*a load with more jars than were filled/,
  ],
  ['a tray that waits', changed(is('dry'), by(40)), /^wait: .*(filled|prepared|cooked), then waits/],
  ['a cold canner', changed(is('heat canner'), gone), /^order: .*its water was not heated/],
  ['a canner heated too early', changed(is('heat canner'), by(-400)), /^wait: .*hot for/],
  ['jars that nobody puts in', changed(is('load'), gone), /^order: .*puts the jars/],
  ['jars that nobody lifts out', changed(is('unload'), by(-15)), /^order: .*lifts the jars/],
  [
    'a soak cut short',
    changed(
      ({ kind, units }) => kind === 'stand' && units === undefined,
      ({ startMinute: start, endMinute: end }) => ({ startMinute: start + 10, endMinute: end }),
    ),
    /^wait: .*stand for \d+ min, at least/,
  ],
  [
    'a soak that is left standing',
    changed(
      ({ kind, units }) => kind === 'stand' && units === undefined,
      ({ startMinute: start }) => ({ startMinute: start - 100 }),
    ),
    /^wait: .*stand for \d+ min, at most/,
  ],
  [
    'no soak at all',
    changed(
      ({ kind, units, leastMinutes: atLeast = 0 }) => kind === 'stand' && units === undefined && atLeast > 60,
      gone,
    ),
    /^wait: .*prepared, then waits/,
  ],
  [
    'a crock opened early',
    changed(is('ferment'), ({ endMinute: end }) => ({ endMinute: end - 1440 })),
    /^wait: .*ferment for/,
  ],
  [
    'a pot kept hot for too long',
    changed(is('keep hot'), ({ endMinute: end }) => ({ endMinute: end + 61 })),
    /^wait: .*kept hot for \d+ min, at most 60/,
  ],
  [
    'a pot kept hot that was not cooked',
    changed(is('keep hot'), ({ startMinute: start }) => ({ startMinute: start + 1 })),
    /^order: .*not cooked in that pot/,
  ],
  ['freeze-dried before it is there', changed(is('freeze-dry'), by(-3000)), /^order: .*freeze-dry before it is ready/],
  ['packed before it is dry', changed(is('pack'), by(-3000)), /^order: .*packed before it is dry/],
  [
    'the end before the start',
    changed(is('prepare'), ({ startMinute: start }) => ({ endMinute: start - 1 })),
    /^order: .*ends before it starts/,
  ],
];

describe('what a scheduler could get wrong is found', () => {
  test.each(MISTAKES)('%s', (_, schedule, words) => {
    const found = brokenRules(schedule).map(({ rule, text }) => `${rule}: ${text}`);
    expect(found).toEqual(expect.arrayContaining([expect.stringMatching(words)]));
  });
  test('a machine that still runs', () => {
    const schedule = orders.find(({ tasks }) => tasks.some(({ kind }) => kind === 'dry')) as DaySchedule;
    const dry = schedule.tasks.find(({ kind }) => kind === 'dry') as ScheduledTask;
    const resources = schedule.resources.map((each) =>
      each.resource === 'dryer trays' ? { ...each, busyUntilMinute: dry.startMinute + 1 } : each,
    );
    expect(brokenRules({ ...schedule, resources }).map(({ text }) => text)).toEqual([
      expect.stringContaining('dryer trays still runs'),
    ]);
  });
  test('a canner that stood for hours between two loads and is not heated again', () => {
    const load = (at: number): ScheduledTask[] =>
      (['fill', 'load', 'can', 'unload'] as const).map((kind) => ({
        kind,
        what: 'peaches',
        forProducts: ['peaches'],
        units: { count: 1, unit: 'jar' },
        startMinute: kind === 'fill' ? at - 1 : kind === 'unload' ? at + 40 : at,
        endMinute: kind === 'fill' ? at : kind === 'load' ? at + 1 : at + 41,
        uses: [{ resource: kind === 'can' ? 'canner' : 'hands', used: 1 }],
        unattended: false,
      }));
    const heat = { ...(load(30)[2] as ScheduledTask), kind: 'heat canner' as const, startMinute: 0, endMinute: 30 };
    const order = (second: number) => ({
      tasks: [heat, ...load(30), ...load(second)],
      windows: [{ day: 0, startMinute: 0, endMinute: 600 }],
      resources: ['hands', 'canner'].map((resource) => ({ resource, available: 1 })),
    });
    expect(brokenRules(order(120))).toEqual([]);
    expect(brokenRules(order(140)).map(({ text }) => text)).toEqual([expect.stringContaining('not heated again')]);
  });
});
