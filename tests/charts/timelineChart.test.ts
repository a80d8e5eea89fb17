import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type TimelineRow, timelineChart } from '../../src/charts/index';
import type { ScheduledTask } from '../../src/plan/request/daySchedule';
import { expectError } from '../helpers/errors';
import { oneDay, scheduled, scheduleOf, tenProducts, twoDays } from './inventedSchedule';
import { draw } from './rendering';

type Chart = ReturnType<typeof timelineChart>;
interface Channel {
  readonly scale: { readonly domain: readonly [number, number] };
  readonly axis: { readonly values: readonly number[]; readonly labelExpr: string };
}
const channelOf = ({ layer }: Chart, name: 'x' | 'y') => layer[0]?.encoding?.[name] as Channel;
const rowOf = ({ topEdge: top }: TimelineRow) => Math.floor(top);
const namesOf = (chart: Chart) => JSON.parse((channelOf(chart, 'y').axis.labelExpr.match(/^\[.*?\]/) ?? ['[]'])[0]);
interface Label {
  readonly leftEdge: number;
  readonly topEdge: number;
  readonly text: string;
}
const labelsOf = ({ layer }: Chart) =>
  (layer.find(({ encoding }) => encoding?.color !== undefined && encoding.text !== undefined)?.data?.values ??
    []) as readonly Label[];

const days = [
  ['one day', oneDay],
  ['two days', twoDays],
  ['ten products', tenProducts],
] as const;

describe.each(days)('%s', (_, plan) => {
  const chart = timelineChart({ plan });
  const { values } = chart.data;

  test('every task stands on each of its resources but the burners, so many rows as hands it takes', () => {
    for (const { kind, what, startMinute: start, endMinute: end, forProducts: products, uses } of plan.schedule.tasks) {
      const rows = uses
        .filter(({ resource }) => resource !== 'burners')
        .map(({ resource, used: amount }) => (resource === 'hands' ? amount : 1));
      const bars = values.filter(
        (bar) => bar.kind === kind && bar.what === what && bar.startHour === start / 60 && bar.endHour === end / 60,
      );
      expect(new Set(bars.map(rowOf)).size).toBe(rows.reduce((sum, each) => sum + each, 0));
      expect(bars).toHaveLength(new Set(products).size * new Set(bars.map(rowOf)).size);
    }
    expect(values.some(({ resource }) => resource === 'burners')).toBe(false);
  });

  test('no two bars of a row lie over each other, and none outside the chart', () => {
    const [first, last] = channelOf(chart, 'x').scale.domain;
    for (const bar of values) {
      expect(bar.leftEdge).toBeGreaterThanOrEqual(first);
      expect(bar.rightEdge).toBeLessThanOrEqual(last);
      expect(bar.rightEdge).toBeGreaterThan(bar.leftEdge);
      for (const other of values) {
        const same = rowOf(other) === rowOf(bar) && (other.what !== bar.what || other.startHour !== bar.startHour);
        if (same)
          expect(Math.min(bar.endHour, other.endHour) - Math.max(bar.startHour, other.startHour)).toBeLessThanOrEqual(
            1e-9,
          );
      }
    }
  });

  test('a text stands inside its own bar', () => {
    const [, last] = channelOf(chart, 'x').scale.domain;
    const labels = labelsOf(chart);
    expect(labels.length).toBeGreaterThan(0);
    for (const { leftEdge, topEdge, text } of labels) {
      const bar = values.find((each) => each.leftEdge === leftEdge && rowOf(each) === Math.floor(topEdge));
      expect(((bar as TimelineRow).rightEdge - leftEdge) * (640 / last)).toBeGreaterThan(6 * text.length);
    }
  });

  test('every letter in a short bar is explained', () => {
    const key = chart.title.subtitle.join(' ');
    for (const { text } of labelsOf(chart)) if (text.length === 1) expect(key).toContain(` ${text} `);
  });
});

test('hands first, then pots, canners, what dries, what freezes; names once', () => {
  expect(namesOf(timelineChart({ plan: oneDay }))).toEqual([
    'hands 1',
    'hands 2',
    '12 quart pot',
    '8 quart pot',
    'water-bath canner',
    'dryer trays',
    '',
    '',
    'freezer',
    '',
  ]);
  expect(namesOf(timelineChart({ plan: twoDays }))[0]).toBe('hands');
  // whatever comes first by the clock
  const quiet = scheduleOf(
    [
      ['freeze', 0, 600, 'a', 'a', { freezer: 1 }],
      ['freeze-dry', 10, 600, 'b', 'b', { 'freeze-dryer': 1 }],
      ['dry', 20, 600, 'c', 'c', { 'dryer trays': 1 }],
    ],
    [{ day: 0, startMinute: 0, endMinute: 60 }],
  );
  expect(namesOf(timelineChart({ plan: scheduled(quiet) }))).toEqual(['dryer trays', 'freeze-dryer', 'freezer']);
});

test('an hour of work is as wide on the second day as on the first; the night between is one hour wide', () => {
  const chart = timelineChart({ plan: twoDays });
  const [, last] = channelOf(chart, 'x').scale.domain;
  // 8 h, a night, 5 h, and an hour for what goes on after
  expect(last).toBeCloseTo(8 + 1 + 5 + 1, 9);
  for (const bar of chart.data.values.filter(({ unattended }) => !unattended)) {
    expect(bar.rightEdge - bar.leftEdge).toBeCloseTo(bar.endHour - bar.startHour, 9);
  }
  const sauce = chart.data.values.find(({ what }) => what === 'tomatoes') as TimelineRow;
  expect([sauce.startHour, sauce.leftEdge]).toEqual([24.5, 9.5]);
  // dried at 14.3 h, 6.3 h into a night of 16 h
  const leather = chart.data.values.find(({ kind, what }) => kind === 'dry' && what === 'plum leather') as TimelineRow;
  expect(leather.rightEdge).toBeCloseTo(8 + (860 / 60 - 8) / 16, 9);
  const texts = JSON.stringify(chart.layer);
  expect(texts).toContain('16 h break');
  expect(texts).toContain('after work');
});

