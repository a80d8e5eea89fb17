import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fields, number, optional, readInput } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/basis';
import { saturationPascals } from '../../steam/saturation';
import { area } from '../../words/area';
import { dried as driedWord } from '../../words/dried';
import { moisture as moistureWord, relativeHumidity as relativeHumidityWord } from '../../words/shares';
import { temperature } from '../../words/temperature';
import { time } from '../../words/time';
import { volume } from '../../words/volume';
import { caution } from '../cautions';

const schema = /* @__PURE__ */ fields({
  /** The dried food: a mass above zero. */
  dried: driedWord(),
  /** Its moisture when packed, wet basis: 0 to below 1, or percent. */
  moisture: moistureWord({ below: 1 }),
  /** The bag, where it lets water through; leave it out for glass. */
  bag: optional(
    fields({
      /** Both faces: above zero. */
      area: area(),
      /** Grams of water that pass a square meter in a day: 0 to 1,000. */
      transmission: number('grams of water that pass a square meter in a day: 0 to 1,000', { min: 0, max: 1000 }),
      /** In the store: above zero. */
      time: time(),
    }),
  ),
  /** The air sealed in with the food. */
  sealedAir: optional(
    fields({
      /** How much air: above zero. */
      volume: volume(),
      /** Its relative humidity: 0 to 1, or percent. */
      relativeHumidity: relativeHumidityWord(),
      /** Its temperature: 0 to 60 degC. */
      temperature: temperature({ min: { value: 0, unit: 'degC' }, max: { value: 60, unit: 'degC' } }),
    }),
  ),
});
export type MoistureAfterStorageInput = z.input<typeof schema>;

export interface MoistureAfterStorage {
  /** Wet basis, when all the water has gone into the food. */
  readonly moisture: number;
  /** Water that the food has taken up, in g. */
  readonly gained: Quantity<'mass'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

const GAS_CONSTANT = 8.314462618; // J/(mol K)
const WATER_MOLE = 18.015268; // g/mol

/**
 * The moisture of dried food after storage: what passes through the bag, and what the air sealed in with it held.
 *
 * gained = transmission x bag area x days + volume of air x humidity x saturation pressure / (R T). It is an upper
 * bound: a bag lets less through as the food inside gets moister. Glass lets nothing through: leave out `bag`.
 *
 * @returns `moisture` wet basis, `gained` in g
 * @throws StillroomError OUT_OF_RANGE, WRONG_DIMENSION
 *
 * @example
 * ```ts
 * import { moistureAfterStorage } from 'stillroom/drying';
 *
 * moistureAfterStorage({
 *   dried: '500 g',
 *   moisture: '2 %',
 *   bag: { area: '0.12 m2', transmission: 0.5, time: '365 days' },
 * }).moisture; // ≈ 0.061
 * ```
 */
export function moistureAfterStorage(input: MoistureAfterStorageInput): MoistureAfterStorage {
  const { dried, moisture, bag, sealedAir } = readInput(schema, input);
  const grams = valueIn(dried, 'g');
  const through = bag === undefined ? 0 : bag.transmission * valueIn(bag.area, 'm2') * valueIn(bag.time, 'day');
  let sealed = 0;
  if (sealedAir !== undefined) {
    const kelvin = valueIn(sealedAir.temperature, 'K');
    const pascals = saturationPascals(kelvin) * sealedAir.relativeHumidity;
    sealed = ((pascals * valueIn(sealedAir.volume, 'm3')) / (GAS_CONSTANT * kelvin)) * WATER_MOLE;
  }
  const gained = through + sealed;
  const note = 'water gained = through the bag + in the sealed air';
  return answer({
    moisture: (moisture * grams + gained) / (grams + gained),
    gained: { value: gained, unit: 'g' },
    basis: [
      { of: 'moisture', kind: 'equation', note },
      { of: 'gained', kind: 'equation', note },
    ],
    cautions: [caution('estimate')],
  });
}
