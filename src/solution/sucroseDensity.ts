import type * as z from 'zod/mini';
import polynomialJson from '../../data/solution/sucrose-density-polynomial.json';
import waterJson from '../../data/solution/water-density-kell.json';
import { answer } from '../common/answer';
import { fields, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { brix } from '../words/brix';
import { liquidTemperature, REFERENCE_TEMPERATURE } from './fields';
import { constant, constantBasis, type polynomialRow, type waterDensityRow } from './tables';

const polynomial = asTable<RowOf<typeof polynomialRow>>(polynomialJson).rows;
const water = asTable<RowOf<typeof waterDensityRow>>(waterJson).rows;

/** c0 + c1 x + c2 x^2 + ... */
export const polynomialAt = (coefficients: readonly number[], x: number): number =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);

/** Density of water in kg/m3 at t degC (Kell 1975). */
const waterDensityAt = (t: number): number =>
  water.reduce((sum, row) => sum + polynomialAt(row.numerator, t) / polynomialAt(row.denominator, t), 0);

/** Density of a sucrose solution in kg/m3: Brix and degC. */
export function densityAt(brix: number, t: number): number {
  const w = brix / 100;
  const tau = (t - REFERENCE_TEMPERATURE) / 100;
  return polynomial.reduce(
    (sum, { power, coefficients }) => sum + tau ** power * w * polynomialAt(coefficients, w),
    waterDensityAt(t),
  );
}

/** What a scale shows for a density in kg/m3: air lifts the liquid more than the brass weights. */
export function inAir(density: number): number {
  const air = constant('air-density');
  return (density - air) / (1 - air / constant('brass-density'));
}
/** What a weight in air rests on: `of` is the path of the answer's field. */
export const inAirBasis = (of: string): Basis[] => [
  constantBasis('air-density', of),
  constantBasis('brass-density', of),
];

/** What an answer that uses the density rests on: `of` is the path of the answer's field. */
export const densityBasis = (of: string): Basis[] =>
  joinBasis([...polynomial, ...water].map((row) => ({ ...basisOf(row, of), kind: 'equation' as const })));

const schema = /* @__PURE__ */ fields({
  /** Strength of the solution, 0 to 100 degrees Brix. */
  brix: brix(),
  /** Of the solution, 0 to 100 degC; 20 degC when left out. */
  temperature: optional(liquidTemperature()),
});
export type SucroseDensityInput = z.input<typeof schema>;
export interface SucroseDensity {
  /** Mass over volume, g/mL. */
  readonly density: Quantity<'density'>;
  /** As weighed in air, which is what printed weights of a gallon are; 0.1 % less than the density. */
  readonly inAir: Quantity<'density'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * Density of a solution of pure sucrose: how heavy a syrup is for its volume. Also used for juices, whose
 * solids are mostly sugars.
 *
 * Formula: density = water(t) + sum_i ((t - 20)/100)^i sum_k C_ik w^k, with w = Brix/100 and t in degC; water
 * after Kell. Source: ICUMSA SPS-4 (Bubnik et al. 1995, p. 164). Against a handbook's rows at 20 degC the
 * polynomial stays within 1e-4 g/mL to 50 Brix and 3e-4 to 70.
 *
 * @param input - `brix`: 0 to 100 (a bare number up to 1 is asked about; write `"0.5 Brix"`); `temperature`: 0 to 100 degC, 20 degC when left out
 * @throws StillroomError OUT_OF_RANGE outside those ranges
 *
 * @example
 * ```ts
 * import { sucroseDensity } from 'stillroom/solution';
 *
 * sucroseDensity({ brix: 50, temperature: '20 degC' }).density.value; // ≈ 1.22965
 * ```
 */
export function sucroseDensity(input: SucroseDensityInput): SucroseDensity {
  const { brix: strength, temperature } = readInput(schema, input);
  const density = densityAt(strength, temperature === undefined ? REFERENCE_TEMPERATURE : valueIn(temperature, 'degC'));
  return answer({
    density: { value: density / 1000, unit: 'g/mL' },
    inAir: { value: inAir(density) / 1000, unit: 'g/mL' },
    basis: [...densityBasis('density'), ...densityBasis('inAir'), ...inAirBasis('inAir')],
    cautions: [],
  });
}
