/** One step of a recipe, with its words for people. */
import { formatQuantity } from '../quantity/formatQuantity';
import { parseQuantity } from '../quantity/parseQuantity';
import type { Quantity } from '../quantity/types';
import { OPERATIONS } from './rows/rows';
import type { OperationRow, StepRow } from './rows/tables';

type Span = NonNullable<StepRow['time']>;
export const ends = (span: Span): readonly [string, string] =>
  typeof span === 'string' ? [span, span] : [span.low, span.high];

/** Pages print half minutes and sixteenths of an inch: the words keep them. */
const asPrinted = (end: string): string => formatQuantity(end, { fraction: 16 });
const say = (span: Span): string => {
  const [low, high] = ends(span).map(asPrinted) as [string, string];
  if (low === high) return low;
  // the unit once, where both ends have the same: 5 to 20 min, 1 to 2 weeks
  const unit = high.slice(high.lastIndexOf(' '));
  const one = [unit, unit.replace(/s$/, '')].find((each) => low.endsWith(each));
  return `${one === undefined ? low : low.slice(0, -one.length)} to ${high}`;
};

/** The operation of a step; the tests prove that each is in the table. */
export const operationOf = ({ do: id }: StepRow): OperationRow => OPERATIONS.get(id) as OperationRow;

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
const percent = (value: number): string => `${Number((value * 100).toFixed(1))} %`;

/** The step as a sheet says it: `Simmer the fruit for 5 to 10 minutes, until soft.` */
export function stepText(step: StepRow): string {
  const { of, says, time, temperature, size, moisture, to, times, optional } = step;
  const inWords = (text: string) => (optional === true ? `If you like: ${text}.` : `${capital(text)}.`);
  if (says !== undefined) {
    const figures: Readonly<Record<string, Span | undefined>> = { time, temperature, size };
    return inWords(says.replace(/\{(\w+)\}/g, (_, name: string) => say(figures[name] as Span)));
  }
  const dry = moisture === undefined ? undefined : typeof moisture === 'number' ? moisture : moisture.high;
  const words = [
    operationOf(step).name,
    ...(of === undefined ? [] : [of]),
    ...(size === undefined ? [] : [`(${say(size)})`]),
    ...(temperature === undefined ? [] : [`at ${say(temperature)}`]),
    ...(time === undefined ? [] : [`for ${say(time)}`]),
    ...(times === undefined ? [] : [`, ${times} times`]),
  ];
  const end = [...(to === undefined ? [] : [to]), ...(dry === undefined ? [] : [`${percent(dry)} moisture`])];
  const text = `${words.join(' ')}${end.length === 0 ? '' : `, until ${end.join(', ')}`}`.replace(/ ,/g, ',');
  return inWords(text);
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
