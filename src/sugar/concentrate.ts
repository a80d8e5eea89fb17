import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { balanceBasis, leftAtSolids, refuseThinner } from '../solution/massBalance';
import { densityAt, densityBasis } from '../solution/sucroseDensity';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { length } from '../words/length';
import { mass } from '../words/mass';
import { otherShare, solids as solidsWord, targetSolids as targetSolidsWord } from '../words/shares';
import { sugarCaution } from './cautions';
import { isCustomary } from './inputs';
import { potBasis, potRule } from './potRules';

const potSchema = fields({
  /** Inside diameter of a straight-sided pot. */
  diameter: length(),
  /** Inside depth. */
  depth: optional(length()),
  /** The share of the depth that may be filled, above 0 to 1 or percent; two thirds when left out. */
  fillLimit: optional(otherShare('fillLimit', 'How full a pot may be, as a share of its depth.', { above: 0 })),
});
const schema = fields({
  /** What is in the pot, by mass. */
  mass: mass(),
  /** The solids it has, as a share of the mass: above 0 to 1, or percent. */
  solids: solidsWord({ above: 0 }),
  /** The solids it is to have, not below `solids`. */
  targetSolids: targetSolidsWord({ above: 0 }),
  /** The pot, for the depth at which to stop. */
  potSize: optional(potSchema),
});
export type ConcentrateInput = z.input<typeof schema>;
export interface Concentrated {
  /** What is left in the pot. */
  readonly mass: Quantity<'mass'>;
  /** The water that boils off. */
  readonly waterRemoved: Quantity<'mass'>;
  /** What is left as a share of what was in the pot, 0 to 1. */
  readonly leftShare: number;
  /** The volume at first, just off the boil, counting the solids as sugar. */
  readonly startVolume: Quantity<'volume'>;
  /** The volume that is left, just off the boil. */
  readonly volume: Quantity<'volume'>;
  /** In a straight-sided pot: how deep it is at first. */
  readonly startDepth?: Quantity<'length'>;
  /** And how deep where you stop. */
  readonly depth?: Quantity<'length'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/**
 * Cooking down: what is left of a juice, sauce or jam when it reaches a share of solids, how much water has to
 * boil off, and how far down the pot that is.
 *
 * Formula: left = mass x solids / targetSolids (solids stay, water leaves). The depth is volume over the pot's
 * area, with the density of a sugar solution of the same solids at 95 degC (ICUMSA SPS-4).
 *
 * @param input - `mass` in the pot; `solids` and `targetSolids`: 0 to 1 or percent, above 0; `potSize` (optional):
 * inside `diameter`, inside `depth` and `fillLimit` (the share of the depth that may be filled, two thirds when
 * left out), which refuses a batch that would boil over
 * @throws StillroomError CONTRADICTION for a target below the start; TOO_MUCH for a batch over the pot's limit
 *
 * @example
 * ```ts
 * import { concentrate } from 'stillroom/sugar';
 *
 * const answer = concentrate({ mass: '100 kg', solids: '20 %', targetSolids: '68 %', potSize: { diameter: '60 cm' } });
 * answer.mass.value; // ≈ 29.41
 * answer.waterRemoved.value; // ≈ 70.59
 * answer.depth?.value; // ≈ 8.06
 * ```
 */
export function concentrate(input: ConcentrateInput): Concentrated {
  const { mass: start, solids, targetSolids, potSize: pot } = readInput(schema, input);
  refuseThinner(solids, targetSolids, 'targetSolids');
  const leftShare = leftAtSolids(solids, targetSolids);
  const left = start.value * leftShare;
  const grams = valueIn(start, 'g');
  const measuredAt = potRule('measured-at').value;
  const startMl = grams / (densityAt(100 * solids, measuredAt) / 1000);
  const endMl = (grams * leftShare) / (densityAt(100 * targetSolids, measuredAt) / 1000);
  const depths = pot === undefined ? {} : depthsIn(pot, startMl, endMl, input.mass);
  const unit = isCustomary(start.unit) ? 'quart' : 'L';
  return answer({
    mass: { value: left, unit: start.unit },
    waterRemoved: { value: start.value - left, unit: start.unit },
    leftShare,
    startVolume: quantityIn(startMl, 'mL', unit),
    volume: quantityIn(endMl, 'mL', unit),
    ...depths,
    basis: [
      balanceBasis('mass'),
      ...densityBasis('volume'),
      potBasis('measured-at', 'volume'),
      ...(pot?.depth === undefined || pot.fillLimit !== undefined ? [] : [potBasis('pot-fill', 'startDepth')]),
    ],
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

function depthsIn(pot: Pot, startMl: number, endMl: number, given: ConcentrateInput['mass']) {
  const unit = pot.diameter.unit;
  const area = (Math.PI / 4) * valueIn(pot.diameter, 'cm') ** 2;
  const startDepth = startMl / area; // cm
  if (pot.depth !== undefined) {
    const limit = valueIn(pot.depth, 'cm') * (pot.fillLimit ?? potRule('pot-fill').value);
    if (startDepth > limit) {
      const share = Math.floor((100 * limit) / startDepth);
      const [most, deep] = [limit, startDepth].map((each) => valueIn(quantityIn(each, 'cm', unit), unit).toFixed(1));
      const expected = `at most ${share} % of this mass, to fill the pot ${most} ${unit} deep and not ${deep} ${unit}`;
      fail('TOO_MUCH', 'mass', given, expected);
    }
  }
  return {
    startDepth: quantityIn(startDepth, 'cm', unit),
    depth: quantityIn(endMl / area, 'cm', unit),
  };
}
