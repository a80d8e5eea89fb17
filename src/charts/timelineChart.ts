import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { withPlan } from '../plan/answer/withPlan';
import type { DayPlan, FeasibleDay } from '../plan/index';
import type { DaySchedule, ScheduledTask, Window } from '../plan/request/daySchedule';
import { formatQuantity } from '../quantity/formatQuantity';
import { type ChartLayer, type ChartSpec, chart, coloursFor, digits, OKABE_ITO, QUIET_GREY, WIDTH } from './spec';

/** What this chart reads of a feasible plan. */
export type ScheduledDay = Pick<FeasibleDay, 'feasible' | 'invented' | 'basis' | 'cautions'> & {
  readonly schedule: DaySchedule;
};

export interface TimelineChartInput {
  /** A feasible answer of `planDay`. */
  readonly plan: DayPlan | ScheduledDay;
}

/** A bar: one task on one resource, or one product's stripe of it. */
export interface TimelineRow {
  /** `hands 1`, `12 quart pot`, `dryer trays` ... */
  readonly resource: string;
  readonly kind: string;
  readonly what: string;
  /** By its colour; `others` for a ninth product and more. */
  readonly product: string;
  /** Hours from the start. */
  readonly start: number;
  readonly end: number;
  readonly unattended: boolean;
  /** Where the bar stands on the axis, on which a long break is drawn short; and its upper and lower edge in rows. */
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly bottom: number;
}

const HOUR = 60;
const ROW_HEIGHT = 26;
const COLOURS = 8;
const OTHERS = 'others';
/** Hours that a break between two days, and what goes on after the last, take on the axis. */
const BREAK = 1;
const EPSILON = 1e-9;

function scheduledPlan(input: TimelineChartInput): ScheduledDay {
  const plan: unknown = (input as { plan?: unknown } | undefined | null)?.plan;
  if (plan === undefined) fail('MISSING', 'plan', plan, 'an answer of planDay');
  const { feasible, schedule } = (plan ?? {}) as Partial<ScheduledDay>;
  if (feasible === true && Array.isArray(schedule?.tasks)) return plan as ScheduledDay;
  fail('CONTRADICTION', 'plan', plan, 'a feasible answer of planDay, with its schedule');
}

/**
 * The order of work of a day: a row for each pair of hands, each pot and canner, and for what dries and freezes, with
 * a bar for each task in the colour of its product.
 *
 * The hours run from the start. A break between two days is drawn short and shaded, and so is what goes on after the last hour of
 * work: an arrow says that it goes on past the chart. What goes on by itself is pale. A canner load of several products is
 * striped. Burners are left out.
 *
 * @param input - `plan`: a feasible answer of `planDay`
 * @returns a Vega-Lite spec
 * @throws StillroomError MISSING, CONTRADICTION where there is no feasible plan with a schedule
 *
 * @example
 * ```ts
 * import { timelineChart } from 'stillroom/charts';
 *
 * const task = { kind: 'prepare', what: 'peaches', products: ['peach halves'], unattended: false } as const;
 * const schedule = {
 *   tasks: [{ ...task, start: 0, end: 90, uses: [{ resource: 'hands', amount: 2 }] }],
 *   windows: [{ from: 0, to: 480 }],
 *   makespan: 90,
 *   lowerBound: 90,
 *   gap: 0,
 *   allDone: 90,
 * };
 * const chart = timelineChart({ plan: { feasible: true, invented: true, schedule, basis: [], cautions: [] } });
 * chart.data.values.map(({ resource, end }) => [resource, end]); // => [['hands 1', 1.5], ['hands 2', 1.5]]
 * ```
 */
