import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { iceBasis, icePressure, iceTemperatureField } from './ice';

const schema = /* @__PURE__ */ fields({
  /** Of the ice, 50 to 273.16 K (0.01 degC). */
  temperature: iceTemperatureField(),
});
export type IceVapourPressureInput = z.input<typeof schema>;

export interface IceVapourPressure {
  /** Of the water vapor over the ice, Pa. */
  readonly pressure: Quantity<'pressure'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * The vapor pressure over ice: below it ice sublimes, above it vapor settles as frost.
 *
 * IAPWS R14-08 (2011) Eq. 6, from 50 K to the triple point, 273.16 K (0.01 degC).
 *
 * @returns `pressure` in Pa
 * @throws StillroomError OUT_OF_RANGE where there is no ice, or the formula does not reach
 *
 * @example
 * ```ts
 * import { iceVapourPressure } from 'stillroom/heat';
 *
 * iceVapourPressure({ temperature: '-43.15 degC' }).pressure.value; // ≈ 8.94735
 * ```
 */
export function iceVapourPressure(input: IceVapourPressureInput): IceVapourPressure {
  const { temperature } = readInput(schema, input);
  return answer({
    pressure: { value: icePressure(valueIn(temperature, 'K')), unit: 'Pa' },
    basis: iceBasis('pressure'),
    cautions: [],
  });
}
