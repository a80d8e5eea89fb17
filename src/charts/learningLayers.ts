import type { Ends, LearningFigures, LearningRow } from './learningFigures';
import { type ChartLayer, OKABE_ITO, WIDTH } from './spec';

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

export function layersOf(
  { what, unit, before, after }: LearningFigures,
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
    field: 'batchNumber',
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
    { batchNumber: first, ...before, colour: OKABE_ITO.orange },
    { batchNumber: last, ...after, colour: OKABE_ITO.blue },
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
