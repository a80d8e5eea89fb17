import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, mass, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { basisOf } from '../sources/table';
import { moisture, otherShare } from '../words/shares';
import { volume } from '../words/volume';
import { acidCaution, LEAST_ACETIC, pickleRule } from './tables';
import { GRAMS_PER_ML, waterBasis } from './water';

/** Above this a bottle is acetic acid rather than vinegar, and volumes no longer just add. */
const STRONGEST = 0.3;
const acetic = () =>
  otherShare('acetic', 'Acetic acid of a vinegar as on its label: grams in 100 mL.', { above: 0, max: STRONGEST });

const schema = fields({
  /** Volume of the vinegar. */
  vinegar: volume(),
  /** Its strength from the label: above 0 and at most 0.3, or text in percent. */
  acetic: acetic(),
  /** The strength to bring it to, never less than 5 %: the answer is the water to add. 5 % where nothing else is given. */
  targetAcetic: optional(acetic()),
  /** Or the water that is added, by volume: the answer is the strength. */
  waterVolume: optional(volume()),
  /** Juice and the like that is added, by volume: counted as without acetic acid. */
  otherLiquids: optional(volume()),
  /** Vegetables that sit in it: their mass, and the water in them as a share of it. */
  soaked: optional(
    fields({
      /** The mass of the vegetables. */
      ready: mass(),
      /** The water in them, as a share of their mass: above 0 to 1, or text in percent. */
      moisture: moisture({ above: 0 }),
    }),
  ),
});
export type DiluteVinegarInput = z.input<typeof schema>;

export interface DilutedVinegar {
  /** Water that is added. */
  readonly waterVolume: Quantity<'volume'>;
  /** Vinegar, water and other liquids together. */
  readonly liquid: Quantity<'volume'>;
  /** Acetic acid of that liquid, as on a label (0.05 is 5 %). */
  readonly acetic: number;
  /** Acetic acid in all. */
  readonly aceticMass: Quantity<'mass'>;
  /** With `soaked`: once the water in the vegetables has taken its share. */
  readonly withVegetables?: {
    /** All the liquid, with the water in the vegetables. */
    readonly liquid: Quantity<'volume'>;
    /** Its acetic acid, as on a label. */
    readonly acetic: number;
  };
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** The target of a dilution, checked. */
function targetOf(target: number, strength: number, given: unknown): number {
  if (target < LEAST_ACETIC) {
    fail('OUT_OF_RANGE', 'targetAcetic', given, 'at least 5 %: pickles need vinegar of 5 % acetic acid');
  }
  if (target > strength) {
    fail('CONTRADICTION', 'targetAcetic', given ?? target, `at most the strength of the vinegar, ${strength}`);
  }
  return target;
}

/**
 * How strong vinegar is after you add water, or how much water brings it down to 5 % or another strength.
 *
 * acetic = vinegar x strength / all liquid, by volume: a label's percent is grams of acetic acid in 100 mL. Toward a
 * target, water = vinegar x (strength / target - 1): dilute first, then measure for the recipe. Sugar and salt are
 * left out, as are acids of the other liquids, so the strength is on the low side for those.
 *
 * @returns `waterVolume`, `acetic` and `liquid`, in the unit of `vinegar`
 * @throws StillroomError CONTRADICTION for a target above the start or together with added liquids, OUT_OF_RANGE for one
 * below 5 %
 *
 * @example
 * ```ts
 * import { diluteVinegar } from 'stillroom/acid';
 *
 * diluteVinegar({ vinegar: '4 cups', acetic: '5 %', waterVolume: '2 cups' }).acetic; // ≈ 0.0333
 * diluteVinegar({ vinegar: '1000 mL', acetic: '7 %' }).waterVolume.value; // ≈ 400
 * diluteVinegar({ vinegar: '1 quart', acetic: '5 %', targetAcetic: '4 %' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function diluteVinegar(input: DiluteVinegarInput): DilutedVinegar {
  const given = readInput(schema, input);
  const { vinegar, acetic: strength, waterVolume: water, otherLiquids, soaked } = given;
  const mixed = water !== undefined || otherLiquids !== undefined || soaked !== undefined;
  if (mixed && given.targetAcetic !== undefined) {
    fail('CONTRADICTION', 'targetAcetic', input.targetAcetic, 'a target strength, or what is added, not both');
  }
  const start = valueIn(vinegar, 'mL');
  const target = mixed ? undefined : targetOf(given.targetAcetic ?? LEAST_ACETIC, strength, input.targetAcetic);
  const added =
    target === undefined ? (water === undefined ? 0 : valueIn(water, 'mL')) : start * (strength / target - 1);
  const all = start + added + (otherLiquids === undefined ? 0 : valueIn(otherLiquids, 'mL'));
  const acid = start * strength;
  const withFood =
    soaked === undefined ? undefined : all + (valueIn(soaked.ready, 'g') * soaked.moisture) / GRAMS_PER_ML;
  return answer({
    waterVolume: quantityIn(added, 'mL', vinegar.unit),
    liquid: quantityIn(all, 'mL', vinegar.unit),
    acetic: acid / all,
    aceticMass: { value: acid, unit: 'g' },
    ...(withFood === undefined
      ? {}
      : { withVegetables: { liquid: quantityIn(withFood, 'mL', vinegar.unit), acetic: acid / withFood } }),
    basis: [
      derived('acetic', 'acid stays, and liquids add up by volume'),
      ...(target === undefined
        ? []
        : [basisOf(pickleRule('vinegar-acidity'), 'waterVolume', 'least strength for pickles')]),
      ...(withFood === undefined ? [] : [waterBasis('withVegetables.liquid')]),
    ],
    cautions: [
      ...(strength < LEAST_ACETIC ? [acidCaution('vinegar-below-five')] : []),
      // above 5 %, as `checkPickleLiquid` counts it
      ...(strength > LEAST_ACETIC * 1.01 ? [acidCaution('stronger-vinegar')] : []),
      ...(target !== undefined && strength > 0.1 ? [acidCaution('strong-acid-burns')] : []),
      acidCaution('keep-the-proportions'),
    ],
  });
}
