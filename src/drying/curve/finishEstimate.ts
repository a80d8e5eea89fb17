/** How the time to the stop weight is estimated from weighings: a fit of the curve, bounded by the profile of the fit. */
import { mapRange } from '../../quantity/range';
import type { Range } from '../../quantity/types';
import { leastSquares, studentT } from './leastSquares';

const CONFIDENCE = 0.9;
/** The normal deviate that 90 % lies within: for a scale whose error is known. */
const NORMAL = 1.6448536269514722;
/** Where the scatter's variance is over this many times the scale's, the scatter counts: the curve is not quite true. */
const MISFIT = 3;
/** An upper end beyond this many times the expected time is no help in planning. */
const WIDEST = 3;

/** The weighings in plain numbers: grams, and times in the unit of the first. */
export interface Series {
  readonly t: readonly number[];
  readonly w: readonly number[];
  readonly stop: number;
  /** The weight that the tray would settle at in the end. */
  readonly floor: number;
}

/** Parameters: start weight, ln of the time to the stop weight, and for Page ln n. */
type Parameters = readonly number[];

/** The weight at t: floor + (start - floor) (r)^((t / T)^n), with r such that it is the stop weight at T. */
const weightAt =
  ({ stop, floor }: Series, fixedLogTime?: number) =>
  (parameters: Parameters): ((t: number) => number) => {
    const [start = stop, second = 0, third = 0] = parameters;
    const [logTime, logN] = fixedLogTime === undefined ? [second, third] : [fixedLogTime, second];
    const [time, n] = [Math.exp(logTime), Math.exp(logN)];
    const above = Math.max(start - floor, 1e-9);
    const logR = Math.log((stop - floor) / above);
    return (t) => floor + above * Math.exp(logR * (t / time) ** n);
  };

/** The least sum of squares with the time to the stop weight held: its profile. */
function profile(series: Series, parameters: Parameters, logTime: number): number {
  const start = parameters.filter((_, i) => i !== 1);
  return leastSquares({ x: series.t, y: series.w, model: weightAt(series, logTime), start }, 1e-6).sse;
}

/** Where the profile reaches `limit`, going from the best time in one direction; none within the widest factor. */
function profileEnd(series: Series, best: Parameters, limit: number, direction: 1 | -1): number | undefined {
  const [, center = 0] = best;
  let inside = center;
  let outside = center;
  for (let step = 0.01; profile(series, best, outside) <= limit; step *= 1.6) {
    if (Math.abs(outside - center) > Math.log(2 * WIDEST)) return undefined;
    inside = outside;
    outside += direction * step;
  }
  for (let halving = 0; halving < 14; halving++) {
    const middle = (inside + outside) / 2;
    if (profile(series, best, middle) > limit) outside = middle;
    else inside = middle;
  }
  return Math.exp((inside + outside) / 2);
}

export interface Estimate {
  readonly time: Range<number>;
  readonly k: number;
  readonly n: number;
  readonly scatter: number | undefined;
}

/** Fits the curve and bounds the time by the profile of the fit. */
export function estimate(
  series: Series,
  model: 'page' | 'lewis',
  scaleError: number | undefined,
): Estimate | undefined {
  const { t, w, stop, floor } = series;
  const [first, last] = [w[0] as number, w[w.length - 1] as number];
  const lastTime = t[t.length - 1] as number;
  const guess = (lastTime * Math.log((first - floor) / (stop - floor))) / Math.log((first - floor) / (last - floor));
  const start = [first, Math.log(Math.min(guess, lastTime * 100)), ...(model === 'page' ? [0] : [])];
  const fit = leastSquares({ x: t, y: w, model: weightAt(series), start });
  const [fittedStart = first, logTime = 0, logN = 0] = fit.parameters;
  const freedom = fit.degreesOfFreedom;
  const scatterVariance = freedom > 0 ? fit.sse / freedom : undefined;
  const scaleVariance = scaleError === undefined ? undefined : scaleError ** 2;
  const trustScale =
    scaleVariance !== undefined && (scatterVariance === undefined || scatterVariance <= MISFIT * scaleVariance);
  const variance = trustScale ? scaleVariance : scatterVariance;
  if (variance === undefined) return undefined;
  const deviate = trustScale ? NORMAL : studentT(CONFIDENCE, freedom);
  // weighings of whole grams can lie on the curve exactly; they still carry the rounding of doubles
  const limit = fit.sse + deviate ** 2 * Math.max(variance, (1e-9 * first) ** 2);
  const high = profileEnd(series, fit.parameters, limit, 1);
  const low = profileEnd(series, fit.parameters, limit, -1) ?? 0;
  const likely = Math.exp(logTime);
  const n = Math.exp(logN);
  const depth = Math.log((fittedStart - floor) / (stop - floor));
  if (high === undefined || !(depth > 0)) return undefined;
  const time = { low, likely, high };
  if (time.high > WIDEST * likely) return undefined;
  // the tray was not done at the last weighing
  const notBefore = (end: number) => Math.max(end, lastTime);
  return {
    time: mapRange(time, notBefore),
    k: depth / likely ** n,
    n,
    scatter: scatterVariance === undefined ? undefined : Math.sqrt(scatterVariance),
  };
}

/** Where the weighings stepped over the stop weight. */
export function crossing({ t, w, stop }: Series): Range<number> {
  const after = w.findIndex((weight) => weight <= stop);
  const [t0, t1] = [t[after - 1] as number, t[after] as number];
  const [w0, w1] = [w[after - 1] as number, w[after] as number];
  return { low: t0, likely: t0 + ((t1 - t0) * (w0 - stop)) / (w0 - w1), high: t1 };
}
