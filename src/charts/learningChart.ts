import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { count, fields, flag, list, name, number, optional, rangeOf, readInput } from '../quantity/fields';
import type { Range } from '../quantity/types';
import { caution } from '../sources/cautions';
import { type ChartLayer, type ChartSpec, capital, chart, digits, OKABE_ITO, WIDTH } from './spec';

const LARGEST = 1e9;
const MOST = 2000;
const figure = (what: string) => number(`${what}: a number`, { min: -LARGEST, max: LARGEST });
const range = () => rangeOf(() => figure('an end, or the figure to expect'));

const schema = /* @__PURE__ */ fields({
  /** What was learned. */
  what: name('what was learned, such as "yield of peach halves"'),
  /** Unit of the figures; left out, they are shares from 0 to 1 (yield, moisture), drawn in percent. */
  unit: optional(name('the unit of the figures, such as "h"')),
  /**
   * Range published or recalled; `after` - learned range, as `learnFigure` and `learnFromRecords`
   * return it.
   */
  before: range(),
  after: range(),
  /** Your own figures, 0 to 2,000, in the order of the batches. */
  observed: list('your own figures in the order of the batches', figure('a figure of your own'), 0, MOST),
  /**
   * Whether the range before rests on a recalled figure (its basis has a line `from-memory`); left out, the chart
   * says "published or recalled".
   */
  recalled: optional(flag('whether the range before rests on a recalled figure')),
  /** Places in `observed`, from 0, of figures that count for little. */
  setAside: optional(list('places of figures set aside', count('a place in observed, from 0', 0, MOST - 1), 0, MOST)),
  /** Whether the figures are made up; the chart then says so. */
  invented: optional(flag('whether the figures are invented')),
});
type Given = z.output<typeof schema>;

export interface LearningChartInput {
  /** `yield of peach halves`. */
  readonly what: string;
  /** Of the figures: `h`, `lb`, `minutes a pound`. Left out, they are shares from 0 to 1, drawn in percent. */
  readonly unit?: string | undefined;
  /** The range before your own figures, published or recalled. */
  readonly before: Range<number>;
  /** Whether that range rests on a recalled figure: whether its basis has a line `from-memory`. Taken as so when left out. */
  readonly recalled?: boolean | undefined;
  /** Where the next batch falls 9 times in 10. */
  readonly after: Range<number>;
  /** Your own figures, in the order of the batches: 0 to 2,000. */
  readonly observed: readonly number[];
  /** Places in `observed`, from 0, of the figures that count for little. */
  readonly setAside?: readonly number[] | undefined;
  readonly invented?: boolean | undefined;
}

/** One batch of your own. */
export interface LearningRow {
  /** From 1, in the order they were made. */
  readonly batch: number;
  readonly figure: number;
  readonly counts: 'in full' | 'set aside';
  /** Far off the chart: marked at its edge. */
  readonly beyond?: 'above' | 'below';
}

type Ends = readonly [low: number, high: number];

/** Ranges in order, shares that are shares, and places that are in the list. */
function check({ unit, before, after, observed, setAside = [] }: Given): void {
  for (const [path, { low, likely, high }] of Object.entries({ before, after })) {
    if (low > likely || likely > high)
      fail('CONTRADICTION', path, { low, likely, high }, 'low, likely and high in rising order');
    if (unit === undefined && (low < 0 || high > 1))
      fail('OUT_OF_RANGE', path, { low, high }, 'shares from 0 to 1, or a unit beside them');
  }
  observed.forEach((value, index) => {
    if (unit === undefined && (value < 0 || value > 1)) {
      fail('OUT_OF_RANGE', `observed[${index}]`, value, 'a share from 0 to 1, or a unit beside it');
    }
  });
  setAside.forEach((at, index) => {
    if (at >= observed.length)
      fail('OUT_OF_RANGE', `setAside[${index}]`, at, `a place in observed, below ${observed.length}`);
  });
}

/** Room above and below, as a share of what is shown. */
const ROOM = 0.12;

/** The ends of the chart: both ranges and the batches that count; one set aside only where it is near. */
function shown({ before, after, observed, setAside = [] }: Given): Ends {
  const counted = observed.filter((_, index) => !setAside.includes(index));
  const values = [before.low, before.high, after.low, after.high, ...counted];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const span = high - low || Math.abs(high) || 1;
  const near = [low, high, ...observed.filter((value) => value > low - span && value < high + span)];
  const room = ROOM * (Math.max(...near) - Math.min(...near) || span);
  return [Math.min(...near) - room, Math.max(...near) + room];
}

