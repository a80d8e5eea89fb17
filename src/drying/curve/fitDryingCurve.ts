import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { choice, fields, list, number, optional, readInput } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Unit } from '../../quantity/units';
import type { Basis, Caution } from '../../sources/basis';
import { time } from '../../words/time';
import { measured } from '../basis';
import { caution } from '../cautions';
import { leastSquares } from './leastSquares';
import { type CurveConstants, MODEL_NAMES, MODELS, type ThinLayer, type ThinLayerModel } from './thinLayer';

const schema = /* @__PURE__ */ fields({
  /** The drying curve: 3 to 10,000 points, and at least one more than the model has constants. */
  points: list(
    'the drying curve, at least one point more than the model has constants',
    fields({
      /** Since drying began: 0 or more, each later than the last. */
      time: time({ min: { value: 0, unit: 's' } }),
      /** Water still to go, as a share of the water there was to go: 1 at the start. */
      moistureRatio: number('a moisture ratio from -0.2 to 1.5', { min: -0.2, max: 1.5 }),
    }),
    3,
    10_000,
  ),
  /** The model: `page` if not given. */
  model: optional(choice('a thin-layer model', MODEL_NAMES)),
});
export type FitDryingCurveInput = z.input<typeof schema>;

export interface DryingCurveFit {
  /** The model that was fitted. */
  readonly model: ThinLayerModel;
  /** The constants by name, per the unit of time of the first point. */
  readonly constants: CurveConstants;
  /** Their standard deviations; empty where the points do not determine them. */
  readonly deviations: CurveConstants;
  /** The unit of time that the constants are for. */
  readonly timeUnit: Unit<'time'>;
  /** Sum of the squared differences of moisture ratio. */
  readonly sse: number;
  /** Points less constants. */
  readonly degreesOfFreedom: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** A rough k: from the point nearest to a third, where the curve says it best. */
function roughConstant(x: readonly number[], y: readonly number[]): number {
  const [at = 1, ratio = 0.5] = x
    .map((t, i): [number, number] => [t, Math.min(Math.max(y[i] as number, 0.01), 0.99)])
    .filter(([t]) => t > 0)
    .reduce((best, next) => (Math.abs(next[1] - 1 / 3) < Math.abs(best[1] - 1 / 3) ? next : best));
  return -Math.log(ratio) / at;
}

/**
 * Internal: `dryingCurve` answers it. Fits a thin-layer drying model to your own curve of moisture ratios by least
 * squares.
 *
 * Levenberg-Marquardt on the moisture ratios, unweighted; the fitter meets the certified values of NIST's nonlinear
 * reference sets to nine digits and more.
 *
 * @returns `constants` by name, per the unit of the first point's time, with deviations and the sum of squares
 * @throws StillroomError OUT_OF_RANGE for fewer points than three, or than the model's constants and one;
 *   CONTRADICTION for times that repeat or go back
 */
export function fitDryingCurve(input: FitDryingCurveInput): DryingCurveFit {
  const { points, model: name = 'page' } = readInput(schema, input);
  const chosen: ThinLayer = MODELS[name];
  const per = (points[0] as (typeof points)[number]).time.unit;
  const x = points.map((point) => valueIn(point.time, per));
  x.forEach((at, i) => {
    if (i > 0 && at <= (x[i - 1] as number)) {
      fail('CONTRADICTION', `points[${i}].time`, input.points[i]?.time, 'a time after the point before');
    }
  });
  if (points.length <= chosen.constants.length) {
    const least = chosen.constants.length + 1;
    fail('OUT_OF_RANGE', 'points', input.points, `at least ${least} points for the ${name} model`);
  }
  const y = points.map((point) => point.moistureRatio);
  const fit = leastSquares({
    x,
    y,
    model: (parameters) => (at) => chosen.ratio(at, parameters),
    start: chosen.start(roughConstant(x, y)),
  });
  const named = (values: readonly number[]): CurveConstants =>
    Object.fromEntries(values.map((value, i) => [chosen.constants[i] as string, value]));
  return answer({
    model: name,
    constants: named(fit.parameters),
    deviations: named(fit.sd),
    timeUnit: per,
    sse: fit.sse,
    degreesOfFreedom: fit.degreesOfFreedom,
    basis: [
      chosen.basis('constants'),
      measured('constants', 'the points fitted'),
      {
        of: 'constants',
        kind: 'published',
        source: 'nist-strd',
        seen: 'reproduction',
        note: 'certified values that the fitter meets',
      },
    ],
    cautions: fit.converged ? [] : [caution('estimate')],
  });
}
