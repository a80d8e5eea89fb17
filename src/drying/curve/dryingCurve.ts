import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { choice, fields, number, optional, readInput } from '../../quantity/fields';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { length } from '../../words/length';
import { time } from '../../words/time';
import { type DryingStudy, type DryingStudyInput, dryingStudy } from './dryingStudy';
import { type DryingCurveFit, type FitDryingCurveInput, fitDryingCurve } from './fitDryingCurve';
import { modelBasis } from './tables';
import { MODEL_NAMES, MODELS, slabRatio, type ThinLayer, type ThinLayerModel, timeAtRatio } from './thinLayer';

const constant = (what: string) =>
  optional(number(`${what}: a number from -1,000 to 1,000`, { min: -1000, max: 1000 }));

const schema = /* @__PURE__ */ fields({
  /** `lewis`, `page`, `henderson-pabis`, `logarithmic`, `midilli`, `wang-singh`; or `slab`, diffusion alone. */
  model: choice('a drying model', [...MODEL_NAMES, 'slab']),
  /** The constants of a thin-layer model. */
  constants: optional(
    fields({
      /** The drying constant, per unit of time (to the power n). */
      k: constant('k'),
      /** The exponent of the time. */
      n: constant('n'),
      /** The factor of the exponential, or of the time. */
      a: constant('a'),
      /** The factor of the time, or of its square. */
      b: constant('b'),
      /** What is left in the end. */
      c: constant('c'),
    }),
  ),
  /** The unit of time that the constants are for: `s`, `min`, `h`, `day`. */
  timeUnit: optional(choice('the unit of time of the constants', ['s', 'min', 'h', 'day'])),
  /** Of the slab: up to 1 m. */
  thickness: optional(length({ max: { value: 1, unit: 'm' } })),
  /** How many faces of the slab dry: 2 (if not given) or 1. */
  faces: optional(number('how many faces of the slab dry: 1 or 2', { min: 1, max: 2, integer: true })),
  /** Effective moisture diffusivity of the slab in m2/s, above 0 to 0.001: ask with a `food`. */
  diffusivity: optional(number('a diffusivity in m2/s, above 0 and at most 0.001', { above: 0, max: 1e-3 })),
  /** Since drying began: 0 or more; or give `moistureRatio`. */
  time: optional(time({ min: { value: 0, unit: 's' } })),
  /** The moisture ratio to reach, above 0 to 1; for `lewis` and `page`. */
  moistureRatio: optional(number('a moisture ratio above 0 and at most 1', { above: 0, max: 1 })),
});
export type DryingCurveInput = z.input<typeof schema>;

