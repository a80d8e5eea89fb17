import type * as z from 'zod/mini';
import polynomialJson from '../../data/solution/sucrose-density-polynomial.json';
import waterJson from '../../data/solution/water-density-kell.json';
import { answer } from '../common/answer';
import { fields, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, joinBasis } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { brixField, liquidTemperature, REFERENCE_TEMPERATURE } from './fields';

interface PolynomialRow extends Sourced {
  readonly power: number;
  readonly coefficients: readonly number[];
}
interface WaterRow extends Sourced {
  readonly numerator: readonly number[];
  readonly denominator: readonly number[];
}
const polynomial = asTable<PolynomialRow>(polynomialJson).rows;
const water = asTable<WaterRow>(waterJson).rows;

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

const AIR = 1.2; // kg/m3 at 20 degC and 1 atm: common practice in weighing
const BRASS = 8400; // kg/m3: the weights that sugar tables were made with
/** What a scale shows for a density in kg/m3: air lifts the liquid more than the brass weights. */
export const inAir = (density: number): number => (density - AIR) / (1 - AIR / BRASS);

/** What an answer that uses the density rests on. */
export const densityBasis = (what: string): Basis[] =>
  joinBasis([...polynomial, ...water].map((row) => ({ ...basisOf(row, what), kind: 'equation' as const })));

const schema = fields({ brix: brixField(), temperature: optional(liquidTemperature()) });
export type SucroseDensityInput = z.input<typeof schema>;
export interface SucroseDensity {
  readonly density: Quantity<'density'>;
  /** As weighed in air, which is what printed weights of a gallon are; 0.1 % less than the density. */
  readonly inAir: Quantity<'density'>;
  readonly basis: readonly Basis[];
}

/**
 * Density of a solution of pure sucrose: how heavy a syrup is for its volume. Also used for juices, whose
 * solids are mostly sugars.
 *
 * Formula: density = water(t) + sum_i ((t - 20)/100)^i sum_k C_ik w^k, with w = Brix/100 and t in degC; water
 * after Kell. Source: ICUMSA SPS-4 (Bubnik et al. 1995, p. 164). Against a handbook's rows at 20 degC the
 * polynomial stays within 1e-4 g/mL to 50 Brix and 3e-4 to 70.
 *
 * @param input - `brix`: 0 to 100; `temperature`: 0 to 100 degC, 20 degC when left out
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
  const { brix, temperature } = readInput(schema, input);
  const t = temperature === undefined ? REFERENCE_TEMPERATURE : valueIn(temperature, 'degC');
  const density = densityAt(brix, t);
  return answer({
    density: { value: density / 1000, unit: 'g/mL' },
    inAir: { value: inAir(density) / 1000, unit: 'g/mL' },
    basis: densityBasis('density'),
  });
}
