import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { temperature } from '../words/temperature';
import { COLDEST, HOTTEST, saturationPascals, saturationPressureBasis } from './saturation';
import { pressureLike } from './units';

const schema = /* @__PURE__ */ fields({
  /** Of the water or steam, 273.15 to 647.096 K. */
  temperature: temperature({ min: { value: COLDEST, unit: 'K' }, max: { value: HOTTEST, unit: 'K' } }),
});

export type SaturationPressureInput = z.input<typeof schema>;
export interface SaturationPressure {
  /** Absolute; in psi for a temperature in degF, otherwise in kPa. */
  readonly pressure: Quantity<'pressure'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * The pressure at which water boils at a temperature: the vapor pressure of pure water.
 *
 * Source: IAPWS-IF97 (R7-97(2012)) region 4, equation 30, with the coefficients of Table 34.
 *
 * @returns the absolute pressure, in psi for a temperature in degF and in kPa otherwise
 * @throws StillroomError OUT_OF_RANGE outside that range
 *
 * @example
 * ```ts
 * import { saturationPressure } from 'stillroom/steam';
 *
 * saturationPressure({ temperature: '300 K' }).pressure.value; // ≈ 3.53658941
 * saturationPressure({ temperature: '240 degF' }).pressure.value; // ≈ 24.985
 * saturationPressure({ temperature: '-5 degC' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function saturationPressure(input: SaturationPressureInput): SaturationPressure {
  const given = readInput(schema, input);
  return answer({
    pressure: pressureLike(given.temperature, saturationPascals(valueIn(given.temperature, 'K'))),
    basis: [saturationPressureBasis('pressure')],
    cautions: [],
  });
}
