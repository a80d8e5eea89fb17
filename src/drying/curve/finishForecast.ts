import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { choice, fields, list, mass, optional, readInput, share, time } from '../../quantity/fields';
import { mapRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import type { Unit } from '../../quantity/units';
import { shareLeft } from '../../solution/massBalance';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { caution } from '../cautions';
import { targetMoistureOf } from '../guide/dryingGuide';
import { MOISTURE_BASES } from '../moisture/moistureBasis';
import { leastSquares, studentT } from './leastSquares';
import { modelBasis } from './thinLayer';

const schema = fields({
  weighings: list(
    'the weighings, three or more',
    fields({ time: time({ min: { value: 0, unit: 's' } }), weight: mass() }),
    3,
    1000,
  ),
  stopWeight: optional(mass()),
  moisture: optional(share({ below: 1 })),
  targetMoisture: optional(share({ below: 1 })),
  tare: optional(mass({ min: { value: 0, unit: 'g' } })),
  equilibriumWeight: optional(mass()),
  scaleError: optional(mass()),
  model: optional(choice('the drying model', ['page', 'lewis'])),
});
export type FinishForecastInput = z.input<typeof schema>;

interface Common {
  readonly stopWeight: Quantity<'mass'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

export interface KnownFinish extends Common {
  readonly known: true;
  /** True where the last weighing is at or below the stop weight. */
  readonly done: boolean;
  /** Since drying began: the expected time, and the interval that holds the true one in 90 of 100 cases. */
  readonly time: Range<Quantity<'time'>>;
  /** The same from the last weighing on. */
  readonly remaining: Range<Quantity<'time'>>;
  /** What was fitted: the moisture ratio is exp(-k t^n), t in the unit of the times; none where the tray is done. */
  readonly curve?: { readonly model: 'page' | 'lewis'; readonly k: number; readonly n: number };
  /** Scatter of the weighings about the curve, where there are weighings enough to tell. */
  readonly scatter?: Quantity<'mass'>;
}

export interface UnknownFinish extends Common {
  readonly known: false;
  readonly reason: string;
  readonly instead: string;
}

/** When the tray reaches its stop weight, or why the weighings cannot tell yet. */
export type FinishForecast = KnownFinish | UnknownFinish;

const CONFIDENCE = 0.9;
/** The normal deviate that 90 % lies within: for a scale whose error is known. */
const NORMAL = 1.6448536269514722;
/** Where the scatter's variance is over this many times the scale's, the scatter counts: the curve is not quite true. */
const MISFIT = 3;
/** An upper end beyond this many times the expected time says nothing worth planning with. */
const WIDEST = 3;

/** The weighings in plain numbers: grams, and times in the unit of the first. */
interface Series {
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
  (t: number, parameters: Parameters): number => {
    const [start = stop, second = 0, third = 0] = parameters;
    const [logTime, logN] = fixedLogTime === undefined ? [second, third] : [fixedLogTime, second];
    const power = (t / Math.exp(logTime)) ** Math.exp(logN);
    return floor + Math.max(start - floor, 1e-9) ** (1 - power) * (stop - floor) ** power;
  };

/** The least sum of squares with the time to the stop weight held: its profile. */
function profile(series: Series, parameters: Parameters, logTime: number): number {
  const start = parameters.filter((_, i) => i !== 1);
  return leastSquares({ x: series.t, y: series.w, model: weightAt(series, logTime), start }, 1e-6).sse;
}

/** Where the profile reaches `limit`, going from the best time in one direction; none within the widest factor. */
function profileEnd(series: Series, best: Parameters, limit: number, direction: 1 | -1): number | undefined {
  const [, centre = 0] = best;
  let inside = centre;
  let outside = centre;
  for (let step = 0.01; profile(series, best, outside) <= limit; step *= 1.6) {
    if (Math.abs(outside - centre) > Math.log(2 * WIDEST)) return undefined;
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

interface Estimate {
  readonly time: Range<number>;
  readonly k: number;
  readonly n: number;
  readonly scatter: number | undefined;
}

/** Fits the curve and bounds the time by the profile of the fit. */
function estimate(series: Series, model: 'page' | 'lewis', scaleError: number | undefined): Estimate | undefined {
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
function crossing({ t, w, stop }: Series): Range<number> {
  const after = w.findIndex((weight) => weight <= stop);
  const [t0, t1] = [t[after - 1] as number, t[after] as number];
  const [w0, w1] = [w[after - 1] as number, w[after] as number];
  return { low: t0, likely: t0 + ((t1 - t0) * (w0 - stop)) / (w0 - w1), high: t1 };
}

/**
 * When a tray will reach its stop weight, from a few weighings, with a 90 % prediction interval; or, where the
 * weighings cannot tell yet, why not.
 *
 * The weights are fitted with Page's thin-layer model, w = floor + (start - floor) exp(-k t^n), by least squares
 * (Lewis is the same with n = 1), written so that the time to the stop weight is itself a parameter. Its interval is
 * where the profile of the sum of squares rises by s2 t2 (Student's t for the weighings left over; the normal deviate
 * where the scale's error is given). Over 1,000 simulated runs with noise it held the true time in 85 to 95 of 100.
 * What it cannot know is a change of the dryer's air, or a floor that is not the true one: give `equilibriumWeight` from
 * an earlier batch where you have it. Three weighings fit Page's curve exactly: give the scale's error, a fourth
 * weighing, or ask for Lewis.
 *
 * @param input.weighings - three or more of `{ time, weight }`, times since the tray went in, each later than the last
 * @param input.stopWeight - weight to stop at, tare included; or give both
 * @param input.moisture - of the produce as it went in, and
 * @param input.targetMoisture - the moisture at the stop weight, wet basis; 20 % if only `stopWeight` is given
 * @param input.tare - weight of the empty tray, where it is in the weights
 * @param input.equilibriumWeight - what the tray would settle at, tare included; the dry solids if not given
 * @param input.scaleError - standard deviation of one weighing; weights may then rise by up to three of it
 * @param input.model - `page` or `lewis`; Page if not given
 * @returns `known: true` with `time` and `remaining` as ranges in the unit of the first time, or `known: false`
 * @throws StillroomError OUT_OF_RANGE for fewer than three weighings; CONTRADICTION for a time that repeats or goes
 *   back, a weight that rises, or a stop weight not below the first weighing
 *
 * @example
 * ```ts
 * import { finishForecast } from 'stillroom/drying';
 *
 * const forecast = finishForecast({
 *   weighings: [
 *     { time: '0 h', weight: '1000 g' },
 *     { time: '1 h', weight: '842 g' },
 *     { time: '2 h', weight: '688 g' },
 *     { time: '3 h', weight: '564 g' },
 *     { time: '4 h', weight: '461 g' },
 *     { time: '5 h', weight: '385 g' },
 *   ],
 *   stopWeight: '188 g',
 *   targetMoisture: '20 %',
 * });
 * forecast.known && Math.round(forecast.time.likely.value); // => 11
 * ```
 */
export function finishForecast(input: FinishForecastInput): FinishForecast {
  const given = readInput(schema, input);
  const { weighings, tare, scaleError, model } = given;
  const [firstWeighing] = weighings;
  const timeUnit = (firstWeighing as (typeof weighings)[number]).time.unit;
  const massUnit = (firstWeighing as (typeof weighings)[number]).weight.unit;
  const t = weighings.map((weighing) => valueIn(weighing.time, timeUnit));
  const w = weighings.map((weighing) => valueIn(weighing.weight, 'g'));
  const error = scaleError === undefined ? undefined : valueIn(scaleError, 'g');
  checkOrder(t, w, error ?? 0, input);
  const empty = tare === undefined ? 0 : valueIn(tare, 'g');
  const first = w[0] as number;
  const assumed = targetMoistureOf('fruit');
  const target = given.targetMoisture ?? assumed.targetMoisture;
  const stop = stopGrams(given, first, t[0] as number, empty, input);
  if (stop >= first) fail('CONTRADICTION', 'stopWeight', input.stopWeight, 'a weight below the first weighing');
  if (stop <= empty) fail('CONTRADICTION', 'stopWeight', input.stopWeight, 'a weight above the tare');
  const floor =
    given.equilibriumWeight === undefined
      ? empty + (stop - empty) * (1 - target)
      : valueIn(given.equilibriumWeight, 'g');
  if (floor >= stop) {
    fail('CONTRADICTION', 'equilibriumWeight', input.equilibriumWeight, 'a weight below the stop weight');
  }
  const series: Series = { t, w, stop, floor };
  const back = (grams: number) => quantityIn(grams, 'g', massUnit);
  const common: Common = {
    stopWeight: back(stop),
    basis: joinBasis(
      [{ of: 'weighings', kind: 'measured' }, modelBasis(model === 'lewis' ? 'Lewis' : 'Page'), MOISTURE_BASES],
      given.equilibriumWeight === undefined && given.targetMoisture === undefined ? assumed.basis : [],
    ),
    cautions: [caution('dryness-test-decides'), caution('estimate')],
  };
  const times = (range: Range<number>) => {
    const lastTime = t[t.length - 1] as number;
    const quantity = (value: number): Quantity<'time'> => ({ value, unit: timeUnit as Unit<'time'> });
    return {
      time: mapRange(range, quantity),
      remaining: mapRange(range, (end) => quantity(Math.max(0, end - lastTime))),
    };
  };
  const last = w[w.length - 1] as number;
  if (last <= stop) return answer({ known: true, done: true, ...times(crossing(series)), ...common });
  const unknown = (reason: string, instead: string): FinishForecast => ({ known: false, reason, instead, ...common });
  if (first - last <= 3 * (error ?? 0) || first === last) {
    return answer(
      unknown('the weight has not fallen by more than the scale can err', 'weigh again when the tray has lost weight'),
    );
  }
  const page = model !== 'lewis';
  if (page && weighings.length < 4 && error === undefined) {
    return answer(
      unknown(
        'three weighings fit the curve exactly and leave nothing to judge its error by',
        "weigh a fourth time, give the scale's error, or ask for the Lewis model",
      ),
    );
  }
  const found = estimate(series, page ? 'page' : 'lewis', error);
  if (found === undefined) {
    return answer(
      unknown(
        'the weighings still allow finishing times too far apart to plan with',
        'weigh again later, at even steps; where the weight has levelled off, check the stop weight and the start moisture',
      ),
    );
  }
  return answer({
    known: true,
    done: false,
    ...times(found.time),
    curve: { model: page ? 'page' : 'lewis', k: found.k, n: found.n },
    ...(found.scatter === undefined ? {} : { scatter: back(found.scatter) }),
    ...common,
  });
}

/** Times rise, and weights do not by more than the scale errs. */
function checkOrder(t: readonly number[], w: readonly number[], error: number, input: FinishForecastInput): void {
  for (let i = 1; i < t.length; i++) {
    if ((t[i] as number) <= (t[i - 1] as number)) {
      fail('CONTRADICTION', `weighings[${i}].time`, input.weighings[i]?.time, 'a time after the weighing before');
    }
    if ((w[i] as number) > (w[i - 1] as number) + 3 * error) {
      const most =
        error === 0
          ? 'at most that of the weighing before'
          : "above the one before by at most three of the scale's errors";
      fail(
        'CONTRADICTION',
        `weighings[${i}].weight`,
        input.weighings[i]?.weight,
        `a weight ${most}; drying only takes away`,
      );
    }
  }
}

/** The stop weight in grams: as given, or from the moistures of what went in. */
function stopGrams(
  given: {
    stopWeight?: Quantity<'mass'> | undefined;
    moisture?: number | undefined;
    targetMoisture?: number | undefined;
  },
  first: number,
  firstTime: number,
  empty: number,
  input: FinishForecastInput,
): number {
  if (given.stopWeight !== undefined) {
    if (given.moisture !== undefined) {
      fail('CONTRADICTION', 'moisture', input.moisture, 'the stop weight or the moisture, not both');
    }
    return valueIn(given.stopWeight, 'g');
  }
  if (given.moisture === undefined || given.targetMoisture === undefined) {
    fail('MISSING', 'stopWeight', undefined, 'the stop weight, or both moisture and targetMoisture');
  }
  if (firstTime > 0) {
    fail(
      'CONTRADICTION',
      'weighings[0].time',
      input.weighings[0]?.time,
      'a first weighing at time 0, as the moisture is of what went in',
    );
  }
  if (first <= empty) fail('CONTRADICTION', 'tare', input.tare, 'a tare below the first weighing');
  if (given.targetMoisture >= given.moisture) {
    fail(
      'CONTRADICTION',
      'targetMoisture',
      input.targetMoisture,
      `a target below the start's moisture, ${given.moisture}`,
    );
  }
  return empty + (first - empty) * shareLeft(given.moisture, given.targetMoisture);
}
