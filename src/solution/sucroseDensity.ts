import type * as z from 'zod/mini';
import polynomialJson from '../../data/solution/sucrose-density-polynomial.json';
import waterJson from '../../data/solution/water-density-kell.json';
import { answer, fixedLines } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { brix } from '../words/brix';
import { liquidTemperature, REFERENCE_TEMPERATURE } from './fields';
import { solveRising } from './table';
import { constant, constantBasis, type polynomialRow, type waterDensityRow } from './tables';

const polynomial = asTable<RowOf<typeof polynomialRow>>(polynomialJson).rows;
const waterTerms = asTable<RowOf<typeof waterDensityRow>>(waterJson).rows;

/** c0 + c1 x + c2 x^2 + ... */
export function polynomialAt(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let at = coefficients.length - 1; at >= 0; at--) sum = sum * x + (coefficients[at] as number);
  return sum;
}

/** Density of water in kg/m3 at t degC (Kell 1975). */
function waterDensityAt(t: number): number {
  let sum = 0;
  for (const { numerator, denominator } of waterTerms) sum += polynomialAt(numerator, t) / polynomialAt(denominator, t);
  return sum;
}

/** The same with sugar in it. */
function withSugar(water: number, brix: number, t: number): number {
  const w = brix / 100;
  const tau = (t - REFERENCE_TEMPERATURE) / 100;
  let sum = water;
  for (const { power, coefficients } of polynomial) sum += tau ** power * w * polynomialAt(coefficients, w);
  return sum;
}

/** Density of a sucrose solution in kg/m3: Brix and degC. */
export const densityAt = (brix: number, t: number): number => withSugar(waterDensityAt(t), brix, t);

/** What a scale shows for a density in kg/m3: air lifts the liquid more than the brass weights. */
export function inAir(density: number): number {
  const air = constant('air-density');
  return (density - air) / (1 - air / constant('brass-density'));
}
/** Density of the solution over that of water at the same temperature. */
export function specificGravityAt(strength: number, t: number): number {
  const water = waterDensityAt(t);
  return withSugar(water, strength, t) / water;
}

/** Brix of a solution of this specific gravity 20/20. */
export const brixOfSpecificGravity = (gravity: number): number =>
  solveRising((strength) => specificGravityAt(strength, REFERENCE_TEMPERATURE), gravity, 0, 100);

/** Degrees Baume of a specific gravity 20/20, and back. */
export const baumeOf = (gravity: number): number => {
  const modulus = constant('baume-modulus');
  return modulus - modulus / gravity;
};
export const gravityOfBaume = (baume: number): number => {
  const modulus = constant('baume-modulus');
  return modulus / (modulus - baume);
};

/** What a weight in air rests on: `of` is the path of the answer's field. */
export const inAirBasis = (of: string): Basis[] => [
  constantBasis('air-density', of),
  constantBasis('brass-density', of),
];

/** What an answer that uses the density rests on: `of` is the path of the answer's field. */
export const densityBasis = (of: string): Basis[] =>
  [...polynomial, ...waterTerms].map((row) => ({ ...basisOf(row, of), kind: 'equation' as const }));

const basis = /* @__PURE__ */ fixedLines(() => [
  ...['density', 'inAir', 'specificGravity', 'gravityInAir', 'baume'].flatMap(densityBasis),
  ...['inAir', 'gravityInAir'].flatMap(inAirBasis),
  constantBasis('baume-modulus', 'baume'),
]);

const schema = /* @__PURE__ */ fields({
  /** Strength of the solution, 0 to 100 degrees Brix. */
  brix: brix(),
  /** Of the solution, 0 to 100 degC. */
  temperature: liquidTemperature(),
});
export type SucroseDensityInput = z.input<typeof schema>;
export interface SucroseDensity {
  /** Mass over volume, g/mL. */
  readonly density: Quantity<'density'>;
  /** As weighed in air, which is what printed weights of a gallon are; 0.1 % less than the density. */
  readonly inAir: Quantity<'density'>;
  /** What a hydrometer shows: density over that of water at the same temperature. */
  readonly specificGravity: number;
  /** The same from weights as scales show them, air's lift not taken off; older sugar tables print it. */
  readonly gravityInAir: number;
  /** Degrees Baume, the scale of old syrup and preserve recipes; always at 20 degC, where it is defined. */
  readonly baume: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * Density of a solution of pure sucrose: how heavy a syrup is for its volume, and what a hydrometer shows in it. Also
 * used for juices, whose solids are mostly sugars. The way back is `brixFrom`.
 *
 * Formula: density = water(t) + sum_i ((t - 20)/100)^i sum_k C_ik w^k, with w = Brix/100 and t in degC; water
 * after Kell. Source: ICUMSA SPS-4 (Bubnik et al. 1995, p. 164). Against a handbook's rows at 20 degC the
 * polynomial stays within 1e-4 g/mL to 50 Brix and 3e-4 to 70. Baume = 145 - 145 / SG, with the specific gravity
 * 20/20; the modulus is recalled, and reproduces the printed table of the Beet-Sugar Handbook within 0.1 degree.
 *
 * @param input - `brix`: 0 to 100 (a bare number up to 1 is asked about; write `"0.5 Brix"`); `temperature`: 0 to 100 degC
 * @throws StillroomError OUT_OF_RANGE outside those ranges
 *
 * @example
 * ```ts
 * import { sucroseDensity } from 'stillroom/solution';
 *
 * sucroseDensity({ brix: 50, temperature: '20 degC' }).density.value; // ≈ 1.22965
 * sucroseDensity({ brix: 10, temperature: '20 degC' }).specificGravity; // ≈ 1.03998
 * sucroseDensity({ brix: 60, temperature: '20 degC' }).baume; // ≈ 32.5
 * ```
 */
export function sucroseDensity(input: SucroseDensityInput): SucroseDensity {
  const { brix: strength, temperature } = readInput(schema, input);
  const t = valueIn(temperature, 'degC');
  const water = waterDensityAt(t);
  const density = withSugar(water, strength, t);
  return answer({
    density: { value: density / 1000, unit: 'g/mL' },
    inAir: { value: inAir(density) / 1000, unit: 'g/mL' },
    specificGravity: density / water,
    gravityInAir: inAir(density) / inAir(water),
    baume: baumeOf(specificGravityAt(strength, REFERENCE_TEMPERATURE)),
    basis: basis(),
    cautions: [],
  });
}
