import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, mass, readInput, share } from '../quantity/fields';
import type { MassInput, Quantity, ShareInput } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { massBalance } from './inputs';

const schema = fields({ mass: mass(), solids: share(), targetSolids: share({ above: 0 }) });
export interface WaterToThinInput {
  readonly mass: MassInput;
  /** Solids it has (Brix over 100) and is to have: 0 to 1 or percent. */
  readonly solids: ShareInput;
  readonly targetSolids: ShareInput;
}
export interface WaterToThin {
  readonly water: Quantity<'mass'>;
  readonly mass: Quantity<'mass'>;
  readonly basis: readonly Basis[];
}

/**
 * The water that brings a syrup too strong, or a batch boiled down too far, back to the strength wanted.
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
  const total = (value * given.solids) / given.targetSolids;
  return answer({
    water: { value: total - value, unit },
    mass: { value: total, unit },
    basis: [massBalance('water')],
  });
}
