import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { balanceBasis, toAdd } from '../solution/massBalance';
import type { Basis } from '../sources/basis';
import { mass } from '../words/mass';
import { solids as solidsWord, targetSolids as targetSolidsWord } from '../words/shares';

const schema = fields({
  /** What is in the pot, by mass. */
  mass: mass(),
  /** The solids it has, as a share of the mass (Brix over 100): 0 to 1, or percent. */
  solids: solidsWord(),
  /** The solids it is to have: above 0, not above `solids`. */
  targetSolids: targetSolidsWord({ above: 0 }),
});
export type WaterToThinInput = z.input<typeof schema>;
export interface WaterToThin {
  /** Water to add. */
  readonly water: Quantity<'mass'>;
  /** What is in the pot afterward. */
  readonly mass: Quantity<'mass'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
}

/**
 * The water that brings a syrup too strong, or a batch boiled down too far, back to the strength you want.
 *
 * Formula: water = mass x (solids / targetSolids - 1).
 *
 * @param input - `mass`; `solids` and `targetSolids`: 0 to 1 or percent, the target not above the start
 * @throws StillroomError CONTRADICTION for a target above the start
 *
 * @example
 * ```ts
 * import { waterToThin } from 'stillroom/sugar';
 *
 * waterToThin({ mass: '1 kg', solids: '65 %', targetSolids: '30 %' }).water.value; // ≈ 1.1667
 * ```
 */
export function waterToThin(input: WaterToThinInput): WaterToThin {
  const given = readInput(schema, input);
  if (given.targetSolids > given.solids) {
    fail('CONTRADICTION', 'targetSolids', input.targetSolids, `at most ${given.solids}, what it has now`);
  }
  const { value, unit } = given.mass;
  const water = value * toAdd(given.solids, given.targetSolids, 0);
  return answer({
    water: { value: water, unit },
    mass: { value: value + water, unit },
    basis: [balanceBasis('water')],
  });
}
