import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, number, readInput } from '../quantity/fields';
import type { Basis } from '../sources/basis';
import { brixField, REFERENCE_TEMPERATURE } from './fields';
import { type BrixReading, brixOfSpecificGravity, specificGravityAt } from './specificGravity';
import { densityBasis } from './sucroseDensity';

/** Modulus of the scale for liquids heavier than water, at 20 degC: recalled; it reproduces both printed tables. */
const MODULUS = 145;
const modulusBasis: Basis = { of: 'Baume modulus 145', kind: 'recalled', source: 'nbs-c440' };
const baumeAt = (brix: number): number => MODULUS - MODULUS / specificGravityAt(brix, REFERENCE_TEMPERATURE);

const schema = fields({ brix: brixField() });
export type BaumeInput = z.input<typeof schema>;
export interface Baume {
  readonly baume: number;
  readonly basis: readonly Basis[];
}

/**
 * Degrees Baume of a sugar solution at 20 degC, the scale of old syrup and preserve recipes.
 *
 * Formula: Be = 145 - 145 / SG, with the specific gravity 20/20. The modulus is recalled; it reproduces the printed
 * table of the Beet-Sugar Handbook within 0.1 degree.
 *
 * @param input - `brix`: 0 to 100
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { baume, brixFromBaume } from 'stillroom/solution';
 *
 * baume({ brix: 60 }).baume; // ≈ 32.5
 * brixFromBaume({ baume: 32.5 }).brix; // ≈ 60
 * ```
 */
export function baume(input: BaumeInput): Baume {
  const { brix } = readInput(schema, input);
  return answer({ baume: baumeAt(brix), basis: [modulusBasis, ...densityBasis('specific gravity')] });
}

const HIGHEST = baumeAt(100);
const inverseSchema = fields({
  baume: number(`degrees Baume from 0 to ${HIGHEST.toFixed(1)}`, { min: 0, max: HIGHEST }),
});
export type BrixFromBaumeInput = z.input<typeof inverseSchema>;

/**
 * Brix from degrees Baume at 20 degC: the inverse of `baume`.
 *
 * @param input - `baume`: 0 to 51.8
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { brixFromBaume } from 'stillroom/solution';
 *
 * brixFromBaume({ baume: 11.1 }).brix; // ≈ 20
 * ```
 */
export function brixFromBaume(input: BrixFromBaumeInput): BrixReading {
  const given = readInput(inverseSchema, input);
  return answer({
    brix: brixOfSpecificGravity(MODULUS / (MODULUS - given.baume)),
    basis: [modulusBasis, ...densityBasis('specific gravity')],
  });
}
