/** One step of a recipe, with its words for people. */
import { formatQuantity } from '../quantity/formatQuantity';
import { parseQuantity } from '../quantity/parseQuantity';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Dimension, findUnit } from '../quantity/units';
import { OPERATIONS } from './rows/rows';
import type { OperationRow, StepRow } from './rows/tables';

type Span = NonNullable<StepRow['time']>;
export const ends = (span: Span): readonly [string, string] =>
  typeof span === 'string' ? [span, span] : [span.low, span.high];

/** Pages print half minutes and sixteenths of an inch: the words keep them. */
const asPrinted = (end: string): string => formatQuantity(end, { fraction: 16 });
/** The unit once, where both ends have the same: 5 to 20 min, 1 to 2 weeks. */
function joinedEnds(low: string, high: string): string {
  if (low === high) return low;
  const unit = high.slice(high.lastIndexOf(' '));
  const one = [unit, unit.replace(/s$/, '')].find((each) => low.endsWith(each));
  return `${one === undefined ? low : low.slice(0, -one.length)} to ${high}`;
}
const say = (span: Span): string => {
  const [low, high] = ends(span).map(asPrinted) as [string, string];
  return joinedEnds(low, high);
};

/** The operation of a step; the tests prove that each is in the table. */
export const operationOf = ({ do: id }: StepRow): OperationRow => OPERATIONS.get(id) as OperationRow;

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
const percent = (value: number): string => `${Number((value * 100).toFixed(1))} %`;

/** How the figures of a step are written: as printed, and on a metric page in millimeters and degrees C beside that. */
interface Figures {
  readonly time?: string;
  readonly temperature?: string;
  readonly size?: string;
  readonly headspace?: string;
  /** The others by their number, from 1. */
  readonly [number: number]: string;
}
const numbered = (figures: StepRow['figures'], write: (span: Span) => string): Figures =>
  Object.fromEntries((figures ?? []).map((span, index) => [index + 1, write(span)]));

const printed = ({ time, temperature, size, headspace, figures }: StepRow): Figures => ({
  ...(time === undefined ? {} : { time: say(time) }),
  ...(temperature === undefined ? {} : { temperature: say(temperature) }),
  ...(size === undefined ? {} : { size: say(size) }),
  ...(headspace === undefined ? {} : { headspace: say(headspace) }),
  ...numbered(figures, figureText),
});

/** Thirds of a cup stay thirds. */
function figureText(span: Span): string {
  const [low, high] = ends(span);
  const write = (end: string) => (kindOf(end) === 'volume' ? end : asPrinted(end));
  return joinedEnds(write(low), write(high));
}
const kindOf = (end: string): Dimension | undefined => findUnit(parseQuantity(end).unit)?.dimension;

/** What is measured out, in metric units; a length keeps the inches that the page prints. */
function metricFigure(span: Span): string {
  const [low, high] = ends(span);
  const text = joinedEnds(metricEnd(low, false), metricEnd(high, low !== high));
  return kindOf(low) === 'length' ? `${figureText(span)} (${text})` : text;
}
function metricEnd(end: string, most: boolean): string {
  const quantity = parseQuantity(end);
  switch (kindOf(end)) {
    case 'length':
      return formatQuantity(end, { unit: 'mm', step: 1 });
    case 'temperature':
      return degrees(end, most);
    case 'temperatureDifference':
      return formatQuantity(end, { unit: 'delta degC', step: 0.5 });
    case 'mass':
      return kitchenMetric(valueIn(quantity as Quantity<'mass'>, 'g'), 'g', 'kg');
    case 'volume':
      return kitchenMetric(valueIn(quantity as Quantity<'volume'>, 'mL'), 'mL', 'L');
    default:
      return asPrinted(end);
  }
}
/** Steps to round grams and milliliters to: each for what is below. */
const STEPS = [
  [10, 0.5],
  [30, 1],
  [300, 5],
] as const;

/** Grams or milliliters as a kitchen measures them, never less than printed. */
function kitchenMetric(value: number, small: 'g' | 'mL', large: 'kg' | 'L'): string {
  if (value >= 1000) return formatQuantity({ value: value / 1000, unit: large }, { step: 0.1, rounding: 'up' });
  return formatQuantity(
    { value, unit: small },
    { step: STEPS.find(([below]) => value < below)?.[1] ?? 10, rounding: 'up' },
  );
}
// never less hot than printed; the top of a range never hotter
const degrees = (end: string, most: boolean): string =>
  formatQuantity(end, { unit: 'degC', step: 1, rounding: most ? 'down' : 'up' });