export function timelineChart(input: TimelineChartInput): ChartSpec<TimelineRow> {
  return withPlan('plan', scheduledPlan(input), (plan) => {
    const { schedule } = plan;
    const axis = axisOf(schedule);
    const lanes = lanesOf(schedule.tasks);
    const products = [...new Set(schedule.tasks.flatMap((task) => task.products))];
    const bars = lanes.flatMap((lane, row) => lane.tasks.map((task) => barOf(task, lane, row, axis, products)));
    const work = `Hands, pots and canners are done at ${hours(schedule.makespan)} h`;
    const bound =
      schedule.lowerBound <= 0
        ? ''
        : schedule.lowerBound < schedule.makespan - EPSILON
          ? `; no order of the same work ends before ${hours(schedule.lowerBound)} h`
          : '; no order of the same work ends sooner';
    const quiet = schedule.tasks.some(({ unattended }) => unattended);
    return answer(
      chart({
        title: 'The order of work',
        subtitle: [
          ...(plan.invented ? ['An invented example.'] : []),
          `${work}${bound}.`,
          ...(quiet
            ? [
                `Pale bars go on by themselves, those with an arrow past the chart; everything is done at ${hours(schedule.allDone)} h.`,
              ]
            : []),
          ...lettersText(bars),
        ],
        description: `${work}. ${schedule.tasks.slice(0, MOST_READ_OUT).map(taskText).join('; ')}${schedule.tasks.length > MOST_READ_OUT ? '; and more' : ''}.`,
        values: bars.flatMap(({ stripes }) => stripes),
        layer: layersOf(bars, lanes, axis, products),
        height: Math.max(lanes.length, 1) * ROW_HEIGHT,
        basis: [plan.basis],
        cautions: [plan.cautions],
      }),
    );
  });
}

/** Tasks that the chart's words read out. */
const MOST_READ_OUT = 100;
const hours = (minutes: number): string => digits(minutes / HOUR, 1);

function taskText({ kind, what, raw, units, start, end }: ScheduledTask): string {
  const amount = raw === undefined ? '' : ` ${formatQuantity(raw, { step: 0.1 })} of`;
  const count = units === undefined ? '' : `, ${units.count} x ${units.unit}`;
  return `${hours(start)} to ${hours(end)} h: ${kind}${amount} ${what}${count}`;
}

/** The axis of hours, on which breaks are short. */
interface Axis {
  /** Hours by the clock, and where they stand; straight between two. */
  readonly knots: readonly (readonly [hour: number, at: number])[];
  readonly end: number;
  readonly ticks: readonly { readonly hour: number; readonly at: number }[];
  readonly breaks: readonly { readonly from: number; readonly to: number; readonly text: string }[];
}

function axisOf({ windows, tasks, makespan }: DaySchedule): Axis {
  const last = windows[windows.length - 1] as Window;
  const open = windows.map((window) => ({
    from: window.from / HOUR,
    to: (window === last ? Math.max(window.to, makespan) : window.to) / HOUR,
  }));
  const knots: (readonly [number, number])[] = [];
  const breaks: { from: number; to: number; text: string }[] = [];
  let at = 0;
  let before: number | undefined;
  for (const { from, to } of open) {
    if (before !== undefined && from > before) {
      const wide = Math.min(BREAK, from - before);
      breaks.push({ from: at, to: at + wide, text: `${digits(from - before, 1)} h break` });
      at += wide;
    }
    knots.push([from, at], [to, at + to - from]);
    at += to - from;
    before = to;
  }
  const [end] = knots[knots.length - 1] as readonly [number, number];
  if (tasks.some((task) => task.end / HOUR > end + EPSILON)) {
    breaks.push({ from: at, to: at + BREAK, text: 'after work' });
    knots.push([end + BREAK, at + BREAK]);
    at += BREAK;
  }
  const worked = open.reduce((sum, { from, to }) => sum + to - from, 0);
  const step = [1, 2, 4].find((each) => worked / each <= MOST_TICKS) ?? 8;
  const whole = open.flatMap(({ from, to }) =>
    Array.from(
      { length: Math.floor(to / step) - Math.ceil(from / step) + 1 },
      (_, index) => (Math.ceil(from / step) + index) * step,
    ),
  );
  return { knots, end: at, breaks, ticks: whole.map((hour) => ({ hour, at: placeOf(knots, hour) })) };
}

const MOST_TICKS = 16;

