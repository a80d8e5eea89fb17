import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { readFood, readForm } from '../foods/fields';
import { knownOr } from '../produce/shape';
import { yieldOf } from '../produce/yields/readyFromRaw';
import { choice, fields, list, mass, name, number, optional, rangeOf, readInput, share } from '../quantity/fields';
import { toDecimalIn } from '../quantity/scale';
import type { Range } from '../quantity/types';
import { type Basis, type Caution, joinBasis, joinCautions } from '../sources/basis';
import { caution } from '../sources/cautions';
import { recordCaution } from './cautions';
import { ninetyPercentT } from './studentT';
import { halfWidths, type MeanAndSpread, updated } from './updateNormal';

/** How the figures vary: by so much (`plain`), by so many times (`times`), or as a share from 0 to 1 (`share`). */
export type Scale = 'plain' | 'times' | 'share';

/** A figure that is left out of count, or counts for less, because it lies far from the others. */
export interface SetAside {
  /** Its place in the list, from 0. */
  readonly index: number;
  readonly value: number;
  /** What it counts for, from 0 to 1. */
  readonly weight: number;
}

/** A figure learned from a published range and the cook's own records. */
export interface LearnedFigure {
  /** Where the next batch falls 9 times in 10. */
  readonly figure: Range<number>;
  /** Where the average of all your batches lies, 9 chances in 10. */
  readonly average: Range<number>;
  /** What the published range still counts for, from 1 (no records) towards 0. */
  readonly priorWeight: number;
  /** How many records there are. */
  readonly n: number;
  readonly setAside: readonly SetAside[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The published range counts as one batch where the average is asked. */
const PRIOR_BATCHES = 1;
/** And as four where the spread is asked, which keeps the first intervals finite and wide. */
const PRIOR_DEGREES = 4;
/** A record farther from the middle than this many robust standard deviations counts for less. */
const FAR = 2.5;
/** The standard deviation of a normal sample over its median absolute deviation. */
const MAD_TO_SD = 1.4826;
/** Below this many records the answer says that the published range still carries it. */
const FEW = 5;

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1
    ? (sorted[half] as number)
    : ((sorted[half - 1] as number) + (sorted[half] as number)) / 2;
}

/**
 * What each record counts for: 1 up to 2.5 robust standard deviations from the middle, beyond that (2.5 / z)^4. The
 * middle is the median of the records with the published figure counted twice among them; the deviation pools the
 * spread of the published range with the median absolute deviation of the same list. So one slip of the pen moves
 * nothing, and records that agree with each other soon outvote the book.
 */
function weightsOf(prior: MeanAndSpread, values: readonly number[]): number[] {
  const middle = median([prior.mean, prior.mean, ...values]);
  const own = MAD_TO_SD * median([prior.mean, prior.mean, ...values].map((value) => Math.abs(value - middle)));
  const n = values.length;
  const published = prior.spread ** 2 * (1 + 1 / prior.weight);
  const sd = Math.sqrt((prior.degrees * published + n * own ** 2) / (prior.degrees + n));
  return values.map((value) => Math.min(1, (FAR * sd) / Math.abs(value - middle)) ** 4);
}

export type Learned = Omit<LearnedFigure, 'basis' | 'cautions'>;

/** The learning itself: normal-inverse-gamma on the figure or its logarithm, records weighted against outliers. */
export function learn(range: Range<number>, observed: readonly number[], scale: Scale): Learned {
  const into = scale === 'times' ? Math.log : (value: number) => value;
  const back = scale === 'times' ? Math.exp : (value: number) => value;
  const [low, likely, high] = [into(range.low), into(range.likely), into(range.high)];
  const half = (high - low) / 2;
  const prior: MeanAndSpread = {
    mean: likely,
    weight: PRIOR_BATCHES,
    degrees: PRIOR_DEGREES,
    // chosen so that, before any record, the next batch's 90 % interval is as wide as the published range
    spread: half / (ninetyPercentT(PRIOR_DEGREES) * Math.sqrt(1 + 1 / PRIOR_BATCHES)),
  };
  const values = observed.map(into);
  const weights = weightsOf(prior, values);
  const known = updated(prior, values, weights);
  const widths = halfWidths(known);
  const priorWeight = prior.weight / known.weight;
  // a range that leans to one side leans less as records take over
  const lean = (side: number) => 1 + priorWeight * (side / half - 1);
  const inside = (value: number) => (scale === 'share' ? Math.min(1, Math.max(0, value)) : value);
  const around = (width: number): Range<number> => ({
    low: inside(back(known.mean - width * lean(likely - low))),
    likely: inside(back(known.mean)),
    high: inside(back(known.mean + width * lean(high - likely))),
  });
  return {
    figure: around(widths.next),
    average: around(widths.average),
    priorWeight,
    n: values.length,
    setAside: weights.flatMap((weight, index) =>
      weight < 1 ? [{ index, value: observed[index] as number, weight }] : [],
    ),
  };
}

export const MODEL: Basis = {
  of: 'normal mean and spread, both unknown; next batch by Student t',
  kind: 'equation',
  source: 'bayes-first-course',
  locator: 'section 5.3',
};
export const ownRecords = (n: number): Basis[] =>
  n === 0 ? [] : [{ of: `${n} records of your own`, kind: 'measured' }];

export function cautionsOf({ n, setAside }: Learned): Caution[] {
  return [
    ...(n < FEW ? [recordCaution('few-records')] : []),
    ...(setAside.length > 0 ? [recordCaution('weighings-set-aside')] : []),
    caution('estimate'),
  ];
}

const POSITIVE = 'a figure above zero (1e-9 or more)';

/** Ends nearer than this, against their size, are one figure and no range: doubles could not tell them apart. */
const APART = 1e-9;

/** Whether the ends of a range stand in order and apart. */
export const isRange = ({ low, likely, high }: Range<number>): boolean =>
  low <= likely && likely <= high && high - low > APART * Math.max(Math.abs(low), Math.abs(high));

function checkRange(range: Range<number>, path: string, positive: boolean): void {
  if (!isRange(range)) {
    fail('CONTRADICTION', path, range, 'low, likely and high in rising order, with low below high');
  }
  if (positive && range.low < SMALLEST) fail('OUT_OF_RANGE', `${path}.low`, range.low, POSITIVE);
}

export const LARGEST = 1e9;
export const SMALLEST = 1 / LARGEST;
const figure = (what: string) => number(`${what}: a number`, { min: -LARGEST, max: LARGEST });
const LONGEST_LIST = 100_000;

const figureSchema = /* @__PURE__ */ fields({
  /** What it is, for the basis. */
  what: optional(name('what is learned, such as "hours per pound"')),
  /** Published range `{ low, likely, high }`, low below high. */
  prior: rangeOf(() => figure('a figure of the published range')),
  /** Your own figures, 0 to 100,000, in the same unit. */
  observed: list('your own figures', figure('a figure of your own'), 0, LONGEST_LIST),
  /** `plain` (the usual) or `times`. */
  varies: optional(choice('how the figure varies', ['plain', 'times'])),
});
export type LearnFigureInput = Given<z.input<typeof figureSchema>>;

/**
 * A figure for next time, from a published range and your own records: hours per pound, a drying constant, jars a
 * bushel. With no records it is the published range; with many it is your own kitchen.
 *
 * Model: batches are normal about your own average, average and spread both unknown (normal-inverse-gamma). The
 * published range is taken as the central 90 % of the next batch; it counts as 1 batch for the average and 4 for the
 * spread. `figure` is the 90 % interval of the next batch by Student's t, `average` that of your average. With
 * `varies: 'times'` the logarithms are normal: for figures that are out by a factor and never below zero.
 * A record farther than 2.5 robust standard deviations from the middle counts for (2.5 / z)^4 and is listed in
 * `setAside`; the middle is the median with the published figure counted twice. A range that leans to one side
 * leans less as records take over. The assumed weights, 2.5 and the leaning are choices of this library.
 *
 * @returns `figure`, `average`, `priorWeight` (1 / (1 + records that count)), `n`, `setAside`
 * @throws StillroomError CONTRADICTION for a range out of order, OUT_OF_RANGE for a figure of zero or less with `times`
 *
 * Source: A First Course in Bayesian Statistical Methods, section 5.3 (the model).
 *
 * @example
 * ```ts
 * import { learnFigure } from 'stillroom/record';
 *
 * const book = { low: 6, likely: 9, high: 12 };
 * learnFigure({ prior: book, observed: [] }).figure.high; // ≈ 12
 * const hours = learnFigure({ prior: book, observed: [7, 7.5, 7.2, 7.4, 72] });
 * hours.figure.likely; // ≈ 7.62
 * hours.setAside[0].value; // => 72
 * ```
 */
export function learnFigure(input: LearnFigureInput): LearnedFigure {
  const { what = 'published range', prior, observed, varies = 'plain' } = readInput(figureSchema, input);
  checkRange(prior, 'prior', varies === 'times');
  if (varies === 'times') {
    const wrong = observed.findIndex((value) => value < SMALLEST);
    if (wrong !== -1) fail('OUT_OF_RANGE', `observed[${wrong}]`, observed[wrong], POSITIVE);
  }
  const learned = learn(prior, observed, varies);
  return answer({
    ...learned,
    basis: [{ of: `${what}, as you gave it`, kind: 'measured' }, MODEL, ...ownRecords(learned.n)],
    cautions: cautionsOf(learned),
  });
}

const shareRange = rangeOf(() => share());
const moistureSchema = /* @__PURE__ */ fields({
  prior: shareRange,
  observed: list('your own moistures', share(), 0, LONGEST_LIST),
});
export type LearnMoistureInput = Given<z.input<typeof moistureSchema>>;
export interface LearnedMoisture extends Omit<LearnedFigure, 'figure'> {
  /** Wet basis, of the next lot. */
  readonly moisture: Range<number>;
}

/**
 * The moisture to expect of the next lot, from a published range and what you measured. The model is that of
 * `learnFigure`, its ends held between 0 and 1.
 *
 * @throws StillroomError CONTRADICTION, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { learnMoisture } from 'stillroom/record';
 *
 * const prior = { low: '84 %', likely: '86 %', high: '88 %' } as const;
 * learnMoisture({ prior, observed: ['83 %', '84 %', '83.5 %'] }).moisture.likely; // ≈ 0.841
 * ```
 */
export function learnMoisture(input: LearnMoistureInput): LearnedMoisture {
  const { prior, observed } = readInput(moistureSchema, input);
  checkRange(prior, 'prior', false);
  const { figure: moisture, ...learned } = learn(prior, observed, 'share');
  return answer({
    moisture,
    ...learned,
    basis: [{ of: 'published range, as you gave it', kind: 'measured' }, MODEL, ...ownRecords(learned.n)],
    cautions: cautionsOf({ figure: moisture, ...learned }),
  });
}

const yieldSchema = /* @__PURE__ */ fields({
  prior: optional(shareRange),
  /** Instead of `prior`: a fruit or vegetable whose published yield is taken. */
  produce: optional(name('a fruit or vegetable, such as "peach"')),
  /** With `produce`: `halves`, `slices`, `sauce` ... */
  form: optional(name('a form, such as "halves"')),
  /** Your weighings, `{ raw, ready }`, 0 to 100,000; `ready` no more than `raw`. */
  records: list('your own weighings', fields({ raw: mass(), ready: mass() }), 0, LONGEST_LIST),
});
export type LearnYieldInput = Given<z.input<typeof yieldSchema>>;
export interface LearnedYield extends Omit<LearnedFigure, 'figure'> {
  /** Ready over raw, of the next batch. */
  readonly yield: Range<number>;
}

/** The range to start from, and what it rests on. */
function priorOf(given: z.output<typeof yieldSchema>): { prior: Range<number>; basis: Basis[]; cautions: Caution[] } {
  const { prior, produce, form } = given;
  if (prior !== undefined) {
    if (produce !== undefined || form !== undefined) {
      fail('CONTRADICTION', 'prior', prior, 'either a prior range, or a produce and form with a published one');
    }
    checkRange(prior, 'prior', false);
    return { prior, basis: [{ of: 'published range, as you gave it', kind: 'measured' }], cautions: [] };
  }
  if (produce === undefined) fail('MISSING', 'prior', prior, 'a published range, or a produce and form that have one');
  if (form === undefined) fail('MISSING', 'form', form, 'a form, such as "halves"');
  const read = readFood(produce, 'produce');
  const { yield: printed, basis, cautions } = knownOr(yieldOf(read.id, readForm(form, 'form')), 'form', form);
  // the published ends are at least 3 points from the likely share, so they stand apart
  return { prior: { ...printed }, basis: [...basis], cautions: [...cautions] };
}

/**
 * How much of the raw weight will be ready next time, from the published range and your own weighings: the published
 * range as it stands with no weighings, your own kitchen after a dozen. The model is that of `learnFigure`, its ends
 * held between 0 and 1: average and spread both unknown, the published range as the central 90 % of the next batch,
 * worth 1 batch for the average; one slip of the pen is set aside.
 *
 * @returns `yield` (90 % interval of the next batch), `average`, `priorWeight`, `n`, `setAside`
 * @throws StillroomError CONTRADICTION for more ready than raw or a range out of order, MISSING, UNKNOWN_NAME
 *
 * Source: A First Course in Bayesian Statistical Methods, section 5.3 (the model); yields: see `readyFromRaw`.
 *
 * @example
 * ```ts
 * import { learnYield } from 'stillroom/record';
 *
 * const prior = { low: 0.76, likely: 0.82, high: 0.88 };
 * const own = learnYield({
 *   prior,
 *   records: [
 *     { raw: '40 lb', ready: '29 lb' },
 *     { raw: '22 lb', ready: '16.5 lb' },
 *     { raw: '60 lb', ready: '44 lb' },
 *   ],
 * });
 * own.yield.likely; // ≈ 0.757
 * own.priorWeight; // => 0.25
 * learnYield({ produce: 'peaches', form: 'halves', records: [] }).yield.low; // ≈ 0.76
 * ```
 */
export function learnYield(input: LearnYieldInput): LearnedYield {
  const given = readInput(yieldSchema, input);
  const { prior, basis, cautions } = priorOf(given);
  const observed = given.records.map(({ raw, ready }, index) => {
    const share = toDecimalIn(ready, 'g').div(toDecimalIn(raw, 'g'));
    if (share.gt(1)) fail('CONTRADICTION', `records[${index}].ready`, ready.value, 'no more than the raw weight');
    return share.toNumber();
  });
  const { figure: share, ...learned } = learn(prior, observed, 'share');
  return answer({
    yield: share,
    ...learned,
    basis: joinBasis(basis, [MODEL], ownRecords(learned.n)),
    cautions: joinCautions(cautions, cautionsOf({ figure: share, ...learned })),
  });
}
