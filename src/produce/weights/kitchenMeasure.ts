import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import type { Given } from '../../common/given';
import { fail } from '../../errors/StillroomError';
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
import { type ContainerWeight, type ContainerWeightInput, containerWeight } from './containerWeight';
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
/** What a volume weighs. */
export type MassOfVolumeInput = Given<z.input<typeof massSchema>>;
/** What volume a mass fills. */
export type VolumeOfMassInput = Given<z.input<typeof volumeSchema>>;
/** A volume to weigh, a mass to measure, or a container that trade and law give a weight. */
export type KitchenMeasureInput = MassOfVolumeInput | VolumeOfMassInput | ContainerWeightInput;

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
  readonly massRange: Range<Quantity<'mass'>>;
}
/** What volume a mass fills. */
export interface VolumeOfMass extends Weighed {
  /** The likely volume, in US cups. */
  readonly volume: Quantity<'volume'>;
  /** Over the measures the tables print; both ends are the likely volume where they print one. */
  readonly volumeRange: Range<Quantity<'volume'>>;
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
 * What a volume of a food weighs, or what volume a mass of it fills, raw or kept, from published weights of household
 * measures: cups to grams and back; and what the food in a customary container weighs: a bushel of apples, a lug of
 * cherries, a flat of strawberries.
 *
 * mass = volume x (grams of the printed measure / its volume), with US measures. A bushel is a
 * volume, but trade and law give it a weight for each food, as they do a lug or a flat: the likely one is the canning
 * guide's where it prints one, else the middle of what extension tables print.
 *
 * @returns for a `volume`: `mass` in g; for a `mass`: `volume` in US cups; each with its range over the printed
 *   measures and the `density` in g/mL; for a `container`: `raw` in lb, net as bought; `known: false` where no table
 * weighs the food, or this form of it
 * @throws StillroomError UNKNOWN_NAME for a food or form that is not in the pantry; MISSING with neither a volume nor a
 *   mass, CONTRADICTION with both; UNKNOWN_NAME for a State without a law
 *
 * Source: USDA SR28, WEIGHT.txt; kitchen weights of salt and citric acid with it. Containers: Complete Guide to Home
 * Canning; UGA Circular 780; Georgia yield chart; State codes.
 *
 * @example
 * ```ts
 * import { kitchenMeasure } from 'stillroom/produce';
 *
 * const sliced = kitchenMeasure({ food: 'peaches', form: 'sliced', volume: '2 cups' });
 * sliced.known && sliced.mass; // => { value: 308, unit: 'g' }
 * const strawberries = kitchenMeasure({ food: 'strawberries', form: 'sliced', mass: '332 g' });
 * strawberries.known && strawberries.volume.value; // ≈ 2.00
 * kitchenMeasure({ food: 'pawpaw', volume: '2 cups' }).known; // => false
 * const bushel = kitchenMeasure({ food: 'apples', container: 'bushel' });
 * bushel.known && bushel.raw.likely; // => { value: 48, unit: 'lb' }
 * const indiana = kitchenMeasure({ food: 'apples', container: 'bushel', state: 'Indiana' });
 * indiana.known && indiana.raw.likely; // => { value: 42, unit: 'lb' }
 * ```
 */
export function kitchenMeasure(input: MassOfVolumeInput): MassOfVolume | NotKnown;
export function kitchenMeasure(input: VolumeOfMassInput): VolumeOfMass | NotKnown;
export function kitchenMeasure(input: ContainerWeightInput): ContainerWeight | NotKnown;
export function kitchenMeasure(input: KitchenMeasureInput): MassOfVolume | VolumeOfMass | ContainerWeight | NotKnown {
  const asked = input as Partial<MassOfVolumeInput & VolumeOfMassInput & ContainerWeightInput> | null | undefined;
  if (asked?.container !== undefined) return containerWeight(input as ContainerWeightInput);
  if (asked?.mass === undefined) return answer(massOf(input as MassOfVolumeInput));
  if (asked.volume !== undefined) fail('CONTRADICTION', 'mass', asked.mass, 'a volume or a mass, not both');
  return answer(volumeOf(input as VolumeOfMassInput));
}

function massOf(input: MassOfVolumeInput): MassOfVolume | NotKnown {
  const given = readInput(massSchema, input);
  const found = weighed(given);
  if (!found.known) return found;
  const { bulk, ...weight } = found;
  const milliliters = valueIn(given.volume, 'mL');
  const range = spanIn(
    mapSpan(bulk.gramsPerMl, (density) => density * milliliters),
    'g',
    'g',
  );
  return { ...weight, mass: range.likely, massRange: range };
}

function volumeOf(input: VolumeOfMassInput): VolumeOfMass | NotKnown {
  const given = readInput(volumeSchema, input);
  const found = weighed(given);
  if (!found.known) return found;
  const { bulk, ...weight } = found;
  const grams = valueIn(given.mass, 'g');
  const { low, likely, high } = bulk.gramsPerMl;
  const cups = (density: number): Quantity<'volume'> => quantityIn(grams / density, 'mL', 'cup');
  const range = { low: cups(high), likely: cups(likely), high: cups(low) };
  return { ...weight, volume: range.likely, volumeRange: range };
}