/** Where an hour stands on the axis; what lies past its end stands at the end. */
function placeOf(knots: Axis['knots'], hour: number): number {
  const next = knots.findIndex(([knot]) => knot >= hour - EPSILON);
  if (next === -1) return (knots[knots.length - 1] as readonly [number, number])[1];
  const [hourAfter, after] = knots[next] as readonly [number, number];
  const [hourBefore, before] = knots[Math.max(0, next - 1)] as readonly [number, number];
  if (hourAfter === hourBefore) return after;
  return before + ((hour - hourBefore) / (hourAfter - hourBefore)) * (after - before);
}

/** One row of the chart. */
interface Lane {
  readonly resource: string;
  /** As the axis names it: nothing for a further row of the same resource. */
  readonly label: string;
  readonly tasks: readonly ScheduledTask[];
}

const QUIET: readonly ScheduledTask['kind'][] = ['dry', 'freeze-dry', 'freeze'];

/** The places of resources from top to bottom: hands, pots, canners, what dries, what freezes. */
function rank(resource: string, tasks: readonly ScheduledTask[]): number {
  if (resource === 'hands') return 0;
  const kinds = tasks.map(({ kind }) => kind);
  const quiet = QUIET.findIndex((kind) => kinds.includes(kind));
  if (quiet !== -1) return 3 + quiet;
  return kinds.some((kind) => kind === 'cook' || kind === 'blanch') ? 1 : 2;
}

function lanesOf(all: readonly ScheduledTask[]): Lane[] {
  const byResource = new Map<string, ScheduledTask[]>();
  for (const task of all) {
    for (const { resource } of task.uses) {
      if (resource === 'burners' || task.end <= task.start) continue;
      byResource.set(resource, [...(byResource.get(resource) ?? []), task]);
    }
  }
  return [...byResource]
    .map(([resource, tasks]) => ({ resource, tasks, rank: rank(resource, tasks) }))
    .sort((one, other) => one.rank - other.rank)
    .flatMap(({ resource, tasks }): Lane[] => {
      const rows = sideBySide(tasks, (task) =>
        resource === 'hands' ? Math.ceil(task.uses.find((use) => use.resource === resource)?.amount ?? 1) : 1,
      );
      return rows.map((row, index) =>
        resource === 'hands' && rows.length > 1
          ? { resource: `hands ${index + 1}`, label: `hands ${index + 1}`, tasks: row }
          : { resource, label: index === 0 ? resource : '', tasks: row },
      );
    });
}

/** Tasks in as few rows as hold them side by side, each in so many rows at once. */
function sideBySide(tasks: readonly ScheduledTask[], breadth: (task: ScheduledTask) => number): ScheduledTask[][] {
  const rows: ScheduledTask[][] = [];
  for (const task of [...tasks].sort((one, other) => one.start - other.start)) {
    const free = rows.filter((row) => (row[row.length - 1] as ScheduledTask).end <= task.start + EPSILON);
    for (const row of free.slice(0, breadth(task))) row.push(task);
    for (let more = free.length; more < breadth(task); more++) rows.push([task]);
  }
  return rows;
}

/** A bar with its stripes, and what is written in it. */
interface Bar {
  readonly stripes: readonly TimelineRow[];
  readonly label?: { readonly at: number; readonly middle: number; readonly text: string; readonly ink: string };
  /** Whether it goes on past the chart. */
  readonly cut: boolean;
  readonly middle: number;
}

const GAP = 0.08;

