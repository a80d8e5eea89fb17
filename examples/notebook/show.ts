/**
 * What the notebook shows, as a notebook's kernel takes it: charts drawn as SVG, texts and tables as Markdown.
 *
 * The library's charts are specifications of an open standard; any program of that standard draws them. Here it is
 * `vega` and `vega-lite`, without a browser.
 */
import type { ChartSpec } from 'stillroom/charts';
import { formatQuantity, type Range, type Unit } from 'stillroom/quantity';
import * as vega from 'vega';
import { compile, type TopLevelSpec } from 'vega-lite';
import './textWidth.ts';

/** One output of a cell: its forms by media type, the richest that a reader's program knows being the one shown. */
type Shown = { readonly [display: symbol]: () => Promise<Readonly<Record<string, string>>> };
const shown = (forms: () => Promise<Readonly<Record<string, string>>>): Shown => ({
  [Symbol.for('Jupyter.display')]: forms,
});

/** A chart, its description in words beside it; or the reason why there is none. */
export const show = (chart: ChartSpec | { readonly reason: string; readonly instead: string }): Shown =>
  'reason' in chart
    ? markdown(`No chart: ${chart.reason}. Instead: ${chart.instead}.`)
    : shown(async () => ({ 'image/svg+xml': await drawn(chart), 'text/plain': chart.description }));

/** A text in Markdown. */
export const markdown = (text: string): Shown =>
  shown(async () => ({ 'text/markdown': text.trim(), 'text/plain': text.trim() }));

/** Rows as a table, their keys at its head. */
export function table(rows: readonly Readonly<Record<string, string | number>>[]): Shown {
  const heads = Object.keys(rows[0] ?? {});
  const line = (cells: readonly (string | number)[]): string => `| ${cells.join(' | ')} |`;
  const body = rows.map((row) => line(heads.map((head) => row[head] ?? '')));
  return markdown([line(heads), line(heads.map(() => '---')), ...body].join('\n'));
}

/** A range as a cook reads it: what is likely, and the ends. */
export function span({ low, likely, high }: Range<{ readonly value: number; readonly unit: Unit }>): string {
  const text = (quantity: { readonly value: number; readonly unit: Unit }) => formatQuantity(quantity);
  return `${text(likely)} (${text(low)} to ${text(high)})`;
}

async function drawn(chart: ChartSpec): Promise<string> {
  const view = new vega.View(vega.parse(compile(chart as unknown as TopLevelSpec).spec), { renderer: 'none' });
  const svg = await view.toSVG();
  view.finalize();
  return tidy(svg);
}

/** A mark a line and coordinates to a hundredth of a pixel, so that two drawings can be compared by eye. */
const tidy = (svg: string): string =>
  svg
    .replace(/ (d|transform|x|y|x1|y1|x2|y2|width|height)="[^"]*"/g, (attribute) =>
      attribute.replace(/-?\d+\.\d{3,}/g, (number) => String(Number(Number(number).toFixed(2)))),
    )
    .replace(/><(?!tspan|\/)/g, '>\n<');