test('the axis tells the hours by the clock', async () => {
  const { svg } = await draw(timelineChart({ plan: twoDays }));
  const { axis } = channelOf(timelineChart({ plan: twoDays }), 'x');
  expect(axis.labelExpr).toContain('"24"');
  expect(axis.labelExpr).not.toContain('"9"');
  expect(svg).toMatch(/>24</);
  expect(svg).not.toMatch(/>undefined</);
});

test('a day without anything on past its end has no room for it; overtime is work', () => {
  const { values } = timelineChart({ plan: tenProducts }).data;
  expect(channelOf(timelineChart({ plan: tenProducts }), 'x').scale.domain).toEqual([0, 8]);
  expect(values.map(({ endHour: end }) => end).at(-1)).toBeCloseTo(400 / 60, 9);
  const late = scheduleOf(
    [['prepare', 0, 90, 'plums', 'plums', { hands: 1 }]],
    [{ day: 0, startMinute: 0, endMinute: 60 }],
  );
  expect(channelOf(timelineChart({ plan: scheduled(late) }), 'x').scale.domain).toEqual([0, 1.5]);
});

test('a ninth product and more are grey together', () => {
  const names = timelineChart({ plan: tenProducts }).data.values.map(({ name }) => name);
  expect([...new Set(names)]).toEqual([...Array.from({ length: 7 }, (_, place) => `product ${place + 1}`), 'others']);
});

test('the words say when all is done, and read out the tasks', () => {
  const { title, description } = timelineChart({ plan: oneDay });
  expect(title.subtitle.join(' ')).toContain('invented');
  expect(title.subtitle.join(' ')).toContain('everything is done at 32.3 h');
  expect(description).toContain('1 to 10 h: dry apple slices, dried');
  expect(timelineChart({ plan: { ...oneDay, invented: false } }).title.subtitle.join(' ')).not.toContain('invented');
  const weighed = oneDay.schedule.tasks.map((task, index): ScheduledTask => {
    return index === 0 ? { ...task, raw: { value: 14, unit: 'lb' }, units: { count: 9, unit: 'bag' } } : task;
  });
  const plan = { ...oneDay, schedule: { ...oneDay.schedule, tasks: weighed } };
  expect(timelineChart({ plan }).description).toContain('prepare 14 lb of apples from the old tree, 9 x bag');
});

test('the words say how near to the best the order is', () => {
  const said = (lowerBound: number) =>
    timelineChart({ plan: { ...oneDay, schedule: { ...oneDay.schedule, lowerBound } } }).title.subtitle.join(' ');
  expect(said(570)).toContain('no order of the same work ends before 9.5 h');
  expect(said(612)).toContain('done at 10.2 h; no order of the same work ends sooner.');
  expect(said(0)).toContain('done at 10.2 h.');
});

test('a day with nothing to do is an empty chart', async () => {
  const chart = timelineChart({ plan: scheduled(scheduleOf([], [{ day: 0, startMinute: 0, endMinute: 480 }])) });
  expect(chart.data.values).toEqual([]);
  expect((await draw(chart)).warnings).toEqual([]);
});

test('any tasks are laid out without overlap, in as few rows of hands as are at work at once', () => {
  const task = fc.record({
    start: fc.nat(600),
    minutes: fc.integer({ min: 1, max: 200 }),
    hands: fc.integer({ min: 1, max: 3 }),
  });
  fc.assert(
    fc.property(fc.array(task, { minLength: 1, maxLength: 30 }), (tasks) => {
      const schedule = scheduleOf(
        tasks.map(({ start, minutes, hands }, place) => {
          return ['prepare', start, start + minutes, `${place}`, 'plums', { hands }] as const;
        }),
        [{ day: 0, startMinute: 0, endMinute: 900 }],
      );
      const { values } = timelineChart({ plan: scheduled(schedule) }).data;
      expect(values).toHaveLength(tasks.reduce((sum, { hands }) => sum + hands, 0));
      const busy = tasks.map(({ start }) =>
        tasks
          .filter((other) => other.start <= start && start < other.start + other.minutes)
          .reduce((sum, { hands }) => sum + hands, 0),
      );
      expect(Math.max(...values.map(rowOf)) + 1).toBe(Math.max(...busy));
      for (const [index, bar] of values.entries()) {
        for (const other of values.slice(index + 1)) {
          if (rowOf(other) !== rowOf(bar)) continue;
          expect(Math.min(bar.endHour, other.endHour) - Math.max(bar.startHour, other.startHour)).toBeLessThanOrEqual(
            1e-9,
          );
        }
      }
    }),
  );
});

test('without a feasible plan, or a schedule, there is no chart', () => {
  expectError(() => timelineChart(undefined as never), 'MISSING', 'plan');
  expectError(() => timelineChart({} as never), 'MISSING', 'plan');
  expectError(() => timelineChart({ plan: null as never }), 'CONTRADICTION', 'plan');
  expectError(() => timelineChart({ plan: { ...oneDay, feasible: false } as never }), 'CONTRADICTION', 'plan');
  expectError(() => timelineChart({ plan: { feasible: true } as never }), 'CONTRADICTION', 'plan');
});
