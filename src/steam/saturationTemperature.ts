import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { pressure } from '../words/pressure';
import { HIGHEST_PRESSURE, LOWEST_PRESSURE, saturationBasis, saturationKelvin } from './saturation';
import { temperatureLike } from './units';

/** An absolute pressure on the saturation line. */
export const saturatedPressure = () =>
  pressure({ min: { value: LOWEST_PRESSURE, unit: 'Pa' }, max: { value: HIGHEST_PRESSURE, unit: 'Pa' } });

const schema = /* @__PURE__ */ fields({
  /** Absolute (not gauge), 611.212677 Pa to 22.064 MPa. */
  pressure: saturatedPressure(),
});

export type SaturationTemperatureInput = z.input<typeof schema>;
export interface SaturationTemperature {
  /** In degF for a pressure in psi or inHg, otherwise in degC. */
  readonly temperature: Quantity<'temperature'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * The temperature of pure steam, or of boiling water, at an absolute pressure.
 *
 * Source: IAPWS-IF97 (R7-97(2012)) region 4, equation 31, with the coefficients of Table 34.
 *
 * @returns the temperature, in degF for a pressure in psi or inHg and in degC otherwise
 * @throws StillroomError OUT_OF_RANGE outside that range
 *
 * @example
 * ```ts
 * import { saturationTemperature } from 'stillroom/steam';
 *
 * saturationTemperature({ pressure: '0.1 MPa' }).temperature.value; // ≈ 99.605919
 * saturationTemperature({ pressure: '25 psi' }).temperature.value; // ≈ 240.03
 * saturationTemperature({ pressure: '0 psi' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function saturationTemperature(input: SaturationTemperatureInput): SaturationTemperature {
  const given = readInput(schema, input);
  return answer({
    temperature: temperatureLike(given.pressure, saturationKelvin(valueIn(given.pressure, 'Pa'))),
    basis: [saturationBasis('temperature')],
    cautions: [],
  });
}
