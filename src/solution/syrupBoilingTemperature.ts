import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { brix } from '../words/brix';
import { MOST_BRIX, placeFields, placeOf, riseBasis, risesAt } from './boilingRise';

const schema = /* @__PURE__ */ fields({
  /** Strength of the syrup, 0 to 95 degrees Brix. */
  brix: brix({ max: MOST_BRIX }),
  ...placeFields,
});
export type SyrupBoilingTemperatureInput = z.input<typeof schema>;
export interface SyrupBoilingTemperature {
  /** Of the boiling syrup; in degF for an elevation in feet, otherwise in degC. */
  readonly temperature: Quantity<'temperature'>;
  /** What the published sources make of it: the lowest, the one followed, the highest. */
  readonly temperatureRange: Range<Quantity<'temperature'>>;
  /** Of boiling water, in the same pot. */
  readonly boiling: Quantity<'temperature'>;
  /** Degrees C above boiling water by each source, under its id. */
  readonly rises: Readonly<Record<string, number>>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * The temperature at which a sucrose syrup boils: what the thermometer shows in a jam or syrup of this strength.
 * `brixFrom` is the inverse.
 *
 * Followed: Starzak and Peacock's water activity of sucrose solutions (1997) with the vapor pressure of water by
 * IAPWS-IF97, solved for aw(T) x psat(T) = air pressure; good at every elevation. Sources differ: at sea level and
 * 70 Brix this gives a rise of 5.0 degC, Browne's handbook of 1912 (which kitchen charts follow) 6.5, and
 * Batterham and Norgate's fit to raw cane syrups (recalled) 6.1. The range shows them; Browne's sea-level figures
 * are scaled to the elevation as the equation scales. Fruit acids and invert sugar raise the boiling point of a jam
 * above that of pure sucrose, toward the high end.
 *
 * @param input - `brix`: 0 to 95; `elevation` (-500 to 5,000 m) or `pressure` (5 to 200 kPa absolute), sea level
 * when neither is given
 * @returns temperatures in degF for an elevation in feet, otherwise in degC
 * @throws StillroomError OUT_OF_RANGE, CONTRADICTION
 *
 * @example
 * ```ts
 * import { syrupBoilingTemperature } from 'stillroom/solution';
 *
 * syrupBoilingTemperature({ brix: 70 }).temperature.value; // ≈ 104.96
 * syrupBoilingTemperature({ brix: 65, elevation: '5000 ft' }).temperature.value; // ≈ 209.5
 * ```
 */
export function syrupBoilingTemperature(input: SyrupBoilingTemperatureInput): SyrupBoilingTemperature {
  const given = readInput(schema, input);
  const place = placeOf(given);
  const { likely: rise, bySource } = risesAt(given.brix, place.pascals);
  const water = valueIn(place.water, 'K');
  const at = (degrees: number) => quantityIn(water + degrees, 'K', place.water.unit);
  const likely = at(rise);
  const all = Object.values(bySource);
  return answer({
    temperature: likely,
    temperatureRange: { low: at(Math.min(...all)), likely, high: at(Math.max(...all)) },
    boiling: place.water,
    rises: bySource,
    basis: [
      ...riseBasis('temperature', 'temperatureRange'),
      ...place.basis.map((line) => ({ ...line, of: 'boiling' })),
    ],
    cautions: place.cautions,
  });
}
