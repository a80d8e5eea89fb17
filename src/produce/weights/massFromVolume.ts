import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fields, mass, name, optional, readInput, volume } from '../../quantity/fields';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { basisOf } from '../../sources/table';
import { caution } from '../cautions';
import { mapSpan, memoryCaution, spanIn, workedOut } from '../yields/span';
import { type BulkDensity, densityFor } from './weights';

const food = { food: name('a food, such as "peach", "applesauce" or "sugar"'), form: optional(name('a form')) };
const massSchema = fields({ ...food, volume: volume() });
const volumeSchema = fields({ ...food, mass: mass() });
export type MassFromVolumeInput = z.input<typeof massSchema>;
export type VolumeFromMassInput = z.input<typeof volumeSchema>;

interface Weighed {
  /** The food's name in the tables. */
  readonly food: string;
  /** Mass of a volume of it as it fills a measure, voids included. */
  readonly density: Quantity<'density'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}
export interface MassOfVolume extends Weighed {
  readonly mass: Quantity<'mass'>;
  /** Over the measures the tables print; both ends are the likely mass where they print one. */
  readonly range: Range<Quantity<'mass'>>;
}
export interface VolumeOfMass extends Weighed {
  readonly volume: Quantity<'volume'>;
  readonly range: Range<Quantity<'volume'>>;
}

function weighed(given: { food: string; form?: string | undefined }): Weighed & { bulk: BulkDensity } {
  const { name: foodName, density } = densityFor(given.food, given.form);
  const estimate = workedOut(
    'weight of a measure, from purees or juices of other foods',
    'median of SR28 weights per cup',
  );
  return {
    food: foodName,
    bulk: density,
    density: { value: density.gramsPerMl.likely, unit: 'g/mL' },
    basis: density.estimated ? [estimate] : joinBasis(density.rows.map((row) => basisOf(row, 'weight of a measure'))),
    cautions: [
      caution('cup-packing'),
      ...(density.estimated ? [caution('estimate')] : []),
      ...memoryCaution(density.rows),
    ],
  };
}

/**
 * What a volume of produce or of a stored food weighs, from published weights of household measures.
 *
 * mass = volume x (grams of the printed measure / its volume), with US measures.
 *
 * @param input.food - raw produce (`peach`) or a stored food (`applesauce`, `honey`, `raisin`, `sugar`)
 * @param input.form - how it fills the measure: `slices`, `chopped`, `whole`, `puree`, `juice`, `packed` ...; left
 *   out, the measure printed without a form; a cut that is not printed takes the figure of one that fills alike
 * @param input.volume - above zero
 * @returns `mass` in g, with its `range` over the printed measures and the `density` in g/mL
 * @throws StillroomError UNKNOWN_NAME for a food, or a form of it, that no table weighs
 *
 * Source: USDA SR28, WEIGHT.txt; kitchen weights of salt and citric acid beside it.
 *
 * @example
 * ```ts
 * import { massFromVolume } from 'stillroom/produce';
 *
 * massFromVolume({ food: 'peaches', form: 'sliced', volume: '2 cups' }).mass; // => { value: 308, unit: 'g' }
 * massFromVolume({ food: 'applesauce', volume: '1 quart' }).mass.value; // ≈ 976
 * ```
 */
export function massFromVolume(input: MassFromVolumeInput): MassOfVolume {
  const given = readInput(massSchema, input);
  const { bulk, ...weight } = weighed(given);
  const millilitres = valueIn(given.volume, 'mL');
  const range = spanIn(
    mapSpan(bulk.gramsPerMl, (density) => density * millilitres),
    'g',
    'g',
  );
  return answer({ ...weight, mass: range.likely, range });
}

/**
 * The volume that a mass of produce or of a stored food fills: `massFromVolume` turned round.
 *
 * @param input.food - raw produce or a stored food
 * @param input.form - how it fills the measure; see `massFromVolume`
 * @param input.mass - above zero
 * @returns `volume` in US cups, with its `range` and the `density` in g/mL
 * @throws StillroomError UNKNOWN_NAME for a food, or a form of it, that no table weighs
 *
 * @example
 * ```ts
 * import { volumeFromMass } from 'stillroom/produce';
 *
 * volumeFromMass({ food: 'strawberries', form: 'sliced', mass: '332 g' }).volume.value; // ≈ 2.00
 * ```
 */
export function volumeFromMass(input: VolumeFromMassInput): VolumeOfMass {
  const given = readInput(volumeSchema, input);
  const { bulk, ...weight } = weighed(given);
  const grams = valueIn(given.mass, 'g');
  const { low, likely, high } = bulk.gramsPerMl;
  const cups = (density: number): Quantity<'volume'> => quantityIn(grams / density, 'mL', 'cup');
  const range = { low: cups(high), likely: cups(likely), high: cups(low) };
  return answer({ ...weight, volume: range.likely, range });
}