export interface DryingCurve {
  /** Water still to go, as a share of the water there was to go: (X - Xe) / (X0 - Xe), dry basis. */
  readonly moistureRatio: number;
  /** Since drying began: as given, or in the unit that the constants are for. */
  readonly time: Quantity<'time'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

type Given = z.output<typeof schema>;

/** The model's constants in its order. */
function constantsOf(model: ThinLayerModel, { constants = {} }: Given): number[] {
  const known = new Map<string, number | undefined>(Object.entries(constants));
  return MODELS[model].constants.map(
    (key) =>
      known.get(key) ?? fail('MISSING', `constants.${key}`, undefined, `the constant ${key} of the ${model} model`),
  );
}

/** The fields that a model has no use for must not be there: a figure that is passed over misleads. */
function refuseOthers(
  given: Given,
  input: DryingCurveInput,
  unused: readonly (keyof Given & keyof DryingCurveInput)[],
) {
  const other = unused.find((key) => given[key] !== undefined);
  if (other !== undefined) fail('CONTRADICTION', other, input[other], `no ${other} with the model ${given.model}`);
}

function slab(given: Given, input: DryingCurveInput): DryingCurve {
  refuseOthers(given, input, ['constants', 'timeUnit', 'moistureRatio']);
  const { thickness, faces = 2, diffusivity, time: since } = given;
  if (thickness === undefined) fail('MISSING', 'thickness', undefined, 'the thickness of the slab');
  if (diffusivity === undefined) fail('MISSING', 'diffusivity', undefined, 'the diffusivity of the slab');
  if (since === undefined) fail('MISSING', 'time', undefined, 'the time since drying began');
  const depth = valueIn(thickness, 'm') / faces;
  return {
    moistureRatio: slabRatio((diffusivity * valueIn(since, 's')) / depth ** 2),
    time: since,
    basis: [modelBasis('slab', 'moistureRatio')],
    cautions: [],
  };
}

function thinLayer(model: ThinLayerModel, given: Given, input: DryingCurveInput): DryingCurve {
  refuseOthers(given, input, ['thickness', 'faces', 'diffusivity']);
  const { timeUnit: per, time: since, moistureRatio } = given;
  if (per === undefined) fail('MISSING', 'timeUnit', undefined, 'the unit of time that the constants are for');
  if ((since === undefined) === (moistureRatio === undefined)) {
    fail(
      since === undefined ? 'MISSING' : 'CONTRADICTION',
      'time',
      input.time,
      'either the time or the moisture ratio',
    );
  }
  const chosen: ThinLayer = MODELS[model];
  const constants = constantsOf(model, given);
  if (moistureRatio === undefined) {
    const at = since as Quantity<'time'>;
    const ratio = chosen.ratio(valueIn(at, per), constants);
    if (!Number.isFinite(ratio)) fail('OUT_OF_RANGE', 'time', input.time, 'a time at which the model stays finite');
    return { moistureRatio: ratio, time: at, basis: [chosen.basis('moistureRatio')], cautions: [] };
  }
  if (model !== 'lewis' && model !== 'page') {
    fail(
      'CONTRADICTION',
      'moistureRatio',
      moistureRatio,
      `a time for the model ${model}; only lewis and page take this`,
    );
  }
  const [k = 0, n = 1] = constants;
  if (k <= 0) fail('OUT_OF_RANGE', 'constants.k', k, 'k above 0');
  if (n < 0.01 || n > 20) fail('OUT_OF_RANGE', 'constants.n', n, 'n from 0.01 to 20');
  const value = timeAtRatio(moistureRatio, k, n);
  if (!Number.isFinite(value)) fail('OUT_OF_RANGE', 'constants.k', k, 'constants that give a finite time');
  return { moistureRatio, time: quantityIn(value, per, per), basis: [chosen.basis('time')], cautions: [] };
}

/**
 * How dry thin pieces are after a time, or how long they take to get that dry, by a drying model with known
 * constants; or the same for a slab that dries by diffusion alone (Fick's second law). With `points` of your own it fits
 * the constants; with a `food` it looks up what published studies found: the effective moisture diffusivity and the best
 * model.
 *
 * lewis: exp(-k t); page: exp(-k t^n); henderson-pabis: a exp(-k t); logarithmic: a exp(-k t) + c; midilli:
 * a exp(-k t^n) + b t; wang-singh: 1 + a t + b t^2. Turned round, page: t = (-ln MR / k)^(1/n). slab: MR = (8 / pi2) sum
 * over i of exp(-(2i+1)2 pi2 Fo / 4) / (2i+1)2, Fo = D t / L2; L is half the thickness where both faces dry and all of
 * it where one does. Sources: Crank, The Mathematics of Diffusion, and a study of sour cherry.
 *
 * Studies differ in cut, air and method: take a diffusivity as an order of magnitude. With a `temperature` inside the
 * study's own, and its activation energy, D = D1 exp(-Ea/R (1/T - 1/T1)) from the low end. A fruit or vegetable without a
 * study gets the range of foods in general, and `isGeneral` says so. Sources: the studies, each named in `basis`.
 *
 * Fitted by Levenberg-Marquardt on the moisture ratios, unweighted; the fitter meets the certified values of NIST's
 * nonlinear reference sets to nine digits and more.
 *
 * @returns `moistureRatio`, 1 at the start and toward 0 when dry, and `time`; for `points` the `constants` by name, per
 *   the unit of the first point's time, with deviations and the sum of squares; for a `food` `diffusivityRange` and
 *   `diffusivity` in m2/s and `bestModel`, as far as the study prints them, or `known: false`
 * @throws StillroomError UNKNOWN_NAME; MISSING for a constant of the model; CONTRADICTION for fields of another,
 *   and for times that repeat or go back; OUT_OF_RANGE, also for fewer points than the model's constants and one,
 *   and for a temperature outside the study's
 *
 * @example
 * ```ts
 * import { dryingCurve } from 'stillroom/drying';
 *
 * const cherry = { model: 'page', constants: { k: 0.0504, n: 0.761 }, timeUnit: 'min' } as const;
 * dryingCurve({ ...cherry, time: '20 min' }).moistureRatio; // ≈ 0.61102
 * dryingCurve({ ...cherry, moistureRatio: 0.1 }).time.value; // ≈ 151.7
 * dryingCurve({ model: 'slab', thickness: '2 mm', diffusivity: 2e-10, time: '1000 s' }).moistureRatio; // ≈ 0.4959
 * const points = [1, 0.86249, 0.60567, 0.28917, 0.06472].map((moistureRatio, i) => ({
 *   time: { value: [0, 0.8, 2.2, 4.2, 7][i] ?? 0, unit: 'h' as const },
 *   moistureRatio,
 * }));
 * dryingCurve({ points }).constants.n; // ≈ 1.38
 * const mango = dryingCurve({ food: 'mango', temperature: '80 degC' });
 * mango.known && (mango.diffusivity ?? 0) / 4.97e-10; // ≈ 2.174
 * ```
 */
export function dryingCurve(input: FitDryingCurveInput): DryingCurveFit;
export function dryingCurve(input: DryingStudyInput): DryingStudy;
export function dryingCurve(input: DryingCurveInput): DryingCurve;
export function dryingCurve(
  input: DryingCurveInput | DryingStudyInput | FitDryingCurveInput,
): DryingCurve | DryingStudy | DryingCurveFit {
  const given = input as (Partial<FitDryingCurveInput> & Partial<DryingStudyInput>) | null | undefined;
  if (given?.points !== undefined) return fitDryingCurve(input as FitDryingCurveInput);
  return given?.food === undefined ? onCurve(input as DryingCurveInput) : dryingStudy(input as DryingStudyInput);
}

function onCurve(input: DryingCurveInput): DryingCurve {
  const given = readInput(schema, input);
  return answer(given.model === 'slab' ? slab(given, input) : thinLayer(given.model, given, input));
}
