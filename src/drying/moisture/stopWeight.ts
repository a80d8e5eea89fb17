import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { dryerTemperature, dryingHeatBasis, GUIDE_DRYING_TEMPERATURE, heatToDry, START_C } from '../../heat/dryingHeat';
import { fields, mass, optional, readInput, share } from '../../quantity/fields';
import { mapRange, turnRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { refuseWetter, shareLeft } from '../../solution/massBalance';
import type { Basis, Caution } from '../../sources/index';
import { caution } from '../cautions';
import { fatFields, fatIfNamed } from '../guide/fat';
import { MOISTURE_BASES } from './moistureBasis';
import { moistureRange } from './moistureRange';

const schema = fields({
  ...fatFields,
  fresh: mass(),
  moisture: moistureRange(),
  targetMoisture: share({ below: 1 }),
  tare: optional(mass({ min: { value: 0, unit: 'g' } })),
  temperature: optional(dryerTemperature()),
});
export type StopWeightInput = z.input<typeof schema>;

export interface StopWeight {
  /** What the scale shows when the tray is done, tare included. */
  readonly weight: Range<Quantity<'mass'>>;
  /** The end of `weight` at which the tray is dry enough whatever the start moisture was within its range. */
  readonly safeEnd: 'low';
  readonly waterToRemove: Range<Quantity<'mass'>>;
  /** The least heat that takes the water out; a dryer draws more. */
  readonly energy: Range<Quantity<'energy'>>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The weight at which a tray of produce has reached its target moisture.
 *
 * weight = tare + fresh (1 - moisture) / (1 - target), both moistures on wet basis. The moister the produce was, the
 * less of it is solids and the less the dry tray weighs: the low end holds for the moistest start, so a tray dried to
 * the low end is dry enough in every case. A tray taken off at the likely weight still needs its dryness test.
 *
 * @param input.fresh - the ready produce on the tray as it goes in, without the tray
 * @param input.moisture - its moisture: one ratio, or `{ low, likely, high }`
 * @param input.targetMoisture - the moisture to reach: a number from 0 to below 1 or percent
 * @param input.food - what is dried: fat does not dry, and a fatty food gets a caution
 * @param input.fat - its share of fat, 0 to below 1 or percent; by `food` if not given
 * @param input.tare - weight of the empty tray, where the tray is weighed with the produce on it
 * @param input.temperature - of the dryer, 20 to 100 degC, for the energy; 140 degF if not given
 * @returns `weight` and `waterToRemove` in the unit of `fresh`, `energy` in kWh
 * @throws StillroomError CONTRADICTION when the target is wetter than the low end of the start
 *
 * @example
 * ```ts
 * import { stopWeight } from 'stillroom/drying';
 *
 * const { weight, safeEnd } = stopWeight({
 *   fresh: '1000 g',
 *   moisture: { low: '84 %', likely: '86 %', high: '88 %' },
 *   targetMoisture: '20 %',
 * });
 * weight.low.value; // ≈ 150
 * weight.likely.value; // ≈ 175
 * safeEnd; // => 'low'
 * ```
 */
export function stopWeight(input: StopWeightInput): StopWeight {
  const given = readInput(schema, input);
  const { fresh, moisture, targetMoisture, tare, temperature = GUIDE_DRYING_TEMPERATURE } = given;
  refuseWetter(moisture.low, targetMoisture, input.targetMoisture);
  const fat = fatIfNamed(given.food, given.fat, moisture.likely);
  const { unit } = fresh;
  const empty = tare === undefined ? 0 : valueIn(tare, unit);
  const dryerC = valueIn(temperature, 'degC');
  const freshKg = valueIn(fresh, 'kg');
  const left = mapRange(moisture, (start) => shareLeft(start, targetMoisture));
  return answer({
    weight: turnRange(mapRange(left, (share) => ({ value: empty + fresh.value * share, unit }))),
    safeEnd: 'low',
    waterToRemove: mapRange(left, (share) => ({ value: fresh.value * (1 - share), unit })),
    energy: mapRange(left, (share) =>
      quantityIn(heatToDry(freshKg, freshKg * (1 - share), START_C, dryerC), 'kJ', 'kWh'),
    ),
    basis: [MOISTURE_BASES, ...dryingHeatBasis('energy'), ...fat.basis],
    cautions: [...fat.cautions, caution('estimate')],
  });
}
