import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import type { Given } from '../../common/given';
import { type FoundFood, food, form } from '../../foods/fields';
import { formName, nameOf } from '../../foods/tables';
import { fields, mass, optional, readInput, volume } from '../../quantity/fields';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import type { NotKnown } from '../../sources/no';
import { caution } from '../cautions';
import { inForms, inWords, missing } from '../shape';
import { basisOfRows, mapSpan, memoryCaution, spanIn, workedOut } from '../span';
import { type BulkDensity, densityOfFood, formsWeighed } from './weights';

const massSchema = fields({
  /** A food, raw or kept: `peach`, `applesauce`, `dried apples`, `sugar`. */
  food: food(),
  /** How it fills the measure: `slices`, `chopped`, `packed` ...; the measure printed without a form where left out. */
  form: optional(form()),
  /** How much of it, above zero. */
  volume: volume(),
});
const volumeSchema = fields({
  /** A food, raw or kept: `peach`, `applesauce`, `dried apples`, `sugar`. */
  food: food(),
  /** How it fills the measure: `slices`, `chopped`, `packed` ...; the measure printed without a form where left out. */
  form: optional(form()),
  /** How much of it, above zero. */
  mass: mass(),
});
export type MassFromVolumeInput = Given<z.input<typeof massSchema>>;
export type VolumeFromMassInput = Given<z.input<typeof volumeSchema>>;

interface Weighed {
  /** These tables weigh it. */
  readonly known: true;
  /** Its trade name. */
  readonly food: string;
  /** Its form, where one was named. */
  readonly form?: string;
  /** Mass of a volume of it as it fills a measure, voids included, in g/mL. */
  readonly density: Quantity<'density'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}
/** What a volume weighs. */
export interface MassOfVolume extends Weighed {
  /** The likely mass, in g. */
  readonly mass: Quantity<'mass'>;
  /** Over the measures the tables print; both ends are the likely mass where they print one. */
  readonly range: Range<Quantity<'mass'>>;
}
/** What volume a mass fills. */
export interface VolumeOfMass extends Weighed {
  /** The likely volume, in US cups. */
  readonly volume: Quantity<'volume'>;
  /** Over the measures the tables print; both ends are the likely volume where they print one. */
  readonly range: Range<Quantity<'volume'>>;
}

interface Asked {
  readonly food: FoundFood;
  readonly form?: string | undefined;
}

function weighed(asked: Asked): (Weighed & { readonly bulk: BulkDensity }) | NotKnown {
  const { id, form: kept } = asked.food;
  const { form } = asked;
  // a name that says how the food is kept leaves the form to say how it lies in the measure: dried peaches, halves
  const both = kept !== undefined && form !== undefined && form !== kept;
  const bulk = densityOfFood({ food: id, form: kept ?? form, filled: both ? form : undefined });
  const shown = form ?? kept;
  if (bulk === undefined) {
    return missing('no weight', `These tables do not weigh a measure of ${inWords(id, shown)}.`, [
      ...inForms(id, formsWeighed(id)),
      { text: 'Weigh a cup of it.' },
    ]);
  }
  return {
    known: true,
    food: nameOf(id),
    ...(shown === undefined ? {} : { form: formName(shown) }),
    bulk,
    density: { value: bulk.gramsPerMl.likely, unit: 'g/mL' },
    basis: bulk.estimated
      ? [workedOut('density', 'middle of the purees or juices of other foods, by weights of a cup')]
      : basisOfRows(id, bulk.rows, 'density', 'weight of a measure'),
    cautions: [caution('cup-packing'), ...(bulk.estimated ? [caution('estimate')] : []), ...memoryCaution(bulk.rows)],
  };
}

/**
 * What a volume of a food weighs, raw or kept, from published weights of household measures.
 *
 * mass = volume x (grams of the printed measure / its volume), with US measures.
 *
 * @returns `mass` in g, with its `range` over the printed measures and the `density` in g/mL; `known: false` where no
 *   table weighs the food, or this form of it
 * @throws StillroomError UNKNOWN_NAME for a food or form that is not in the pantry
 *
 * Source: USDA SR28, WEIGHT.txt; kitchen weights of salt and citric acid with it.
 *
 * @example
 * ```ts
 * import { massFromVolume } from 'stillroom/produce';
 *
 * const sliced = massFromVolume({ food: 'peaches', form: 'sliced', volume: '2 cups' });
 * sliced.known && sliced.mass; // => { value: 308, unit: 'g' }
 * massFromVolume({ food: 'pawpaw', volume: '2 cups' }).known; // => false
 * ```
 */
export function massFromVolume(input: MassFromVolumeInput): MassOfVolume | NotKnown {
  const given = readInput(massSchema, input);
  const found = weighed(given);
  if (!found.known) return answer(found);
  const { bulk, ...weight } = found;
  const milliliters = valueIn(given.volume, 'mL');
  const range = spanIn(
    mapSpan(bulk.gramsPerMl, (density) => density * milliliters),
    'g',
    'g',
  );
  return answer({ ...weight, mass: range.likely, range });
}

/**
 * The volume that a mass of a food fills: the inverse of `massFromVolume`.
 *
 * @returns `volume` in US cups, with its `range` and the `density` in g/mL; `known: false` as `massFromVolume`
 * @throws StillroomError UNKNOWN_NAME for a food or form that is not in the pantry
 *
 * @example
 * ```ts
 * import { volumeFromMass } from 'stillroom/produce';
 *
 * const strawberries = volumeFromMass({ food: 'strawberries', form: 'sliced', mass: '332 g' });
 * strawberries.known && strawberries.volume.value; // ≈ 2.00
 * ```
 */
export function volumeFromMass(input: VolumeFromMassInput): VolumeOfMass | NotKnown {
  const given = readInput(volumeSchema, input);
  const found = weighed(given);
  if (!found.known) return answer(found);
  const { bulk, ...weight } = found;
  const grams = valueIn(given.mass, 'g');
  const { low, likely, high } = bulk.gramsPerMl;
  const cups = (density: number): Quantity<'volume'> => quantityIn(grams / density, 'mL', 'cup');
  const range = { low: cups(high), likely: cups(likely), high: cups(low) };
  return answer({ ...weight, volume: range.likely, range });
}