function metric(step: StepRow): Figures {
  const { temperature, size, headspace, figures } = step;
  const beside = (span: Span, write: (end: string, most: boolean) => string): string => {
    const [low, high] = ends(span);
    const metric = low === high ? write(low, false) : joinedEnds(write(low, false), write(high, true));
    return `${say(span)}, ${metric}`;
  };
  const millimeters = (end: string) => formatQuantity(end, { unit: 'mm', step: 1 });
  return {
    ...printed(step),
    ...(temperature === undefined ? {} : { temperature: beside(temperature, degrees) }),
    ...(size === undefined ? {} : { size: beside(size, millimeters) }),
    ...(headspace === undefined ? {} : { headspace: metricFigure(headspace) }),
    ...numbered(figures, metricFigure),
  };
}

/** The step as a sheet says it: `Simmer the fruit for 5 to 10 minutes, until soft.` */
export const stepText = (step: StepRow): string => textOf(step, printed(step));
/** The same for a metric page: `Slice (1/8 in, 3 mm).` */
export const stepTextMetric = (step: StepRow): string => textOf(step, metric(step));

function textOf(step: StepRow, figures: Figures): string {
  const { moisture, times, optional } = step;
  const { time, temperature, size } = figures;
  const filled = (text: string | undefined) =>
    text?.replace(/\{(\w+)\}/g, (_, name: string) => figures[name as keyof Figures] as string);
  const [of, says, to] = [step.of, step.says, step.to].map(filled);
  const inWords = (text: string) => (optional === true ? `If you like: ${text}.` : `${capital(text)}.`);
  if (says !== undefined) return inWords(says);
  const dry = moisture === undefined ? undefined : typeof moisture === 'number' ? moisture : moisture.high;
  const words = [
    operationOf(step).name,
    ...(of === undefined ? [] : [of]),
    ...(size === undefined ? [] : [`(${size})`]),
    ...(temperature === undefined ? [] : [`at ${temperature}`]),
    ...(time === undefined ? [] : [`for ${time}`]),
    ...(times === undefined ? [] : [`, ${times} times`]),
  ];
  const end = [...(to === undefined ? [] : [to]), ...(dry === undefined ? [] : [`${percent(dry)} moisture`])];
  return inWords(`${words.join(' ')}${end.length === 0 ? '' : `, until ${end.join(', ')}`}`.replace(/ ,/g, ','));
}

/** One step. */
export interface RecipeStep {
  /** Fixed name of the operation: `simmer`. */
  readonly do: string;
  /** The step in words. */
  readonly text: string;
  /** What it keeps busy: `hands`, `burner`, `canner` ... */
  readonly takes: string;
  /** Whether someone stays with it the whole time. */
  readonly attended: boolean;
  /** How long, as printed. */
  readonly time?: {
    /** At least. */
    readonly low: Quantity<'time'>;
    /** At most. */
    readonly high: Quantity<'time'>;
  };
  /** How hot, as printed. */
  readonly temperature?: {
    /** At least. */
    readonly low: Quantity<'temperature'>;
    /** At most. */
    readonly high: Quantity<'temperature'>;
  };
  /** Only for this pack. */
  readonly pack?: 'hot' | 'raw';
  /** You may leave it out. */
  readonly optional: boolean;
  /** What the page says besides. */
  readonly note?: string;
}

/** A step as an answer holds it. */
export function stepOf(step: StepRow): RecipeStep {
  const { takes, attended } = operationOf(step);
  const span = <D extends 'time' | 'temperature'>(given: NonNullable<StepRow['time']>, dimension: D) => {
    const [low, high] = ends(given);
    return { low: parseQuantity(low, dimension), high: parseQuantity(high, dimension) };
  };
  return {
    do: step.do,
    text: stepText(step),
    takes,
    attended,
    ...(step.time === undefined ? {} : { time: span(step.time, 'time') }),
    ...(step.temperature === undefined ? {} : { temperature: span(step.temperature, 'temperature') }),
    ...(step.pack === undefined ? {} : { pack: step.pack }),
    optional: step.optional === true,
    ...(step.notes === undefined ? {} : { note: step.notes }),
  };
}
