import type * as z from 'zod/mini';
import diffusivityTable from '../../../data/drying/diffusivity.json';
import modelTable from '../../../data/drying/kinetics-models.json';
import { answer } from '../../common/answer';
import { lookUp, type Named } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import {
  choice,
  fields,
  length,
  list,
  name,
  number,
  optional,
  readInput,
  temperature,
  time,
} from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Unit } from '../../quantity/units';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { caution } from '../cautions';
import { leastSquares } from './leastSquares';

interface ModelRow extends Sourced {
  readonly model: string;
  readonly formula: string;
}
const modelRows = asTable<ModelRow>(modelTable).rows;
/** The basis line of a model, by the start of its name in the table. */
export const modelBasis = (start: string): Basis => {
  const row = modelRows.find(({ model }) => model.startsWith(start)) as ModelRow;
  return basisOf(row, row.formula);
};

/** A thin-layer model: its constants in order, its curve, a start for fitting, and where it is from. */
interface ThinLayer {
  readonly constants: readonly string[];
  readonly ratio: (t: number, constants: readonly number[]) => number;
  readonly start: (k: number) => readonly number[];
  readonly basis: Basis;
}

/** Printed with its constants in the sour-cherry study, which is the source of the forms that have no row of their own. */
const studied = (what: string): Basis => ({
  of: what,
  kind: 'published',
  source: 'sourcherry2023',
  locator: 'Table 1',
  seen: 'original',
});

const MODELS = {
  lewis: {
    constants: ['k'],
    ratio: (t, [k = 0]) => Math.exp(-k * t),
    start: (k) => [k],
    basis: modelBasis('Lewis'),
  },
  page: {
    constants: ['k', 'n'],
    ratio: (t, [k = 0, n = 1]) => Math.exp(-k * t ** n),
    start: (k) => [k, 1],
    basis: modelBasis('Page'),
  },
  'henderson-pabis': {
    constants: ['a', 'k'],
    ratio: (t, [a = 1, k = 0]) => a * Math.exp(-k * t),
    start: (k) => [1, k],
    basis: modelBasis('Henderson'),
  },
  logarithmic: {
    constants: ['a', 'k', 'c'],
    ratio: (t, [a = 1, k = 0, c = 0]) => a * Math.exp(-k * t) + c,
    start: (k) => [1, k, 0],
    basis: modelBasis('Logarithmic'),
  },
  midilli: {
    constants: ['a', 'k', 'n', 'b'],
    ratio: (t, [a = 1, k = 0, n = 1, b = 0]) => a * Math.exp(-k * t ** n) + b * t,
    start: (k) => [1, k, 1, 0],
    basis: studied('MR = a exp(-k t^n) + b t'),
  },
  'wang-singh': {
    constants: ['a', 'b'],
    ratio: (t, [a = 0, b = 0]) => 1 + a * t + b * t * t,
    start: (k) => [-k, 0],
    basis: studied('MR = 1 + a t + b t^2'),
  },
} as const satisfies Record<string, ThinLayer>;

/** A thin-layer drying model. */
export type ThinLayerModel = keyof typeof MODELS;
const MODEL_NAMES = Object.keys(MODELS) as ThinLayerModel[];
const model = () => choice('a thin-layer model', MODEL_NAMES);
const constant = (what: string) =>
  optional(number(`${what}: a number from -1,000 to 1,000`, { min: -1000, max: 1000 }));

const ratioSchema = fields({
  model: model(),
  time: time({ min: { value: 0, unit: 's' } }),
  k: constant('k'),
  n: constant('n'),
  a: constant('a'),
  b: constant('b'),
  c: constant('c'),
});
export type MoistureRatioInput = z.input<typeof ratioSchema>;

