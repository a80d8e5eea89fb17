import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, number, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Basis } from '../sources/basis';
import { brixField, liquidTemperature, REFERENCE_TEMPERATURE } from './fields';
import { densityAt, densityBasis, inAir } from './sucroseDensity';
import { solveRising } from './table';

/** Density of the solution over that of water at the same temperature. */
export const specificGravityAt = (brix: number, t: number): number => densityAt(brix, t) / densityAt(0, t);

const schema = fields({ brix: brixField(), temperature: optional(liquidTemperature()) });
export type SpecificGravityInput = z.input<typeof schema>;
export interface SpecificGravity {
  /** Density over that of water at the same temperature. */
  readonly specificGravity: number;
  /** The same ratio of weights as scales show them, air's lift not taken off. */
  readonly apparent: number;
  readonly basis: readonly Basis[];
}

/**
 * Specific gravity of a sucrose solution: what a hydrometer for gravity shows in it.
 *
 * Formula: density of the solution over the density of water, both at the same temperature (20/20 degC when none is
 * given). `apparent` is the ratio of weights in air, which older sugar tables print.
 *
 * @param input - `brix`: 0 to 100; `temperature`: 0 to 100 degC
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { specificGravity } from 'stillroom/solution';
 *
 * specificGravity({ brix: 10 }).specificGravity; // ≈ 1.03998
 * ```
 */
export function specificGravity(input: SpecificGravityInput): SpecificGravity {
  const { brix, temperature } = readInput(schema, input);
  const t = temperature === undefined ? REFERENCE_TEMPERATURE : valueIn(temperature, 'degC');
  return answer({
    specificGravity: specificGravityAt(brix, t),
    apparent: inAir(densityAt(brix, t)) / inAir(densityAt(0, t)),
    basis: densityBasis('specific gravity'),
  });
}

const HIGHEST = specificGravityAt(100, REFERENCE_TEMPERATURE);
const inverseSchema = fields({
  specificGravity: number(`a specific gravity 20/20 from 1 to ${HIGHEST.toFixed(3)}`, { min: 1, max: HIGHEST }),
});
export type BrixFromSpecificGravityInput = z.input<typeof inverseSchema>;
export interface BrixReading {
  readonly brix: number;
  readonly basis: readonly Basis[];
}

/** Brix of a solution of this specific gravity 20/20. */
export const brixOfSpecificGravity = (gravity: number): number =>
  solveRising((brix) => specificGravityAt(brix, REFERENCE_TEMPERATURE), gravity, 0, 100);

/**
 * Brix from a hydrometer's specific gravity at 20 degC: the inverse of `specificGravity`.
 *
 * @param input - `specificGravity`: 1 (water) to 1.555
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { brixFromSpecificGravity } from 'stillroom/solution';
 *
 * brixFromSpecificGravity({ specificGravity: 1.04 }).brix; // ≈ 10.0
 * ```
 */
export function brixFromSpecificGravity(input: BrixFromSpecificGravityInput): BrixReading {
  const given = readInput(inverseSchema, input);
  return answer({ brix: brixOfSpecificGravity(given.specificGravity), basis: densityBasis('Brix') });
}
