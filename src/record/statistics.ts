/** What is known of a normal quantity whose mean and spread are both unknown, and of the next one of its kind. */
import type { Range } from '../quantity/types';
import { ninetyPercentT } from './studentT';

/** How the figures vary: by a difference (`plain`), by a factor (`times`), or as a share from 0 to 1 (`share`). */
export type Scale = 'plain' | 'times' | 'share';

/** Normal-inverse-gamma: a mean and a spread, and how many measurements each of them is worth. */
export interface MeanAndSpread {
  readonly mean: number;
  /** How many measurements the mean is worth. */
  readonly measurements: number;
  /** The standard deviation of one measurement. */
  readonly spread: number;
  /** How many measurements the spread is worth. */
  readonly degrees: number;
}

/**
 * The update by measurements, each counting in full or in part: with prior mean m0 worth k0 measurements and spread
 * s0 worth v0, kn = k0 + n, mn = (k0 m0 + sum) / kn, vn = v0 + n and
 * vn sn^2 = v0 s0^2 + sum (x - mean)^2 + (k0 n / kn) (mean - m0)^2.
 *
 * Source: A First Course in Bayesian Statistical Methods, section 5.3.
 */
export function updated(prior: MeanAndSpread, values: readonly number[], counts: readonly number[]): MeanAndSpread {
  let n = 0;
  let sum = 0;
  values.forEach((value, i) => {
    n += counts[i] as number;
    sum += (counts[i] as number) * value;
  });
  if (n === 0) return prior;
  const mean = sum / n;
  let squares = 0;
  values.forEach((value, i) => {
    squares += (counts[i] as number) * (value - mean) ** 2;
  });
  const measurements = prior.measurements + n;
  const degrees = prior.degrees + n;
  const apart = ((prior.measurements * n) / measurements) * (mean - prior.mean) ** 2;
  return {
    mean: (prior.measurements * prior.mean + sum) / measurements,
    measurements,
    spread: Math.sqrt((prior.degrees * prior.spread ** 2 + squares + apart) / degrees),
    degrees,
  };
}

/** Half the width of the 90 % interval of the next measurement, and of the mean: Student's t. */
export function halfWidths(known: MeanAndSpread): { next: number; average: number } {
  const t = ninetyPercentT(known.degrees);
  return {
    next: t * known.spread * Math.sqrt(1 + 1 / known.measurements),
    average: (t * known.spread) / Math.sqrt(known.measurements),
  };
}

/** The published range counts as one batch for the average. */
const PRIOR_BATCHES = 1;
/** And as four for the spread, which keeps the first intervals finite and wide. */
const PRIOR_DEGREES = 4;
/** A record farther from the middle than this many robust standard deviations counts for less. */
const FAR = 2.5;
/** The standard deviation of a normal sample over its median absolute deviation. */
const MAD_TO_SD = 1.4826;

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
function countsOf(prior: MeanAndSpread, values: readonly number[]): number[] {
  const middle = median([prior.mean, prior.mean, ...values]);
  const own = MAD_TO_SD * median([prior.mean, prior.mean, ...values].map((value) => Math.abs(value - middle)));
  const n = values.length;
  const published = prior.spread ** 2 * (1 + 1 / prior.measurements);
  const sd = Math.sqrt((prior.degrees * published + n * own ** 2) / (prior.degrees + n));
  return values.map((value) => Math.min(1, (FAR * sd) / Math.abs(value - middle)) ** 4);
}

/** A figure that counts for less than the others because it lies far from them. */
export interface Outlier {
  /** Its place in the list, from 0. */
  readonly index: number;
  /** The figure itself. */
  readonly value: number;
  /** How much of it counts, from 0 to 1. */
  readonly countsFor: number;
}

/** What was learned of a figure. */
export interface Learned {
  /** Where the next batch falls 9 times in 10. */
  readonly figure: Range<number>;
  /** Where the average of all your batches lies, 9 chances in 10. */
  readonly average: Range<number>;
  /** How much the published range still counts for, from 1 (no records) toward 0. */
  readonly priorCountsFor: number;
  /** How many records there are. */
  readonly n: number;
  /** The figures that count for less than 1. */
  readonly outliers: readonly Outlier[];
}

/** The learning itself: normal-inverse-gamma on the figure or its logarithm, with far records counting for less. */
export function learn(range: Range<number>, observed: readonly number[], scale: Scale): Learned {
  const into = scale === 'times' ? Math.log : (value: number) => value;
  const back = scale === 'times' ? Math.exp : (value: number) => value;
  const [low, likely, high] = [into(range.low), into(range.likely), into(range.high)];
  const half = (high - low) / 2;
  const prior: MeanAndSpread = {
    mean: likely,
    measurements: PRIOR_BATCHES,
    degrees: PRIOR_DEGREES,
    // chosen so that, before any record, the next batch's 90 % interval is as wide as the published range
    spread: half / (ninetyPercentT(PRIOR_DEGREES) * Math.sqrt(1 + 1 / PRIOR_BATCHES)),
  };
  const values = observed.map(into);
  const counts = countsOf(prior, values);
  const known = updated(prior, values, counts);
  const widths = halfWidths(known);
  const priorCountsFor = prior.measurements / known.measurements;
  // a range that leans to one side leans less as records take over
  const lean = (side: number) => 1 + priorCountsFor * (side / half - 1);
  const inside = (value: number) => (scale === 'share' ? Math.min(1, Math.max(0, value)) : value);
  const around = (width: number): Range<number> => ({
    low: inside(back(known.mean - width * lean(likely - low))),
    likely: inside(back(known.mean)),
    high: inside(back(known.mean + width * lean(high - likely))),
  });
  return {
    figure: around(widths.next),
    average: around(widths.average),
    priorCountsFor,
    n: values.length,
    outliers: counts.flatMap((countsFor, index) =>
      countsFor < 1 ? [{ index, value: observed[index] as number, countsFor }] : [],
    ),
  };
}

/** Figures beyond this size, or nearer to zero than one over it, are no figures of a kitchen. */
export const LARGEST = 1e9;
export const SMALLEST = 1 / LARGEST;

/** Ends nearer than this, against their size, are one figure and no range: doubles could not tell them apart. */
const APART = 1e-9;

/** Whether the ends of a range are in order and apart. */
export const isRange = ({ low, likely, high }: Range<number>): boolean =>
  low <= likely && likely <= high && high - low > APART * Math.max(Math.abs(low), Math.abs(high));