/**
 * What your batches taught: the range before them, your own figures in their order, and the range learned from both.
 *
 * The bar on the left is the range before, dashed across; the bar on the right is where the next batch falls 9 times in
 * 10, shaded across. A batch that was set aside is a cross, or an arrow at the edge where it lies far off.
 *
 * @returns a Vega-Lite spec
 * @throws StillroomError CONTRADICTION for a range out of order; OUT_OF_RANGE for a share outside 0 to 1 or a place that
 * is not in the list; TOO_MUCH
 *
 * @example
 * ```ts
 * import { learningChart } from 'stillroom/charts';
 * import { learnFigure } from 'stillroom/record';
 *
 * const before = { low: 6, likely: 9, high: 12 };
 * const observed = [7, 7.5, 7.2, 7.4, 72];
 * const { figure: after, outliers } = learnFigure({ prior: before, observed });
 * const places = outliers.map(({ index }) => index);
 * const chart = learningChart({ what: 'drying time of apple rings', unit: 'h', before, after, observed, setAside: places });
 * chart.data.values[4]; // => { batch: 5, figure: 72, counts: 'set aside', beyond: 'above' }
 * ```
 */
export function learningChart(input: LearningChartInput): ChartSpec<LearningRow> {
  const given = readInput(schema, input);
  check(given);
  const { what, unit, before, after, recalled = true, observed, setAside = [], invented = false } = given;
  const [low, high] = shown(given);
  const ends: Ends = unit === undefined ? [Math.max(0, low), Math.min(1, high)] : [low, high];
  const values = observed.map((value, index): LearningRow => {
    const beyond = value > ends[1] ? 'above' : value < ends[0] ? 'below' : undefined;
    return {
      batch: index + 1,
      figure: value,
      counts: setAside.includes(index) ? 'set aside' : 'in full',
      ...(beyond === undefined ? {} : { beyond }),
    };
  });
  const write = writer(unit, ends);
  const span = (one: Range<number>) =>
    `${write(one.low)} to ${write(one.high)} ${unit ?? '%'}, likely ${write(one.likely)}`;
  const aside = values.filter(({ counts }) => counts === 'set aside');
  const asideText =
    aside.length === 0
      ? []
      : [
          `Set aside, far from the others: ${aside
            .slice(0, MOST_NAMED)
            .map((row) => `batch ${row.batch} (${write(row.figure)} ${unit ?? '%'})`)
            .join(', ')}${aside.length > MOST_NAMED ? `, and ${aside.length - MOST_NAMED} more` : ''}.`,
        ];
  const said = [
    `${recalled ? 'Published or recalled' : 'Published'}: ${span(before)}.`,
    `Next batch, 9 times in 10: ${span(after)}; learned from ${batchCount(observed.length)} of your own.`,
    ...asideText,
  ];
  return answer(
    chart({
      title: `Learned: ${what}`,
      subtitle: [...(invented ? ['An invented example.'] : []), ...said],
      description: `${capital(what)}. ${said.join(' ')} ${batchesText(values, write, unit)}`.trim(),
      values,
      layer: layersOf(given, values, ends),
      basis: [[{ of: 'ranges and figures as you gave them', kind: 'measured' }]],
      cautions: [[caution('estimate')]],
    }),
  );
}

const batchCount = (n: number): string => (n === 0 ? 'no batch' : n === 1 ? '1 batch' : `${n} batches`);

/** How many batches the texts name one by one. */
const MOST_NAMED = 4;
const MOST_READ_OUT = 100;

type Write = (value: number) => string;

/** Three digits of what is shown, in percent where no unit is named. */
function writer(unit: string | undefined, [low, high]: Ends): Write {
  const times = unit === undefined ? 100 : 1;
  const places = Math.min(9, Math.max(0, 2 - Math.floor(Math.log10(times * (high - low || 1)))));
  return (value) => digits(times * value, places);
}

const batchesText = (values: readonly LearningRow[], write: Write, unit: string | undefined): string =>
  values.length === 0
    ? ''
    : `Batches in order, ${unit ?? '%'}: ${values
        .slice(0, MOST_READ_OUT)
        .map((row) => write(row.figure))
        .join(', ')}${values.length > MOST_READ_OUT ? ' and more' : ''}.`;

/** Room beside the bars, as a share of their distance from the batches. */
const MARGIN = 0.8;
/** Pixels between a number and the words at the ends of the axis. */
const CLEAR = 50;

