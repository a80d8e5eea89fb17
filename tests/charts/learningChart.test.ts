import { expect, test } from 'vitest';
import { learningChart } from '../../src/charts/index';
import { learnFromRecords } from '../../src/record/index';
import { expectError } from '../helpers/errors';
import { draw } from './rendering';

const before = { low: 0.76, likely: 0.85, high: 0.88 };
const observed = [0.725, 0.75, 0.733, 0.079, 0.742];
const { figure: after, outliers } = learnFromRecords({ prior: before, observed, varies: 'share' });
const peaches = { what: 'yield of peach halves', before, after, observed };
const full = { ...peaches, asidePlaces: outliers.map(({ index }) => index) };

type Chart = ReturnType<typeof learningChart>;
interface Channel {
  readonly scale: { readonly domain: readonly [number, number] };
  readonly axis: { readonly values: readonly number[] };
}
const channelOf = ({ layer }: Chart, name: 'x' | 'y') => layer[0]?.encoding?.[name] as Channel;
const spanOf = (chart: Chart) => channelOf(chart, 'y').scale.domain;

test('a row for each batch in order; the far one set aside and off the chart', () => {
  const chart = learningChart(full);
  expect(chart.data.values.map(({ batchNumber, figure }) => [batchNumber, figure])).toEqual(
    observed.map((figure, index) => [index + 1, figure]),
  );
  expect(chart.data.values[3]).toEqual({ batchNumber: 4, figure: 0.079, counts: 'set aside', beyond: 'below' });
  expect(chart.data.values.filter(({ counts }) => counts === 'in full')).toHaveLength(4);
});

test('both ranges and every batch that counts are inside the chart', () => {
  for (const chart of [learningChart(full), learningChart(peaches)]) {
    const [low, high] = spanOf(chart);
    const counted = chart.data.values.filter(({ beyond }) => beyond === undefined).map(({ figure }) => figure);
    for (const value of [before.low, before.high, after.low, after.high, ...counted]) {
      expect(value).toBeGreaterThanOrEqual(low);
      expect(value).toBeLessThanOrEqual(high);
    }
  }
  // not set aside, it is shown where it is
  expect(learningChart(peaches).data.values.every(({ beyond }) => beyond === undefined)).toBe(true);
  expect(spanOf(learningChart(peaches))[0]).toBeLessThan(0.079);
});

test('the words say both ranges in percent, how many batches, and which is set aside', () => {
  const { title, description } = learningChart({ ...full, after: { low: 0.69, likely: 0.75, high: 0.81 } });
  expect(title.subtitle).toEqual([
    'Published or recalled: 76 to 88 %, likely 85.',
    'Next batch, 9 times in 10: 69 to 81 %, likely 75; learned from 5 batches of your own.',
    'Set aside, far from the others: batch 4 (7.9 %).',
  ]);
  expect(description).toContain('72.5, 75, 73.3, 7.9, 74.2');
});

test('only a range without a recalled figure is called published', () => {
  const first = (recalled?: boolean) => learningChart({ ...full, recalled }).title.subtitle[0];
  expect(first(false)).toBe('Published: 76 to 88 %, likely 85.');
  expect(first(true)).toBe('Published or recalled: 76 to 88 %, likely 85.');
  expect(first()).toBe(first(true));
});

test('an invented example says so, another does not', () => {
  expect(learningChart({ ...full, invented: true }).title.subtitle[0]).toContain('invented');
  expect(learningChart(full).title.subtitle.join(' ')).not.toContain('invented');
});

test('figures with a unit are drawn as they are, with an answer of learnFromRecords as it stands', () => {
  const book = { low: 6, likely: 9, high: 12 };
  const own = [7, 7.5, 7.2, 7.4, 72];
  const learned = learnFromRecords({ prior: book, observed: own });
  const places = learned.outliers.map(({ index }) => index);
  const chart = learningChart({
    what: 'hours',
    unit: 'h',
    before: book,
    after: learned.figure,
    observed: own,
    asidePlaces: places,
  });
  expect(chart.data.values[4]?.beyond).toBe('above');
  expect(JSON.stringify(chart.layer)).not.toContain('%');
  expect(chart.title.subtitle[0]).toBe('Published or recalled: 6 to 12 h, likely 9.');
});

test('many batches: their numbers keep clear of each other and of the words, and the texts stay short', async () => {
  for (const batches of [1, 2, 13, 14, 15, 47, 120, 999, 2000]) {
    const many = Array.from({ length: batches }, (_, index) => 0.7 + 0.05 * Math.sin(index));
    const chart = learningChart({ ...peaches, observed: many, asidePlaces: many.map((_, index) => index) });
    expect(chart.title.subtitle.join(' ').length).toBeLessThan(400);
    const x = channelOf(chart, 'x');
    const pixels = 640 / (x.scale.domain[1] - x.scale.domain[0]);
    const ticks = x.axis.values;
    expect(ticks.length).toBeLessThanOrEqual(16);
    ticks.slice(1).forEach((tick, index) => {
      const words = index === 0 || index === ticks.length - 2;
      expect((tick - (ticks[index] as number)) * pixels).toBeGreaterThanOrEqual(words ? 50 : 30);
    });
  }
  const { svg } = await draw(learningChart(full));
  expect(svg).toContain('>before<');
  expect(svg).toContain('next batch');
});

test('one and the same figure throughout still has a chart', async () => {
  const same = { low: 3, likely: 3, high: 3 };
  for (const value of [3, 0]) {
    const all = { low: value, likely: value, high: value };
    const chart = learningChart({ what: 'hours', unit: 'h', before: all, after: all, observed: [value] });
    const [low, high] = spanOf(chart);
    expect(high).toBeGreaterThan(low);
    expect((await draw(chart)).warnings).toEqual([]);
  }
  expect(learningChart({ what: 'hours', unit: 'h', before: same, after: same, observed: [] }).data.values).toEqual([]);
});

test('bad input', () => {
  expectError(() => learningChart({} as never), 'MISSING', 'what');
  expectError(() => learningChart({ ...full, before: { low: 0.9, likely: 0.8, high: 1 } }), 'CONTRADICTION', 'before');
  expectError(() => learningChart({ ...full, after: { low: 0.9, likely: 1, high: 1.2 } }), 'OUT_OF_RANGE', 'after');
  expectError(() => learningChart({ ...full, observed: [0.7, 7] }), 'OUT_OF_RANGE', 'observed[1]');
  expectError(() => learningChart({ ...full, observed: [Number.NaN] }), 'OUT_OF_RANGE', 'observed[0]');
  expectError(() => learningChart({ ...full, asidePlaces: [5] }), 'OUT_OF_RANGE', 'asidePlaces[0]');
  expectError(
    () => learningChart({ ...full, observed: Array.from({ length: 2001 }, () => 0.5) }),
    'TOO_MUCH',
    'observed',
  );
});