function barOf(task: ScheduledTask, { resource }: Lane, row: number, axis: Axis, products: readonly string[]): Bar {
  const [start, end] = [task.start / HOUR, task.end / HOUR];
  const [from, to] = [placeOf(axis.knots, start), placeOf(axis.knots, end)];
  const shown = productsShown(products);
  const own = [...new Set(task.products.map((each) => (shown.includes(each) ? each : OTHERS)))];
  const names = own.length === 0 ? [OTHERS] : own;
  const high = (1 - 2 * GAP) / names.length;
  const { kind, what, unattended } = task;
  const letter = LETTERS[kind];
  const lastHour = (axis.knots[axis.knots.length - 1] as readonly [number, number])[0];
  const cut = end > lastHour + EPSILON;
  const middle = row + 0.5;
  const ink =
    !unattended && DARK.includes(colourOf(products, names[Math.floor(names.length / 2)] as string))
      ? '#FFFFFF'
      : '#000000';
  const text = fitting(
    [
      ...(cut ? [`${wordOf(kind)}, to ${digits(end, 1)} h`] : []),
      wordOf(kind),
      ...(letter === undefined ? [] : [letter]),
    ],
    ((to - from) / axis.end) * WIDTH - (cut ? ARROW : 0),
  );
  return {
    stripes: names.map((product, index) => ({
      resource,
      kind,
      what,
      product,
      start,
      end,
      unattended,
      from,
      to,
      top: row + GAP + index * high,
      bottom: row + GAP + (index + 1) * high,
    })),
    ...(text === undefined ? {} : { label: { at: from, middle, text, ink } }),
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
function lettersText(bars: readonly Bar[]): string[] {
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
const FONT_SIZE = 12;
/** Pixels of the longest name of a row, and of a letter of it where letters are drawn wide. */
const LONGEST_LABEL = 180;
const WIDE_LETTER = 8;

/** The longest of some texts that goes into so many pixels. */
const fitting = (texts: readonly string[], pixels: number): string | undefined =>
  texts.find((text) => text.length * LETTER + BESIDE <= pixels);

const productsShown = (products: readonly string[]): readonly string[] =>
  products.slice(0, products.length > COLOURS ? COLOURS - 1 : COLOURS);
const colourOf = (products: readonly string[], name: string): string => {
  const place = productsShown(products).indexOf(name);
  return place === -1 ? QUIET_GREY : (coloursFor(COLOURS)[place] as string);
};

function layersOf(bars: readonly Bar[], lanes: readonly Lane[], axis: Axis, products: readonly string[]): ChartLayer[] {
  const stripes = bars.flatMap((bar) => bar.stripes);
  const shown = [...productsShown(products)];
  const names = stripes.some(({ product }) => product === OTHERS) ? [...shown, OTHERS] : shown;
  const { ticks } = axis;
  const places = JSON.stringify(ticks.map(({ at }) => at));
  const x = {
    field: 'from',
    type: 'quantitative',
    title: 'time from the start, h',
    scale: { domain: [0, axis.end], nice: false },
    axis: {
      values: ticks.map(({ at }) => at),
      labelExpr: `${JSON.stringify(ticks.map(({ hour }) => String(hour)))}[indexof(${places}, datum.value)]`,
      labelOverlap: false,
    },
  };
  const rows = lanes.map((_, row) => row + 0.5);
  const y = {
    field: 'top',
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
  const across = { x, x2: { field: 'to' }, y, y2: { field: 'bottom' } };
  const colour = {
    field: 'product',
    type: 'nominal',
    title: 'product',
    scale: { domain: names, range: names.map((name) => colourOf(products, name)) },
    // one legend for full and pale bars
    legend: { orient: 'bottom', columns: 2, symbolType: 'square', symbolOpacity: 1, symbolStrokeWidth: 0 },
  };
  const whole = (list: readonly { from: number; to: number }[]) =>
    list.map((each) => ({ ...each, top: 0, bottom: Math.max(lanes.length, 1) }));
  const apart = lanes.flatMap(({ label }, row) =>
    label === '' || row === 0 || label.startsWith('hands') ? [] : [{ top: row }],
  );
  const cut = bars.filter((bar) => bar.cut).map(({ middle }) => ({ from: axis.end, top: middle }));
  const labels = bars.flatMap(({ label }) =>
    label === undefined ? [] : [{ from: label.at, top: label.middle, text: label.text, ink: label.ink }],
  );
  return [
    {
      data: { values: whole(axis.breaks) },
      mark: { type: 'rect', color: '#DDDDDD', opacity: 0.7 },
      encoding: across,
    },
    {
      data: { values: axis.breaks.map(({ to, text }) => ({ from: to, text })) },
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
