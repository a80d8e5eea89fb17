import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { choice, fields, list, optional, readInput } from '../../quantity/fields';
import { mapRange } from '../../quantity/range';
import { quantityIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { balanceBasis } from '../../solution/massBalance';
import type { Basis, Caution } from '../../sources/basis';
import { type NotKnown, notKnown } from '../../sources/no';
import { mass } from '../../words/mass';
import { moisture as moistureWord, targetMoisture as targetMoistureWord } from '../../words/shares';
import { time } from '../../words/time';
import { measured } from '../basis';
import { caution } from '../cautions';
import { usualMoisture } from '../moisture/targetMoisture';
import { crossing, estimate } from './finishEstimate';
import { modelBasis } from './tables';
import { type ReadWeighings, readWeighings } from './weighings';

const schema = /* @__PURE__ */ fields({
  /** 3 to 10,000 weighings of the same tray. */
  weighings: list(
    'the weighings, three or more',
    fields({
      /** Since the tray went in: 0 or more, each later than the last. */
      time: time({ min: { value: 0, unit: 's' } }),
      /** What the scale shows: a mass above zero. */
      mass: mass(),
    }),
    3,
    10_000,
  ),
  /** The mass to stop at, tare included: see `stopWeight`; or give both moistures. */
  stopWeight: optional(mass()),
  /** Of the food as it went in, wet basis: 0 to below 1, or percent. */
  moisture: optional(moistureWord({ below: 1 })),
  /** At the stop weight, wet basis: 0 to below 1 or percent; 20 % if you give only `stopWeight`. */
  targetMoisture: optional(targetMoistureWord({ below: 1 })),
  /** Mass of the empty tray, where it is in the masses; 0 or more. */
  tare: optional(mass({ min: { value: 0, unit: 'g' } })),
  /** What the tray would settle at, tare included; the dry solids if not given. */
  equilibriumWeight: optional(mass()),
  /** Standard deviation of one weighing; masses may then rise by up to three of it. */
  scaleError: optional(mass()),
  /** `page` (if not given) or `lewis`. */
  model: optional(choice('the drying model', ['page', 'lewis'])),
});
export type FinishForecastInput = z.input<typeof schema>;

interface Common {
  /** The mass to stop at, tare included. */
  readonly stopWeight: Quantity<'mass'>;
  /** What the tray would settle at, tare included: as given, or the dry solids. */
  readonly equilibriumWeight: Quantity<'mass'>;
}

/** When a tray reaches its stop weight. */
export interface KnownFinish extends Common {
  /** The weighings can tell. */
  readonly known: true;
  /** True where the last weighing is at or below the stop weight. */
  readonly finished: boolean;
  /** Since drying began: the expected time, and the interval that holds the true one in 90 of 100 cases. */
  readonly time: Range<Quantity<'time'>>;
  /** The same from the last weighing on. */
  readonly remaining: Range<Quantity<'time'>>;
  /** What was fitted: the moisture ratio is exp(-k t^n), t in the unit of the times; none where the tray is done. */
  readonly curve?: {
    /** The model that was fitted. */
    readonly model: 'page' | 'lewis';
    /** The drying constant, per unit of time to the power n. */
    readonly k: number;
    /** The exponent; 1 for Lewis. */
    readonly n: number;
  };
  /** Scatter of the weighings about the curve, where there are enough of them. */
  readonly scatter?: Quantity<'mass'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** Why the weighings cannot tell yet. */
export interface UnknownFinish extends Common, NotKnown {}

/** When the tray reaches its stop weight, or why the weighings cannot tell yet. */
export type FinishForecast = KnownFinish | UnknownFinish;

/** The noes of a forecast. */
const NOT_YET = {
  flat: {
    code: 'no-loss-yet',
    text: 'the mass has not fallen by more than the scale can err',
    instead: 'weigh again when the tray has lost mass',
  },
  exact: {
    code: 'too-few-weighings',
    text: 'three weighings fit the curve exactly and leave nothing to judge its error by',
    instead: "weigh a fourth time, give the scale's error, or ask for the Lewis model",
  },
  wide: {
    code: 'too-wide',
    text: 'the weighings still allow finishing times too far apart to plan with',
    instead:
      'weigh again later, at even steps; where the mass has leveled off, check the stop weight and the start moisture',
  },
} as const;

/** Why nothing can be fitted; nothing where it can. */
function tooEarly({ series: { w }, error }: ReadWeighings, page: boolean): keyof typeof NOT_YET | undefined {
  const [first, last] = [w[0] as number, w[w.length - 1] as number];
  if (first - last <= 3 * (error ?? 0) || first === last) return 'flat';
  return page && w.length < 4 && error === undefined ? 'exact' : undefined;
}

/**
 * When a tray will reach its stop weight, from a few weighings, with a 90 % prediction interval; or, where the
 * weighings cannot tell yet, why not.
 *
 * The masses are fitted with Page's thin-layer model, w = floor + (start - floor) exp(-k t^n), by least squares
 * (Lewis is the same with n = 1), written so that the time to the stop weight is itself a parameter. Its interval is
 * where the profile of the sum of squares rises by s2 t2 (Student's t for the weighings left over; the normal deviate
 * where the scale's error is given). Over 1,000 simulated runs with noise it held the true time in 85 to 95 of 100.
 * What it cannot know is a change in the dryer's air, or a floor that is not the true one: give `equilibriumWeight` from
 * an earlier batch where you have it. Three weighings fit Page's curve exactly: give the scale's error, a fourth
 * weighing, or ask for Lewis. Source: Crank, The Mathematics of Diffusion (the model, recalled).
 *
 * @returns `known: true` with `time` and `remaining` as ranges in the unit of the first time, or `known: false`
 * @throws StillroomError OUT_OF_RANGE for fewer than three weighings; CONTRADICTION for a time that repeats or goes
 *   back, a mass that rises, or a stop weight not below the first weighing
 *
 * @example
 * ```ts
 * import { finishForecast } from 'stillroom/drying';
 *
 * const forecast = finishForecast({
 *   weighings: [
 *     { time: '0 h', mass: '1000 g' },
 *     { time: '1 h', mass: '842 g' },
 *     { time: '2 h', mass: '688 g' },
 *     { time: '3 h', mass: '564 g' },
 *     { time: '4 h', mass: '461 g' },
 *     { time: '5 h', mass: '385 g' },
 *   ],
 *   stopWeight: '188 g',
 *   targetMoisture: '20 %',
 * });
 * forecast.known && Math.round(forecast.time.likely.value); // => 11
 * ```
 */
export function finishForecast(input: FinishForecastInput): FinishForecast {
  const given = readInput(schema, input);
  const model = given.model ?? 'page';
  const usual = usualMoisture('fruit', 'equilibriumWeight');
  const read = readWeighings(given, usual.moisture, input);
  const { series, timeUnit, massUnit } = read;
  const grams = (value: number) => quantityIn(value, 'g', massUnit);
  const common = { stopWeight: grams(series.stop), equilibriumWeight: grams(series.floor) };
  const settled = given.equilibriumWeight === undefined && given.targetMoisture === undefined ? usual.basis : [];
  const cautions = [caution('dryness-test-decides'), caution('estimate')];
  const no = (why: keyof typeof NOT_YET): FinishForecast => ({
    ...notKnown({ ...NOT_YET[why], basis: [measured('reason', 'the weighings'), ...settled], cautions }),
    ...common,
  });
  const lastTime = series.t[series.t.length - 1] as number;
  const times = (range: Range<number>) => {
    const quantity = (value: number): Quantity<'time'> => ({ value, unit: timeUnit });
    return {
      time: mapRange(range, quantity),
      remaining: mapRange(range, (end) => quantity(Math.max(0, end - lastTime))),
    };
  };
  const basis = [
    measured('time', 'the weighings'),
    modelBasis(model, 'time'),
    balanceBasis('equilibriumWeight'),
    ...settled,
  ];
  if ((series.w[series.w.length - 1] as number) <= series.stop) {
    return answer({ known: true, finished: true, ...times(crossing(series)), ...common, basis, cautions });
  }
  const early = tooEarly(read, model === 'page');
  if (early !== undefined) return answer(no(early));
  const found = estimate(series, model, read.error);
  if (found === undefined) return answer(no('wide'));
  return answer({
    known: true,
    finished: false,
    ...times(found.time),
    curve: { model, k: found.k, n: found.n },
    ...(found.scatter === undefined ? {} : { scatter: grams(found.scatter) }),
    ...common,
    basis,
    cautions,
  });
}
