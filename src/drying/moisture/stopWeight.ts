import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { dryerTemperature, dryingHeatBasis, GUIDE_DRYING_TEMPERATURE, heatToDry, START_C } from '../../heat/dryingHeat';
import { fields, optional, readInput } from '../../quantity/fields';
import { mapRange, turnRange } from '../../quantity/range';
import { quantityIn, valueIn } from '../../quantity/scale';
import type { Quantity, Range } from '../../quantity/types';
import { balanceBasis, refuseWetter, shareLeft } from '../../solution/massBalance';
import type { Basis, Caution } from '../../sources/index';
import { mass } from '../../words/mass';
import { targetMoisture as targetMoistureWord } from '../../words/shares';
import { caution } from '../cautions';
import { fatFields, fatIfNamed } from '../guide/fat';
import { moistureRange } from './moistureRange';

const schema = /* @__PURE__ */ fields({
  ...fatFields,
  /** The ready food on the tray as it goes in, without the tray: a mass above zero. */
  fresh: mass(),
  /** Its moisture, wet basis: 0 to below 1 or percent, one or `{ low, likely, high }`. */
  moisture: moistureRange(),
  /** The moisture to reach, wet basis: 0 to below 1, or percent. */
  targetMoisture: targetMoistureWord({ below: 1 }),
  /** Mass of the empty tray, where you weigh the tray with the food on it; 0 or more. */
  tare: optional(mass({ min: { value: 0, unit: 'g' } })),
  /** Of the dryer, 20 to 100 degC, for the energy; 140 degF if not given. */
  temperature: optional(dryerTemperature()),
});
export type StopWeightInput = z.input<typeof schema>;

export interface StopWeight {
  /** What the scale shows when the tray is done, tare included. */
  readonly stopWeight: Range<Quantity<'mass'>>;
  /** The end of `stopWeight` at which the tray is dry enough whatever the start moisture was within its range. */
  readonly safeEnd: 'low';
  /** The water that has to go. */
  readonly waterRemoved: Range<Quantity<'mass'>>;
  /** The least heat that takes the water out; a dryer draws more. */
  readonly energy: Range<Quantity<'energy'>>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * What the scale shows when a tray of food has reached its target moisture.
 *
 * stop weight = tare + fresh (1 - moisture) / (1 - target), both moistures on wet basis. The moister the food was, the
 * less of it is solids and the less the dry tray weighs: the low end holds for the moistest start, so a tray dried to
 * the low end is dry enough in every case. A tray taken off at the likely weight still needs its dryness test.
 *
 * @returns `stopWeight` and `waterRemoved` in the unit of `fresh`, `energy` in kWh
 * @throws StillroomError CONTRADICTION when the target is wetter than the low end of the start
 *
 * @example
 * ```ts
 * import { stopWeight } from 'stillroom/drying';
 *
 * const { stopWeight: scale, safeEnd } = stopWeight({
 *   fresh: '1000 g',
 *   moisture: { low: '84 %', likely: '86 %', high: '88 %' },
 *   targetMoisture: '20 %',
 * });
 * scale.low.value; // ≈ 150
 * scale.likely.value; // ≈ 175
 * safeEnd; // => 'low'
 * ```
 */
export function stopWeight(input: StopWeightInput): StopWeight {
  const given = readInput(schema, input);
  const { fresh, moisture, targetMoisture, tare, temperature = GUIDE_DRYING_TEMPERATURE } = given;
  refuseWetter(moisture.low, targetMoisture, input.targetMoisture);
  const fat = fatIfNamed(given, moisture.likely, 'stopWeight', input.form);
  const { unit } = fresh;
  const empty = tare === undefined ? 0 : valueIn(tare, unit);
  const dryerC = valueIn(temperature, 'degC');
  const freshKg = valueIn(fresh, 'kg');
  const left = mapRange(moisture, (start) => shareLeft(start, targetMoisture));
  return answer({
    stopWeight: turnRange(mapRange(left, (part) => ({ value: empty + fresh.value * part, unit }))),
    safeEnd: 'low',
    waterRemoved: mapRange(left, (part) => ({ value: fresh.value * (1 - part), unit })),
    energy: mapRange(left, (part) =>
      quantityIn(heatToDry(freshKg, freshKg * (1 - part), START_C, dryerC), 'kJ', 'kWh'),
    ),
    basis: [balanceBasis('stopWeight'), balanceBasis('waterRemoved'), ...dryingHeatBasis('energy'), ...fat.basis],
    cautions: [...fat.cautions, caution('estimate')],
  });
}
