/** The thin-layer drying models: their constants in order, their curves, and where they are from. */
import type { Basis } from '../../sources/basis';
import { modelBasis, studiedBasis } from './tables';

/** A thin-layer model; the constants are per unit of time. */
export interface ThinLayer {
  readonly constants: readonly string[];
  /** The moisture ratio at t. */
  readonly ratio: (t: number, constants: readonly number[]) => number;
  /** A start for fitting, by a rough k. */
  readonly start: (k: number) => readonly number[];
  /** The basis line behind a field. */
  readonly basis: (of: string) => Basis;
}

/** The constants of a model by name; a model has some of them. */
export interface CurveConstants {
  /** The drying constant, per unit of time (to the power n). */
  readonly k?: number;
  /** The exponent of the time. */
  readonly n?: number;
  /** The factor of the exponential, or of the time. */
  readonly a?: number;
  /** The factor of the time, or of its square. */
  readonly b?: number;
  /** What is left in the end. */
  readonly c?: number;
}

export const MODELS = {
  lewis: {
    constants: ['k'],
    ratio: (t, [k = 0]) => Math.exp(-k * t),
    start: (k) => [k],
    basis: (of) => modelBasis('lewis', of),
  },
  page: {
    constants: ['k', 'n'],
    ratio: (t, [k = 0, n = 1]) => Math.exp(-k * t ** n),
    start: (k) => [k, 1],
    basis: (of) => modelBasis('page', of),
  },
  'henderson-pabis': {
    constants: ['a', 'k'],
    ratio: (t, [a = 1, k = 0]) => a * Math.exp(-k * t),
    start: (k) => [1, k],
    basis: (of) => modelBasis('henderson-pabis', of),
  },
  logarithmic: {
    constants: ['a', 'k', 'c'],
    ratio: (t, [a = 1, k = 0, c = 0]) => a * Math.exp(-k * t) + c,
    start: (k) => [1, k, 0],
    basis: (of) => modelBasis('logarithmic', of),
  },
  midilli: {
    constants: ['a', 'k', 'n', 'b'],
    ratio: (t, [a = 1, k = 0, n = 1, b = 0]) => a * Math.exp(-k * t ** n) + b * t,
    start: (k) => [1, k, 1, 0],
    basis: (of) => studiedBasis('midilli', of),
  },
  'wang-singh': {
    constants: ['a', 'b'],
    ratio: (t, [a = 0, b = 0]) => 1 + a * t + b * t * t,
    start: (k) => [-k, 0],
    basis: (of) => studiedBasis('wang-singh', of),
  },
} as const satisfies Record<string, ThinLayer>;

/** A thin-layer drying model. */
export type ThinLayerModel = keyof typeof MODELS;
export const MODEL_NAMES = Object.keys(MODELS) as ThinLayerModel[];

/** t at a moisture ratio by Page's model, or by Lewis's, its simple case n = 1: (-ln MR / k)^(1/n). */
export const timeAtRatio = (moistureRatio: number, k: number, n = 1): number =>
  Math.abs((-Math.log(moistureRatio) / k) ** (1 / n));

/**
 * The mean moisture ratio of a slab at Fo = D t / L2; below Fo 0.05 by its short-time form 1 - 2 sqrt(Fo/pi), which is
 * exact to 9 digits there.
 */
export function slabRatio(fourier: number): number {
  if (fourier < 0.05) return 1 - 2 * Math.sqrt(fourier / Math.PI);
  let sum = 0;
  for (let odd = 1; odd < 60; odd += 2) {
    sum += Math.exp((-odd * odd * Math.PI ** 2 * fourier) / 4) / (odd * odd);
  }
  return (8 / Math.PI ** 2) * sum;
}
