import type { ScheduledTask, TaskKind } from '../plan/request/daySchedule';
import { coloursFor, digits, OKABE_ITO, QUIET_GREY, WIDTH } from './spec';
import { type Axis, EPSILON, HOUR, placeOf } from './timelineAxis';
import type { Lane } from './timelineLanes';

/** A bar: one task on one resource, or one product's stripe of it. */
export interface TimelineRow {
  /** `hands 1`, `12 quart pot`, `dryer trays` ... */
  readonly resource: string;
  /** What is done. */
  readonly kind: TaskKind;
  /** What is at hand: the lots that are prepared, or else the product. */
  readonly what: string;
  /** Name of the product, by which the bar is colored; `others` for an eighth product and more where there are over eight. */
  readonly name: string;
  /** Hour it starts at, from the start of the first day. */
  readonly startHour: number;
  /** Hour it ends at. */
  readonly endHour: number;
  /** Whether it goes on by itself. */
  readonly unattended: boolean;
  /** Left edge on the axis, which draws a long break short. */
  readonly leftEdge: number;
  /** Right edge on the axis. */
  readonly rightEdge: number;
  /** Upper edge, in rows from the top. */
  readonly topEdge: number;
  /** Lower edge, in rows from the top. */
  readonly bottomEdge: number;
}

const COLOURS = 8;
export const OTHERS = 'others';

/** A bar with its stripes, and what is written in it. */
export interface Bar {
  readonly stripes: readonly TimelineRow[];
  readonly label?: { readonly at: number; readonly middle: number; readonly text: string; readonly ink: string };
  /** Whether it goes on past the chart. */
  readonly cut: boolean;
  readonly middle: number;
}

const GAP = 0.08;

export function barOf(
  task: ScheduledTask,
  { resource }: Lane,
  row: number,
  axis: Axis,
  products: readonly string[],
): Bar {
  const [startHour, endHour] = [task.startMinute / HOUR, task.endMinute / HOUR];
  const [leftEdge, rightEdge] = [placeOf(axis.knots, startHour), placeOf(axis.knots, endHour)];
  const shown = productsShown(products);
  const own = [...new Set(task.forProducts.map((each) => (shown.includes(each) ? each : OTHERS)))];
  const names = own.length === 0 ? [OTHERS] : own;
  const high = (1 - 2 * GAP) / names.length;
  const { kind, what, unattended } = task;
  const letter = LETTERS[kind];
  const lastHour = (axis.knots[axis.knots.length - 1] as readonly [number, number])[0];
  const cut = endHour > lastHour + EPSILON;
  const middle = row + 0.5;
  const ink =
    !unattended && DARK.includes(colourOf(products, names[Math.floor(names.length / 2)] as string))
      ? '#FFFFFF'
      : '#000000';
  const text = fitting(
    [
      ...(cut ? [`${wordOf(kind)}, to ${digits(endHour, 1)} h`] : []),
      wordOf(kind),
      ...(letter === undefined ? [] : [letter]),
    ],
    ((rightEdge - leftEdge) / axis.end) * WIDTH - (cut ? ARROW : 0),
  );
  return {
    stripes: names.map((name, index) => ({
      resource,
      kind,
      what,
      name,
      startHour,
      endHour,
      unattended,
      leftEdge,
      rightEdge,
      topEdge: row + GAP + index * high,
      bottomEdge: row + GAP + (index + 1) * high,
    })),
    ...(text === undefined ? {} : { label: { at: leftEdge, middle, text, ink } }),
    cut,
    middle,
  };
}

/** What stands in a bar that is too short for the word. */
const LETTERS: Readonly<Partial<Record<ScheduledTask['kind'], string>>> = {
  prepare: 'p',
  cook: 'c',
  blanch: 'b',
  'heat water': 'w',
  fill: 'f',
  pack: 'k',
  'heat canner': 'h',
  load: 'l',
  unload: 'u',
};
const wordOf = (kind: ScheduledTask['kind']): string =>
  kind === 'heat canner' || kind === 'heat water' ? 'heat' : kind;

/** What the letters in the bars stand for. */
export function lettersText(bars: readonly Bar[]): string[] {
  const used = new Set(bars.map(({ label }) => label?.text));
  const letters = Object.entries(LETTERS).filter(([, letter]) => used.has(letter));
  return letters.length === 0
    ? []
    : [`In short bars: ${letters.map(([kind, letter]) => `${letter} ${kind}`).join(', ')}.`];
}

/** Colours that black letters cannot be read on. */
const DARK: readonly string[] = [OKABE_ITO.blue, OKABE_ITO.black];
/** Pixels of an arrow, of a letter, and of the room beside a text. */
const ARROW = 12;
const LETTER = 6.6;
const BESIDE = 7;
export const FONT_SIZE = 12;
/** The longest text that fits. */
const fitting = (texts: readonly string[], pixels: number): string | undefined =>
  texts.find((text) => text.length * LETTER + BESIDE <= pixels);

export const productsShown = (products: readonly string[]): readonly string[] =>
  products.slice(0, products.length > COLOURS ? COLOURS - 1 : COLOURS);
export const colourOf = (products: readonly string[], name: string): string => {
  const place = productsShown(products).indexOf(name);
  return place === -1 ? QUIET_GREY : (coloursFor(COLOURS)[place] as string);
};
