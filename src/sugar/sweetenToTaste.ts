import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, isMass, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { amount } from '../words/amount';
import { sugarCaution } from './cautions';
import { cupOf, sugarBasis } from './sweeteners';

const schema = fields({
  /** What was tasted, by volume or by mass: `"1 cup"`. */
  sample: amount(),
  /** The sugar that made it right, by volume or by mass: `"1 tsp"`. */
  sugarAdded: amount(),
  /** What is still to be sweetened, measured or weighed as the sample was. */
  toSweeten: amount(),
});
export type SweetenToTasteInput = z.input<typeof schema>;
export interface SweetenedToTaste {
  /** Sugar for the pot, on a scale. */
  readonly sugar: Quantity<'mass'>;
  /** The same by measure, in the unit it was measured in for the sample. */
  readonly sugarVolume: Quantity<'volume'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/**
 * Scales a tasted sample to the pot: if a teaspoon of sugar made a cup of it right, each cup of the pot takes one.
 *
 * Formula: sugar = sugarAdded x pot / sample. Sweetness is a matter of taste and of temperature, so your own sample
 * decides; `sweeten` needs a Brix instead. Granulated sugar at 200 g a cup (USDA SR28).
 *
 * @param input - `sample` and `toSweeten`: both volumes or both masses; `sugarAdded`: sugar, as a volume or a mass
 * @throws StillroomError WRONG_DIMENSION where the sample is weighed and the pot measured, or the other way round
 *
 * @example
 * ```ts
 * import { sweetenToTaste } from 'stillroom/sugar';
 *
 * sweetenToTaste({ sample: '1 cup', sugarAdded: '1 tsp', toSweeten: '6 quarts' }).sugarVolume; // => { value: 24, unit: 'tsp' }
 * ```
 */
export function sweetenToTaste(input: SweetenToTasteInput): SweetenedToTaste {
  const { sample, sugarAdded, toSweeten: pot } = readInput(schema, input);
  if (isMass(sample) !== isMass(pot)) {
    fail(
      'WRONG_DIMENSION',
      'toSweeten',
      input.toSweeten,
      `a ${isMass(sample) ? 'mass' : 'volume'}, as the sample is one`,
    );
  }
  const times =
    isMass(sample) && isMass(pot)
      ? valueIn(pot, sample.unit) / sample.value
      : valueIn(pot as Quantity<'volume'>, 'mL') / valueIn(sample as Quantity<'volume'>, 'mL');
  const value = Number((sugarAdded.value * times).toPrecision(14));
  const cup = cupOf('sugar');
  const grams = isMass(sugarAdded)
    ? valueIn({ ...sugarAdded, value }, 'g')
    : valueIn({ ...sugarAdded, value } as Quantity<'volume'>, 'cup') * cup;
  return answer({
    sugar: isMass(sugarAdded) ? { ...sugarAdded, value } : quantityIn(grams, 'g', 'g'),
    sugarVolume: isMass(sugarAdded)
      ? { value: grams / cup, unit: 'cup' }
      : ({ ...sugarAdded, value } as Quantity<'volume'>),
    basis: [{ of: 'sugar', kind: 'measured', note: 'your own sample' }, sugarBasis('sugarVolume')],
    cautions: [sugarCaution('taste-at-serving-temperature'), caution('estimate')],
  });
}
