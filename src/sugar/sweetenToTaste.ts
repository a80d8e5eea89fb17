import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, isMass, massOrVolume, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { MassInput, Quantity, VolumeInput } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { sugarCaution } from './cautions';
import { cupOf, sweetenerBasis } from './sweeteners';

const schema = fields({ sample: massOrVolume(), added: massOrVolume(), pot: massOrVolume() });
export interface SweetenToTasteInput {
  /** What was tasted: `"1 cup"`. */
  readonly sample: MassInput | VolumeInput;
  /** The sugar that made it right: `"1 tsp"`. */
  readonly added: MassInput | VolumeInput;
  /** What is still to be sweetened, of the same kind as the sample. */
  readonly pot: MassInput | VolumeInput;
}
export interface SweetenedToTaste {
  /** Sugar for the pot, in the unit it was measured in for the sample. */
  readonly sugar: Quantity<'mass'> | Quantity<'volume'>;
  /** The same on a scale. */
  readonly mass: Quantity<'mass'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Scales a tasted sample to the pot: if a teaspoon of sugar made a cup of it right, so many cups want so much.
 *
 * Formula: sugar = added x pot / sample. Sweetness is a matter of taste and of temperature, so the cook's own sample
 * decides and nothing else does. Common practice; granulated sugar at 200 g a cup (USDA SR28).
 *
 * @param input - `sample` and `pot`: both volumes or both masses; `added`: sugar, as a volume or a mass
 * @throws StillroomError WRONG_DIMENSION where the sample is weighed and the pot measured, or the other way round
 *
 * @example
 * ```ts
 * import { sweetenToTaste } from 'stillroom/sugar';
 *
 * sweetenToTaste({ sample: '1 cup', added: '1 tsp', pot: '6 quarts' }).sugar; // => { value: 24, unit: 'tsp' }
 * ```
 */
export function sweetenToTaste(input: SweetenToTasteInput): SweetenedToTaste {
  const { sample, added, pot } = readInput(schema, input);
  if (isMass(sample) !== isMass(pot)) {
    fail('WRONG_DIMENSION', 'pot', input.pot, `a ${isMass(sample) ? 'mass' : 'volume'}, as the sample is one`);
  }
  const times =
    isMass(sample) && isMass(pot)
      ? valueIn(pot, sample.unit) / sample.value
      : valueIn(pot as Quantity<'volume'>, 'mL') / valueIn(sample as Quantity<'volume'>, 'mL');
  const sugar = { ...added, value: Number((added.value * times).toPrecision(14)) };
  const grams = isMass(sugar) ? valueIn(sugar, 'g') : valueIn(sugar as Quantity<'volume'>, 'cup') * cupOf('sugar');
  return answer({
    sugar,
    mass: quantityIn(grams, 'g', isMass(added) ? added.unit : 'g'),
    basis: [{ of: 'sugar for the pot', kind: 'measured' }, ...sweetenerBasis('sugar', 'weight of a cup of sugar')],
    cautions: [sugarCaution('taste-at-serving-temperature'), caution('estimate')],
  });
}
