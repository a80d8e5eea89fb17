import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { count, fields, list, number, readInput } from '../quantity/fields';
import type { Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { ninetyPercentT } from './studentT';

const LARGEST = 1e9;
const figure = (what: string) => number(`${what}: a number`, { min: -LARGEST, max: LARGEST });
const positive = (what: string) => number(`${what}: a number above zero`, { above: 0, max: LARGEST });

const meanSchema = /* @__PURE__ */ fields({
  /** `mean` and `sd` before measuring. */
  prior: fields({ mean: figure('the mean expected'), sd: positive('how sure that is, as a standard deviation') }),
  /** `mean` of `n` measurements. */
  sample: fields({ mean: figure('the mean of the sample'), n: count('how many were measured', 1) }),
  /** Standard deviation of one measurement. */
  spread: positive('the known standard deviation of one measurement'),
});
export type UpdateMeanInput = Given<z.input<typeof meanSchema>>;
export interface UpdatedMean {
  readonly mean: number;
  readonly sd: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * What is known of a mean after measuring, where the spread of one measurement is known (normal-normal).
 *
 * Precisions add: 1/sd'^2 = 1/sd^2 + n/spread^2, and the mean is weighted by them.
 *
 * @throws StillroomError OUT_OF_RANGE, MISSING
 *
 * Source: Hoff, A First Course in Bayesian Statistical Methods, section 5.2.
 *
 * @example
 * ```ts
 * import { updateMean } from 'stillroom/record';
 *
 * updateMean({ prior: { mean: 4, sd: 0.5 }, sample: { mean: 0, n: 10 }, spread: 1 }).mean; // ≈ 1.142857
 * ```
 */
export function updateMean(input: UpdateMeanInput): UpdatedMean {
  const { prior, sample, spread } = readInput(meanSchema, input);
  const before = 1 / prior.sd ** 2;
  const measured = sample.n / spread ** 2;
  return answer({
    mean: (before * prior.mean + measured * sample.mean) / (before + measured),
    sd: Math.sqrt(1 / (before + measured)),
    basis: [
      { of: 'normal mean, known spread', kind: 'equation', source: 'bayes-first-course', locator: 'section 5.2' },
    ],
    cautions: [],
  });
}

const spreadSchema = /* @__PURE__ */ fields({
  prior: fields({
    mean: figure('the mean expected'),
    weight: positive('how many measurements that is worth'),
    spread: positive('the standard deviation expected of one measurement'),
    degrees: number('how many measurements the spread is worth: at least 1', { min: 1, max: LARGEST }),
  }),
  /** The measurements. */
  observed: list('what was measured', figure('a measurement'), 1, 100_000),
});
export type UpdateMeanAndSpreadInput = Given<z.input<typeof spreadSchema>>;

/** What is known of a normal quantity whose mean and spread are both unknown (normal-inverse-gamma). */
export interface MeanAndSpread {
  readonly mean: number;
  /** How many measurements the mean is worth. */
  readonly weight: number;
  readonly spread: number;
  /** How many measurements the spread is worth. */
  readonly degrees: number;
}
export interface UpdatedMeanAndSpread extends MeanAndSpread {
  /** Where the next measurement falls 9 times in 10: Student's t. */
  readonly next: Range<number>;
  /** Where the mean lies, 9 chances in 10. */
  readonly average: Range<number>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The update itself, each measurement counting for its weight. */
export function updated(prior: MeanAndSpread, values: readonly number[], weights: readonly number[]): MeanAndSpread {
  let n = 0;
  let sum = 0;
  values.forEach((value, i) => {
    n += weights[i] as number;
    sum += (weights[i] as number) * value;
  });
  if (n === 0) return prior;
  const mean = sum / n;
  let squares = 0;
  values.forEach((value, i) => {
    squares += (weights[i] as number) * (value - mean) ** 2;
  });
  const weight = prior.weight + n;
  const degrees = prior.degrees + n;
  const apart = ((prior.weight * n) / weight) * (mean - prior.mean) ** 2;
  return {
    mean: (prior.weight * prior.mean + sum) / weight,
    weight,
    spread: Math.sqrt((prior.degrees * prior.spread ** 2 + squares + apart) / degrees),
    degrees,
  };
}

/** Half the width of the 90 % interval of the next measurement, and of the mean. */
export function halfWidths(known: MeanAndSpread): { next: number; average: number } {
  const t = ninetyPercentT(known.degrees);
  return {
    next: t * known.spread * Math.sqrt(1 + 1 / known.weight),
    average: (t * known.spread) / Math.sqrt(known.weight),
  };
}

/**
 * What is known of a mean and a spread after measuring, where neither was known (normal-inverse-gamma).
 *
 * With prior mean m0 worth k0 measurements and spread s0 worth v0: kn = k0 + n, mn = (k0 m0 + sum) / kn,
 * vn = v0 + n, vn sn^2 = v0 s0^2 + sum (x - mean)^2 + (k0 n / kn) (mean - m0)^2. The next measurement is
 * mn +- t(vn) sn sqrt(1 + 1/kn); the mean mn +- t(vn) sn / sqrt(kn).
 *
 * @throws StillroomError OUT_OF_RANGE, MISSING
 *
 * Source: A First Course in Bayesian Statistical Methods, section 5.3 (wing lengths of midges).
 *
 * @example
 * ```ts
 * import { updateMeanAndSpread } from 'stillroom/record';
 *
 * const wings = updateMeanAndSpread({
 *   prior: { mean: 1.9, weight: 1, spread: 0.1, degrees: 1 },
 *   observed: [1.64, 1.7, 1.72, 1.74, 1.82, 1.82, 1.82, 1.9, 2.08],
 * });
 * wings.mean; // ≈ 1.814
 * wings.spread ** 2; // ≈ 0.015
 * ```
 */
export function updateMeanAndSpread(input: UpdateMeanAndSpreadInput): UpdatedMeanAndSpread {
  const { prior, observed } = readInput(spreadSchema, input);
  const known = updated(
    prior,
    observed,
    observed.map(() => 1),
  );
  const half = halfWidths(known);
  const around = (width: number) => ({ low: known.mean - width, likely: known.mean, high: known.mean + width });
  return answer({
    ...known,
    next: around(half.next),
    average: around(half.average),
    basis: [{ of: 'normal mean and spread', kind: 'equation', source: 'bayes-first-course', locator: 'section 5.3' }],
    cautions: [],
  });
}