export interface MoistureRatio {
  /** Water still to go, as a share of the water there was to go: (X - Xe) / (X0 - Xe), dry basis. */
  readonly moistureRatio: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** The model's constants from the fields of an argument, in the model's order. */
function constantsOf(chosen: ThinLayerModel, given: Readonly<Record<string, unknown>>): number[] {
  return MODELS[chosen].constants.map((key) => {
    const value = given[key];
    if (typeof value !== 'number') fail('MISSING', key, undefined, `the constant ${key} of the ${chosen} model`);
    return value;
  });
}

/**
 * The moisture ratio after a time by a thin-layer drying model with known constants.
 *
 * lewis: exp(-k t); page: exp(-k t^n); henderson-pabis: a exp(-k t); logarithmic: a exp(-k t) + c; midilli:
 * a exp(-k t^n) + b t; wang-singh: 1 + a t + b t^2.
 *
 * @param input.model - which model
 * @param input.time - since drying began; the constants are per the unit that this time is given in
 * @param input.k - and `n`, `a`, `b`, `c`: the constants the model has
 * @returns `moistureRatio`: 1 at the start, towards 0 when dry
 * @throws StillroomError MISSING for a constant of the model
 *
 * @example
 * ```ts
 * import { moistureRatio } from 'stillroom/drying';
 *
 * moistureRatio({ model: 'page', time: '20 min', k: 0.0504, n: 0.761 }).moistureRatio; // ≈ 0.61102
 * ```
 */
export function moistureRatio(input: MoistureRatioInput): MoistureRatio {
  const given = readInput(ratioSchema, input);
  const chosen: ThinLayer = MODELS[given.model];
  const value = chosen.ratio(given.time.value, constantsOf(given.model, given));
  if (!Number.isFinite(value)) fail('OUT_OF_RANGE', 'time', input.time, 'a time at which the model stays finite');
  return answer({ moistureRatio: value, basis: [chosen.basis], cautions: [] });
}

const timeSchema = fields({
  model: choice('a model whose time has a closed form', ['lewis', 'page']),
  moistureRatio: number('a moisture ratio above 0 and at most 1', { above: 0, max: 1 }),
  k: number('k above 0 and at most 1,000', { above: 0, max: 1000 }),
  n: optional(number('n from 0.01 to 20', { min: 0.01, max: 20 })),
  per: choice('the unit of time that k is for', ['s', 'min', 'h', 'day']),
});
export type TimeToMoistureRatioInput = z.input<typeof timeSchema>;

export interface TimeToMoistureRatio {
  readonly time: Quantity<'time'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The time to a moisture ratio by the Page model, or by Lewis, its simple case n = 1: t = (-ln MR / k)^(1/n).
 *
 * @param input.model - `page` or `lewis`
 * @param input.moistureRatio - to reach, above 0 to 1
 * @param input.k - and, for Page, `n`
 * @param input.per - the unit of time that k is for
 * @returns `time` in that unit
 * @throws StillroomError MISSING, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { timeToMoistureRatio } from 'stillroom/drying';
 *
 * timeToMoistureRatio({ model: 'page', moistureRatio: 0.1, k: 0.0504, n: 0.761, per: 'min' }).time.value; // ≈ 151.7
 * ```
 */
export function timeToMoistureRatio(input: TimeToMoistureRatioInput): TimeToMoistureRatio {
  const given = readInput(timeSchema, input);
  const [k = 0, n = 1] = constantsOf(given.model, given);
  const value = (-Math.log(given.moistureRatio) / k) ** (1 / n);
  if (!Number.isFinite(value)) fail('OUT_OF_RANGE', 'k', input.k, 'constants that give a finite time');
  return answer({
    time: { value: Math.abs(value), unit: given.per },
    basis: [MODELS[given.model].basis],
    cautions: [],
  });
}

const fitSchema = fields({
  points: list(
    'the drying curve, at least one point more than the model has constants',
    fields({
      time: time({ min: { value: 0, unit: 's' } }),
      moistureRatio: number('a moisture ratio from -0.2 to 1.5', { min: -0.2, max: 1.5 }),
    }),
    3,
    1000,
  ),
  model: optional(model()),
});
export type FitDryingCurveInput = z.input<typeof fitSchema>;

export interface DryingCurveFit {
  readonly model: ThinLayerModel;
  /** The constants, per the unit of time of the first point. */
  readonly constants: Readonly<Record<string, number>>;
  /** Their standard deviations; empty where the points do not determine them. */
  readonly deviations: Readonly<Record<string, number>>;
  readonly per: Unit<'time'>;
  /** Sum of the squared differences of moisture ratio. */
  readonly sse: number;
  readonly degreesOfFreedom: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Fits a thin-layer drying model to a curve of moisture ratios by least squares.
 *
 * Levenberg-Marquardt on the moisture ratios, unweighted; the fitter meets the certified values of NIST's nonlinear
 * reference sets to nine digits and more.
 *
 * @param input.points - `time` since drying began, and `moistureRatio` (1 at the start)
 * @param input.model - `page` if not given; `lewis`, `henderson-pabis`, `logarithmic`, `midilli` or `wang-singh`
 * @returns `constants` by name, per the unit of the first point's time, with deviations and the sum of squares
 * @throws StillroomError OUT_OF_RANGE for fewer points than three, or than the model's constants and one;
 *   CONTRADICTION for times that repeat or go back
 *
 * @example
 * ```ts
 * import { fitDryingCurve } from 'stillroom/drying';
 *
 * const points = [1, 0.86249, 0.60567, 0.28917, 0.06472].map((moistureRatio, i) => ({
 *   time: { value: [0, 0.8, 2.2, 4.2, 7][i] ?? 0, unit: 'h' as const },
 *   moistureRatio,
 * }));
 * const { constants } = fitDryingCurve({ points });
 * constants.n; // ≈ 1.38
 * ```
 */
export function fitDryingCurve(input: FitDryingCurveInput): DryingCurveFit {
  const { points, model: name = 'page' } = readInput(fitSchema, input);
  const chosen: ThinLayer = MODELS[name];
  const per = (points[0] as (typeof points)[number]).time.unit;
  const x = points.map((point) => valueIn(point.time, per));
  x.forEach((at, i) => {
    if (i > 0 && at <= (x[i - 1] as number)) {
      fail('CONTRADICTION', `points[${i}].time`, input.points[i]?.time, 'a time after the point before');
    }
  });
  if (points.length <= chosen.constants.length) {
    fail(
      'OUT_OF_RANGE',
      'points',
      input.points,
      `at least ${chosen.constants.length + 1} points for the ${name} model`,
    );
  }
  const y = points.map((point) => point.moistureRatio);
  // a rough k: from the point nearest to a third, where the curve tells it best
  const [at = 1, ratio = 0.5] = x
    .map((t, i): [number, number] => [t, Math.min(Math.max(y[i] as number, 0.01), 0.99)])
    .filter(([t]) => t > 0)
    .reduce((best, next) => (Math.abs(next[1] - 1 / 3) < Math.abs(best[1] - 1 / 3) ? next : best));
  const fit = leastSquares({ x, y, model: chosen.ratio, start: chosen.start(-Math.log(ratio) / at) });
  const named = (values: readonly number[]): Record<string, number> =>
    Object.fromEntries(values.map((value, i) => [chosen.constants[i] as string, value]));
  return answer({
    model: name,
    constants: named(fit.parameters),
    deviations: named(fit.sd),
    per,
    sse: fit.sse,
    degreesOfFreedom: fit.degreesOfFreedom,
    basis: [
      chosen.basis,
      { of: 'the points fitted', kind: 'measured' },
      { of: 'certified values that the fitter meets', kind: 'published', source: 'nist-strd', seen: 'reproduction' },
    ],
    cautions: fit.converged ? [] : [caution('estimate')],
  });
}

const slabSchema = fields({
  thickness: length({ max: { value: 1, unit: 'm' } }),
  faces: optional(choice('which faces dry', ['both', 'one'])),
  diffusivity: number('a diffusivity in m2/s, above 0 and at most 0.001', { above: 0, max: 1e-3 }),
  time: time({ min: { value: 0, unit: 's' } }),
});
export type SlabMoistureRatioInput = z.input<typeof slabSchema>;

/**
 * The mean moisture ratio of a slab that dries by diffusion alone (Fick's second law).
 *
 * MR = (8 / pi2) sum over i of exp(-(2i+1)2 pi2 Fo / 4) / (2i+1)2, Fo = D t / L2; L is half the thickness where both
 * faces dry and all of it where one does.
 *
 * @param input.thickness - of the slab
 * @param input.faces - `both` (if not given) or `one`
 * @param input.diffusivity - effective moisture diffusivity in m2/s: see `dryingStudy`
 * @param input.time - since drying began
 * @returns `moistureRatio`
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { slabMoistureRatio } from 'stillroom/drying';
 *
 * slabMoistureRatio({ thickness: '2 mm', diffusivity: 2e-10, time: '1000 s' }).moistureRatio; // ≈ 0.4959
 * ```
 */
export function slabMoistureRatio(input: SlabMoistureRatioInput): MoistureRatio {
  const { thickness, faces = 'both', diffusivity, time: since } = readInput(slabSchema, input);
  const depth = valueIn(thickness, 'm') / (faces === 'both' ? 2 : 1);
  const fourier = (diffusivity * valueIn(since, 's')) / depth ** 2;
  return answer({ moistureRatio: slabRatio(fourier), basis: [modelBasis('Fick slab')], cautions: [] });
}

/** The series; below Fo 0.05 its short-time form 1 - 2 sqrt(Fo/pi), which is exact to 9 digits there. */
function slabRatio(fourier: number): number {
  if (fourier < 0.05) return 1 - 2 * Math.sqrt(fourier / Math.PI);
  let sum = 0;
  for (let odd = 1; odd < 60; odd += 2) {
    sum += Math.exp((-odd * odd * Math.PI ** 2 * fourier) / 4) / (odd * odd);
  }
  return (8 / Math.PI ** 2) * sum;
}

/** What a study of drying found. */
interface StudyRow extends Sourced, Named {
  readonly printed: string;
  readonly D_m2_per_s?: readonly [number, number];
  readonly D_formula?: string;
  readonly temperature_degC: number | readonly number[] | null;
  readonly thickness_mm?: number | string | readonly number[] | null;
  readonly airVelocity_m_per_s?: number | string | readonly number[];
  readonly Ea_kJ_per_mol?: number | readonly number[];
  readonly bestModel?: string;
}
const studies = asTable<StudyRow>(diffusivityTable).rows;

const studySchema = fields({
  food: name('a food'),
  temperature: optional(temperature({ min: { value: 0, unit: 'degC' }, max: { value: 120, unit: 'degC' } })),
});
export type DryingStudyInput = z.input<typeof studySchema>;

export interface DryingStudy {
  readonly food: string;
  /** m2/s, as printed over the study's temperatures. */
  readonly diffusivityRange?: { readonly low: number; readonly high: number };
  /** m2/s at the temperature asked for. */
  readonly diffusivity?: number;
  /** The model that fitted best. */
  readonly bestModel?: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const GAS_CONSTANT = 8.314462618e-3; // kJ/(mol K)

/**
 * What a published thin-layer drying study found for a food: the effective moisture diffusivity and the best model.
 *
 * With a temperature inside the study's own, and its activation energy, D = D1 exp(-Ea/R (1/T - 1/T1)) from the low
 * end. Studies differ in cut, air and method: take it as an order of magnitude.
 *
 * @param input.food - the food of the study
 * @param input.temperature - of the drying air, where the diffusivity at it is wanted
 * @returns `diffusivityRange` and `diffusivity` in m2/s, `bestModel`, as far as the study prints them
 * @throws StillroomError UNKNOWN_NAME; OUT_OF_RANGE for a temperature outside the study's
 *
 * @example
 * ```ts
 * import { dryingStudy } from 'stillroom/drying';
 *
 * const mango = dryingStudy({ food: 'mango', temperature: '80 degC' });
 * (mango.diffusivity ?? 0) / 4.97e-10; // ≈ 2.174
 * ```
 */
export function dryingStudy(input: DryingStudyInput): DryingStudy {
  const { food, temperature: air } = readInput(studySchema, input);
  const row = lookUp(food, studies, 'food', 'food with a published drying study');
  const range = row.D_m2_per_s;
  const tested = Array.isArray(row.temperature_degC) ? (row.temperature_degC as number[]) : undefined;
  let diffusivity: number | undefined;
  if (air !== undefined && range !== undefined && typeof row.Ea_kJ_per_mol === 'number' && tested !== undefined) {
    const [coldest, hottest] = [Math.min(...tested), Math.max(...tested)];
    const degC = valueIn(air, 'degC');
    if (degC < coldest - 1e-9 || degC > hottest + 1e-9) {
      fail('OUT_OF_RANGE', 'temperature', input.temperature, `the study's own ${coldest} to ${hottest} degC`);
    }
    const inverse = 1 / valueIn(air, 'K') - 1 / (coldest + 273.15);
    diffusivity = range[0] * Math.exp((-row.Ea_kJ_per_mol / GAS_CONSTANT) * inverse);
  }
  return answer({
    food: row.name,
    ...(range === undefined ? {} : { diffusivityRange: { low: range[0], high: range[1] } }),
    ...(diffusivity === undefined ? {} : { diffusivity }),
    ...(row.bestModel === undefined ? {} : { bestModel: row.bestModel }),
    basis: joinBasis(
      [basisOf(row, `drying of ${row.printed}`)],
      diffusivity === undefined ? [] : [modelBasis('Arrhenius')],
    ),
    cautions: [caution('estimate')],
  });
}
