import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, length, mass, optional, readInput, share } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { densityAt, densityBasis } from '../solution/sucroseDensity';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { sugarCaution } from './cautions';
import { massBalance } from './inputs';

const MEASURED_AT = 95; // degC: just off the boil
/** How full a pot may be before it boils over, where the cook names no other limit. */
const USUAL_FILL = 2 / 3; // common practice: a third of the pot is left for foam

const potSchema = fields({ diameter: length(), depth: optional(length()), fillLimit: optional(share({ above: 0 })) });
const schema = fields({
  mass: mass(),
  solids: share({ above: 0 }),
  targetSolids: share({ above: 0 }),
  pot: optional(potSchema),
});
export type ConcentrateInput = z.input<typeof schema>;
export interface Concentrated {
  /** What is left in the pot. */
  readonly mass: Quantity<'mass'>;
  readonly waterRemoved: Quantity<'mass'>;
  /** Left over started. */
  readonly ratio: number;
  /** Volumes just off the boil, counting the solids as sugar. */
  readonly startVolume: Quantity<'volume'>;
  readonly volume: Quantity<'volume'>;
  /** In a straight-sided pot: how deep it stands at first, and where to stop. */
  readonly startDepth?: Quantity<'length'>;
  readonly depth?: Quantity<'length'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Cooking down: what is left of a juice, sauce or jam when it reaches a share of solids, how much water has to
 * boil off, and how far down the pot that is.
 *
 * Formula: left = mass x solids / targetSolids (solids stay, water leaves). The depth is volume over the pot's
 * area, with the density of a sugar solution of the same solids at 95 degC (ICUMSA SPS-4).
 *
 * @param input - `mass` in the pot; `solids` and `targetSolids`: 0 to 1 or percent, above 0; `pot` (optional):
 * inside `diameter`, inside `depth` and `fillLimit` (the share of the depth that may be filled, two thirds when
 * left out), which refuses a batch that would boil over
 * @throws StillroomError CONTRADICTION for a target below the start; TOO_MUCH for a batch over the pot's limit
 *
 * @example
 * ```ts
 * import { concentrate } from 'stillroom/sugar';
 *
 * const answer = concentrate({ mass: '100 kg', solids: '20 %', targetSolids: '68 %', pot: { diameter: '60 cm' } });
 * answer.mass.value; // ≈ 29.41
 * answer.waterRemoved.value; // ≈ 70.59
 * answer.depth?.value; // ≈ 8.06
 * ```
 */
export function concentrate(input: ConcentrateInput): Concentrated {
  const { mass: start, solids, targetSolids, pot } = readInput(schema, input);
  if (targetSolids < solids) {
    fail('CONTRADICTION', 'targetSolids', targetSolids, `at least ${solids}, what it has now; to thin it add water`);
  }
  const ratioLeft = solids / targetSolids;
  const left = start.value * ratioLeft;
  const grams = valueIn(start, 'g');
  const startMl = grams / (densityAt(100 * solids, MEASURED_AT) / 1000);
  const endMl = (grams * ratioLeft) / (densityAt(100 * targetSolids, MEASURED_AT) / 1000);
  const depths = pot === undefined ? {} : depthsIn(pot, startMl, endMl);
  const customary = start.unit === 'lb' || start.unit === 'oz';
  return answer({
    mass: { value: left, unit: start.unit },
    waterRemoved: { value: start.value - left, unit: start.unit },
    ratio: ratioLeft,
    startVolume: quantityIn(startMl, 'mL', customary ? 'quart' : 'L'),
    volume: quantityIn(endMl, 'mL', customary ? 'quart' : 'L'),
    ...depths,
    basis: [massBalance('mass left'), ...densityBasis('volume and depth')],
    cautions: [
      sugarCaution('boiling-sugar-burns'),
      ...(pot === undefined ? [] : [sugarCaution('measure-off-the-boil')]),
      caution('estimate'),
    ],
  });
}

interface Pot {
  readonly diameter: Quantity<'length'>;
  readonly depth?: Quantity<'length'> | undefined;
  readonly fillLimit?: number | undefined;
}

function depthsIn(pot: Pot, startMl: number, endMl: number) {
  const unit = pot.diameter.unit;
  const area = (Math.PI / 4) * valueIn(pot.diameter, 'cm') ** 2;
  const startDepth = startMl / area; // cm
  if (pot.depth !== undefined) {
    const limit = valueIn(pot.depth, 'cm') * (pot.fillLimit ?? USUAL_FILL);
    if (startDepth > limit) {
      const share = Math.floor((100 * limit) / startDepth);
      fail('TOO_MUCH', 'mass', `${startDepth.toFixed(1)} cm deep`, `at most ${share} % of this mass in this pot`);
    }
  }
  return {
    startDepth: quantityIn(startDepth, 'cm', unit),
    depth: quantityIn(endMl / area, 'cm', unit),
  };
}
