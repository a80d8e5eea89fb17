import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Basis, Caution } from '../sources/basis';
import { brix } from '../words/brix';
import { liquidTemperature, REFERENCE_TEMPERATURE } from './fields';
import { densityAt, densityBasis, inAir, inAirBasis } from './sucroseDensity';
import { solveRising } from './table';
import { constant, constantBasis } from './tables';

/** Density of the solution over that of water at the same temperature. */
export const specificGravityAt = (strength: number, t: number): number => densityAt(strength, t) / densityAt(0, t);

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

const schema = /* @__PURE__ */ fields({
  /** Strength of the solution, 0 to 100 degrees Brix. */
  brix: brix(),
  /** Of the solution and of the water it is compared with, 0 to 100 degC; 20 degC when left out. */
  temperature: optional(liquidTemperature()),
});
export type SpecificGravityInput = z.input<typeof schema>;
export interface SpecificGravity {
  /** Density over that of water at the same temperature. */
  readonly specificGravity: number;
  /** The same from weights as scales show them, air's lift not taken off. */
  readonly apparent: number;
  /** Degrees Baume, the scale of old syrup and preserve recipes; always at 20 degC, where it is defined. */
  readonly baume: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * What a hydrometer shows in a sugar solution: specific gravity, and degrees Baume. `brixFrom` is the inverse.
 *
 * Formula: density of the solution over the density of water, both at the same temperature (20/20 degC when none is
 * given). `apparent` is the same from weights in air, which older sugar tables print. Baume = 145 - 145 / SG, with the
 * specific gravity 20/20; the modulus is recalled, and reproduces the printed table of the Beet-Sugar Handbook within
 * 0.1 degree.
 *
 * @param input - `brix`: 0 to 100; `temperature`: 0 to 100 degC
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { specificGravity } from 'stillroom/solution';
 *
 * specificGravity({ brix: 10 }).specificGravity; // ≈ 1.03998
 * specificGravity({ brix: 60 }).baume; // ≈ 32.5
 * ```
 */
export function specificGravity(input: SpecificGravityInput): SpecificGravity {
  const { brix: strength, temperature } = readInput(schema, input);
  const t = temperature === undefined ? REFERENCE_TEMPERATURE : valueIn(temperature, 'degC');
  return answer({
    specificGravity: specificGravityAt(strength, t),
    apparent: inAir(densityAt(strength, t)) / inAir(densityAt(0, t)),
    baume: baumeOf(specificGravityAt(strength, REFERENCE_TEMPERATURE)),
    basis: [
      ...['specificGravity', 'apparent', 'baume'].flatMap(densityBasis),
      ...inAirBasis('apparent'),
      constantBasis('baume-modulus', 'baume'),
    ],
    cautions: [],
  });
}
