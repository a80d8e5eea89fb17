import { type ChartLayer, QUIET_GREY } from './spec';
import type { Axis } from './timelineAxis';
import { type Bar, colourOf, FONT_SIZE, OTHERS, productsShown } from './timelineBars';
import type { Lane } from './timelineLanes';

/** Pixels of the longest name of a row, and of a letter of it where letters are drawn wide. */
const LONGEST_LABEL = 180;
const WIDE_LETTER = 8;

/** The axis of hours. */
function hoursAxis({ end, ticks }: Axis) {
  const places = JSON.stringify(ticks.map(({ at }) => at));
  return {
    field: 'leftEdge',
    type: 'quantitative',
    title: 'time from the start, h',
    scale: { domain: [0, end], nice: false },
    axis: {
      values: ticks.map(({ at }) => at),
      labelExpr: `${JSON.stringify(ticks.map(({ hour }) => String(hour)))}[indexof(${places}, datum.value)]`,
      labelOverlap: false,
    },
  };
}

/** The axis of resources. */
function lanesAxis(lanes: readonly Lane[]) {
  const rows = lanes.map((_, row) => row + 0.5);
  return {
    field: 'topEdge',
    type: 'quantitative',
    scale: { domain: [0, Math.max(lanes.length, 1)], nice: false, reverse: true },
    axis: {
      title: null,
      values: rows,
      labelExpr: `${JSON.stringify(lanes.map(({ label }) => label))}[datum.value - 0.5]`,
      labelLimit: LONGEST_LABEL,
      minExtent: Math.min(LONGEST_LABEL, WIDE_LETTER * Math.max(0, ...lanes.map(({ label }) => label.length))),
      labelOverlap: false,
      grid: false,
      ticks: false,
    },
  };
}

/** A color for each product, and the legend that names them. */
function productColours(products: readonly string[], others: boolean) {
  const shown = productsShown(products);
  const names = others ? [...shown, OTHERS] : shown;
  return {
    field: 'name',
    type: 'nominal',
    title: 'product',
    scale: { domain: names, range: names.map((name) => colourOf(products, name)) },
    // one legend for full and pale bars
    legend: { orient: 'bottom', columns: 2, symbolType: 'square', symbolOpacity: 1, symbolStrokeWidth: 0 },
  };
}

export function layersOf(
  bars: readonly Bar[],
  lanes: readonly Lane[],
  axis: Axis,
  products: readonly string[],
): ChartLayer[] {
  const others = bars.some(({ stripes }) => stripes.some(({ name }) => name === OTHERS));
  const colour = productColours(products, others);
  const [x, y] = [hoursAxis(axis), lanesAxis(lanes)];
  const across = { x, x2: { field: 'rightEdge' }, y, y2: { field: 'bottomEdge' } };
  const whole = (list: readonly { from: number; to: number }[]) =>
    list.map(({ from, to }) => ({ leftEdge: from, rightEdge: to, topEdge: 0, bottomEdge: Math.max(lanes.length, 1) }));
  const apart = lanes.flatMap(({ label }, row) =>
    label === '' || row === 0 || label.startsWith('hands') ? [] : [{ topEdge: row }],
  );
  const cut = bars.filter((bar) => bar.cut).map(({ middle }) => ({ leftEdge: axis.end, topEdge: middle }));
  const labels = bars.flatMap(({ label }) =>
    label === undefined ? [] : [{ leftEdge: label.at, topEdge: label.middle, text: label.text, ink: label.ink }],
  );
  return [
    {
      data: { values: whole(axis.breaks) },
      mark: { type: 'rect', color: '#DDDDDD', opacity: 0.7 },
      encoding: across,
    },
    {
      data: { values: axis.breaks.map(({ to, text }) => ({ leftEdge: to, text })) },
      mark: { type: 'text', align: 'right', baseline: 'bottom', color: '#444444', fontSize: FONT_SIZE },
      encoding: { x, y: { value: -4 }, text: { field: 'text' } },
    },
    { data: { values: apart }, mark: { type: 'rule', color: QUIET_GREY }, encoding: { y } },
    {
      transform: [{ filter: '!datum.unattended' }],
      mark: { type: 'rect', x2Offset: -1 },
      encoding: { ...across, color: colour },
    },
    {
      transform: [{ filter: 'datum.unattended' }],
      mark: { type: 'rect', opacity: 0.45, stroke: '#444444', strokeWidth: 1, strokeDash: [3, 3] },
      encoding: { ...across, color: colour },
    },
    {
      data: { values: labels },
      mark: { type: 'text', align: 'left', dx: 4, fontSize: FONT_SIZE },
      encoding: { x, y, text: { field: 'text' }, color: { field: 'ink', type: 'nominal', scale: null } },
    },
    {
      data: { values: cut },
      mark: {
        type: 'point',
        shape: 'triangle-right',
        filled: true,
        size: 70,
        opacity: 1,
        color: '#444444',
        xOffset: -6,
      },
      encoding: { x, y },
    },
  ];
}
