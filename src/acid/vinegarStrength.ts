import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, mass, optional, readInput, share, volume } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { acidCaution, LEAST_ACETIC, pickleRule } from './tables';
import { GRAMS_PER_ML, WATER_WEIGHT } from './water';

/** Above this a bottle is acetic acid rather than vinegar, and volumes no longer just add. */
const STRONGEST = 0.3;
const acetic = () => share({ above: 0, max: STRONGEST });

/** Above 5 %, as `checkPickleLiquid` counts it. */
const strongCaution = (strength: number): Caution[] =>
  strength > LEAST_ACETIC * 1.01 ? [acidCaution('stronger-vinegar')] : [];

const strengthSchema = fields({
  vinegar: volume(),
  acetic: acetic(),
  water: optional(volume()),
  otherLiquids: optional(volume()),
  produce: optional(fields({ mass: mass(), water: share({ above: 0 }) })),
});
export type VinegarStrengthInput = z.input<typeof strengthSchema>;

export interface VinegarStrength {
  /** Vinegar, water and other liquids together. */
  readonly liquid: Quantity<'volume'>;
  /** Acetic acid of that liquid, as on a label (0.05 is 5 %). */
  readonly acetic: number;
  /** With `produce`: once the water in the produce has taken its share. */
  readonly withProduce?: { readonly liquid: Quantity<'volume'>; readonly acetic: number };
  /** Acetic acid in all. */
  readonly acid: Quantity<'mass'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const DILUTION: Basis = { of: 'acid stays, liquids add up by volume', kind: 'equation' };

/**
 * How strong vinegar still is after water, other liquids and the water in the produce have diluted it.
 *
 * acetic = vinegar x strength / all liquid, by volume: a label's percent is grams of acetic acid in 100 mL. Sugar and
 * salt are left out, as are acids of the other liquids, so the figure is on the low side for those.
 *
 * @param input.vinegar - volume of vinegar
 * @param input.acetic - its strength from the label: `"5 %"` or 0.05
 * @param input.water - water added
 * @param input.otherLiquids - juice and the like, counted as without acetic acid
 * @param input.produce - `mass` of produce, and the share of `water` in it, for the strength after soaking through
 * @returns `acetic` and `liquid`, in the unit of `vinegar`
 *
 * @example
 * ```ts
 * import { vinegarStrength } from 'stillroom/acid';
 *
 * vinegarStrength({ vinegar: '4 cups', acetic: '5 %', water: '2 cups' }).acetic; // ≈ 0.0333
 * ```
 */
export function vinegarStrength(input: VinegarStrengthInput): VinegarStrength {
  const { vinegar, acetic: strength, water, otherLiquids, produce } = readInput(strengthSchema, input);
  const start = valueIn(vinegar, 'mL');
  const all =
    start +
    (water === undefined ? 0 : valueIn(water, 'mL')) +
    (otherLiquids === undefined ? 0 : valueIn(otherLiquids, 'mL'));
  const acid = start * strength;
  const soaked = produce === undefined ? undefined : all + (valueIn(produce.mass, 'g') * produce.water) / GRAMS_PER_ML;
  return answer({
    liquid: quantityIn(all, 'mL', vinegar.unit),
    acetic: acid / all,
    ...(soaked === undefined
      ? {}
      : { withProduce: { liquid: quantityIn(soaked, 'mL', vinegar.unit), acetic: acid / soaked } }),
    acid: { value: acid, unit: 'g' },
    basis: [DILUTION, ...(soaked === undefined ? [] : [WATER_WEIGHT])],
    cautions: [
      ...(strength < LEAST_ACETIC ? [acidCaution('vinegar-below-five')] : []),
      ...strongCaution(strength),
      acidCaution('keep-the-proportions'),
    ],
  });
}

const diluteSchema = fields({ vinegar: volume(), acetic: acetic(), targetAcetic: optional(acetic()) });
export type DiluteVinegarInput = z.input<typeof diluteSchema>;

export interface DilutedVinegar {
  readonly water: Quantity<'volume'>;
  /** Diluted vinegar in all. */
  readonly vinegar: Quantity<'volume'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How much water brings strong vinegar down to 5 % (or another strength).
 *
 * water = vinegar x (strength / target - 1). Dilute first, then measure for the recipe.
 *
 * @param input.vinegar - volume of the strong vinegar
 * @param input.acetic - its strength from the label
 * @param input.targetAcetic - wanted; 5 % when left out, and never less, since pickles need 5 %
 * @returns `water` to add and `vinegar` made, in the unit of `vinegar`
 * @throws StillroomError CONTRADICTION for a target above the start, OUT_OF_RANGE for one below 5 %
 *
 * @example
 * ```ts
 * import { diluteVinegar } from 'stillroom/acid';
 *
 * diluteVinegar({ vinegar: '1000 mL', acetic: '7 %' }).water.value; // ≈ 400
 * diluteVinegar({ vinegar: '1 quart', acetic: '5 %', targetAcetic: '4 %' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function diluteVinegar(input: DiluteVinegarInput): DilutedVinegar {
  const { vinegar, acetic: strength, targetAcetic: target = LEAST_ACETIC } = readInput(diluteSchema, input);
  if (target < LEAST_ACETIC) {
    fail('OUT_OF_RANGE', 'targetAcetic', input.targetAcetic, 'at least 5 %: pickles need vinegar of 5 % acetic acid');
  }
  if (target > strength) {
    fail(
      'CONTRADICTION',
      'targetAcetic',
      input.targetAcetic ?? target,
      `at most the strength of the vinegar, ${strength}`,
    );
  }
  return answer({
    water: { value: vinegar.value * (strength / target - 1), unit: vinegar.unit },
    vinegar: { value: vinegar.value * (strength / target), unit: vinegar.unit },
    basis: [DILUTION, basisOf(pickleRule('vinegar-acidity'), 'least strength of vinegar for pickles')],
    cautions: [
      ...strongCaution(strength),
      ...(strength > 0.1 ? [acidCaution('strong-acid-burns')] : []),
      acidCaution('keep-the-proportions'),
    ],
  });
}
