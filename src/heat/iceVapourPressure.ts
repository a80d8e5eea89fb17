import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { pressure } from '../words/pressure';
import { COLDEST_K, iceBasis, icePressure, iceTemperature, iceTemperatureField, TRIPLE_PA } from './ice';

const schema = /* @__PURE__ */ fields({
  /** Of the ice, 50 to 273.16 K (0.01 degC); or `pressure`. */
  temperature: optional(iceTemperatureField()),
  /** Of the vapor, as a gauge on the chamber shows it: up to 611.657 Pa, the triple point; or `temperature`. */
  pressure: optional(pressure({ max: { value: TRIPLE_PA, unit: 'Pa' } })),
});
export type IceVapourPressureInput = z.input<typeof schema>;

export interface IceVapourPressure {
  /** Of the water vapor over the ice: in Pa, or as given. */
  readonly pressure: Quantity<'pressure'>;
  /** Of the ice: as given, or in degC. */
  readonly temperature: Quantity<'temperature'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * The vapor pressure over ice: below it ice sublimes, above it vapor settles as frost. Or, from the pressure that the
 * gauge of a freeze-dryer shows, how cold the ice in it stays.
 *
 * IAPWS R14-08 (2011) Eq. 6, from 50 K to the triple point, 273.16 K (0.01 degC).
 *
 * @returns `pressure` and `temperature`; what you gave stays in your unit, the other is in Pa or degC
 * @throws StillroomError OUT_OF_RANGE where there is no ice, or the formula does not reach; MISSING without both,
 *   CONTRADICTION with both
 *
 * @example
 * ```ts
 * import { iceVapourPressure } from 'stillroom/heat';
 *
 * iceVapourPressure({ temperature: '-43.15 degC' }).pressure.value; // ≈ 8.94735
 * iceVapourPressure({ pressure: '103.239 Pa' }).temperature.value; // ≈ -20.00
 * ```
 */
export function iceVapourPressure(input: IceVapourPressureInput): IceVapourPressure {
  const { temperature: ice, pressure: vapor } = readInput(schema, input);
  if (ice !== undefined && vapor !== undefined) {
    fail('CONTRADICTION', 'pressure', input.pressure, 'a temperature or a pressure, not both');
  }
  if (ice !== undefined) {
    const over: Quantity<'pressure'> = { value: icePressure(valueIn(ice, 'K')), unit: 'Pa' };
    return answer({ pressure: over, temperature: ice, basis: iceBasis('pressure'), cautions: [] });
  }
  if (vapor === undefined) fail('MISSING', 'temperature', undefined, 'the temperature of the ice, or the pressure');
  const pascal = valueIn(vapor, 'Pa');
  const least = icePressure(COLDEST_K);
  if (pascal > TRIPLE_PA || pascal < least) {
    fail('OUT_OF_RANGE', 'pressure', input.pressure, `a pressure from ${least.toExponential(2)} to ${TRIPLE_PA} Pa`);
  }
  return answer({
    pressure: vapor,
    temperature: quantityIn(iceTemperature(pascal), 'K', 'degC'),
    basis: iceBasis('temperature'),
    cautions: [],
  });
}