/** Numbers under the batches that stand clear of each other and of the words at the ends. */
function batchTicks(batches: number, apart: number, pixels: number): number[] {
  const step = [1, 2, 5, 10, 20, 50, 100].find((each) => batches / each <= 14) ?? 200;
  const all = Array.from({ length: Math.floor(batches / step) }, (_, index) => (index + 1) * step);
  return all.filter((tick) => Math.min(tick - 1, batches - tick) + apart >= CLEAR / pixels);
}

function layersOf(
  { what, unit, before, after }: Given,
  values: readonly LearningRow[],
  [low, high]: Ends,
): ChartLayer[] {
  const batches = values.length;
  const apart = Math.max(1, batches / 10);
  const [first, last] = [1 - apart, batches + apart];
  const domain: Ends = [first - MARGIN * apart, last + MARGIN * apart];
  const pixels = WIDTH / (domain[1] - domain[0]);
  const percent = high - low < 0.05 ? '.1%' : '.0%';
  const x = {
    field: 'batch',
    type: 'quantitative',
    title: 'batch, in the order they were made',
    scale: { domain, nice: false },
    axis: {
      values: [first, ...batchTicks(batches, apart, pixels), last],
      labelExpr: `datum.value < 1 ? 'before' : datum.value > ${batches} ? 'next batch' : format(datum.value, 'd')`,
      labelOverlap: false,
      grid: false,
      ticks: false,
    },
  };
  const y = {
    field: 'figure',
    type: 'quantitative',
    title: `${what}, ${unit ?? '%'}`,
    scale: { domain: [low, high], nice: false, zero: false },
    ...(unit === undefined ? { axis: { format: percent } } : {}),
  };
  const bars = [
    { batch: first, ...before, colour: OKABE_ITO.orange },
    { batch: last, ...after, colour: OKABE_ITO.blue },
  ];
  const aside = { filter: "datum.counts === 'set aside'" };
  const inside = { filter: '!isValid(datum.beyond)' };
  const colour = { field: 'colour', type: 'nominal', scale: null };
  return [
    {
      data: { values: [{ from: first, to: last, ...after }] },
      mark: { type: 'rect', color: OKABE_ITO.skyBlue, opacity: 0.25 },
      encoding: { x: { ...x, field: 'from' }, x2: { field: 'to' }, y: { ...y, field: 'low' }, y2: { field: 'high' } },
    },
    {
      data: { values: [before.low, before.high].map((end) => ({ from: first, to: last, figure: end })) },
      mark: { type: 'rule', color: OKABE_ITO.orange, strokeWidth: 2, strokeDash: [6, 4] },
      encoding: { x: { ...x, field: 'from' }, x2: { field: 'to' }, y },
    },
    {
      data: { values: bars },
      mark: { type: 'rule', strokeWidth: 16 },
      encoding: { x, y: { ...y, field: 'low' }, y2: { field: 'high' }, color: colour },
    },
    {
      data: { values: bars },
      mark: { type: 'point', filled: true, size: 60, color: '#FFFFFF', opacity: 1 },
      encoding: { x, y: { ...y, field: 'likely' } },
    },
    {
      transform: [{ filter: "datum.counts === 'in full'" }, inside],
      mark: { type: 'point', filled: true, size: 80, opacity: 1, color: OKABE_ITO.black },
      encoding: { x, y },
    },
    {
      transform: [aside, inside],
      mark: {
        type: 'point',
        shape: 'cross',
        angle: 45,
        filled: true,
        size: 130,
        opacity: 1,
        color: OKABE_ITO.vermillion,
      },
      encoding: { x, y },
    },
    ...edgeLayers(values, low, high, x, y),
  ];
}

/** Arrows for figures that lie off the chart. */
function edgeLayers(values: readonly LearningRow[], low: number, high: number, x: object, y: object): ChartLayer[] {
  return (['above', 'below'] as const).flatMap((side): ChartLayer[] => {
    if (!values.some(({ beyond }) => beyond === side)) return [];
    const edge = side === 'above' ? high : low;
    return [
      {
        transform: [{ filter: `datum.beyond === '${side}'` }, { calculate: `${edge}`, as: 'edge' }],
        mark: {
          type: 'point',
          shape: side === 'above' ? 'triangle-up' : 'triangle-down',
          filled: true,
          size: 160,
          opacity: 1,
          color: OKABE_ITO.vermillion,
          yOffset: side === 'above' ? 8 : -8,
        },
        encoding: { x, y: { ...y, field: 'edge' } },
      },
    ];
  });
}
