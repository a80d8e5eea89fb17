import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, readInput } from '../quantity/fields';
import { formatQuantity } from '../quantity/formatQuantity';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { elevation } from '../words/elevation';
import { temperature } from '../words/temperature';
import { atmosphereBasis, standardPressure } from './atmosphere';
import { COLDEST, saturationKelvin, saturationPascals, saturationPressureBasis } from './saturation';
import { steamCautions } from './steamTemperature';
import { pressureLike, temperatureLike } from './units';

/** The steam of 100 psi, as far as `steamTemperature` reads a gauge. */
const WARMEST = { value: 170, unit: 'degC' } as const;

const schema = /* @__PURE__ */ fields({
  /** Of the steam, from the boil at that elevation to 170 degC. */
  temperature: temperature({ min: { value: COLDEST, unit: 'K' }, max: WARMEST }),
  /** Of the kitchen, -500 to 5,000 m. */
  elevation: elevation(),
});

export type GaugeForTemperatureInput = z.input<typeof schema>;
export interface GaugeForTemperature {
  /** What the gauge must show; in psi for an elevation in feet, otherwise in kPa. */
  readonly gauge: Quantity<'pressure'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * What a gauge shows when the steam in a vented canner is at a temperature: the inverse of `steamTemperature`.
 *
 * gauge = psat(T) - air pressure. It explains the printed pressures and never replaces them.
 *
 * Source: IAPWS-IF97 equation 30; U.S. Standard Atmosphere 1976.
 *
 * @returns the gauge pressure, in psi for an elevation in feet and in kPa otherwise
 * @throws StillroomError OUT_OF_RANGE below the boiling point there
 *
 * @example
 * ```ts
 * import { gaugeForTemperature } from 'stillroom/steam';
 *
 * gaugeForTemperature({ temperature: '240 degF', elevation: '2000 ft' }).gauge.value; // ≈ 11.32
 * gaugeForTemperature({ temperature: '200 degF', elevation: '0 ft' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function gaugeForTemperature(input: GaugeForTemperatureInput): GaugeForTemperature {
  const given = readInput(schema, input);
  const air = standardPressure(valueIn(given.elevation, 'm'));
  const gauge = saturationPascals(valueIn(given.temperature, 'K')) - air;
  if (gauge < 0) {
    const boiling = formatQuantity(temperatureLike(given.elevation, saturationKelvin(air)), { step: 0.1 });
    fail('OUT_OF_RANGE', 'temperature', input.temperature, `at least the boiling point there, ${boiling}`);
  }
  return answer({
    gauge: pressureLike(given.elevation, gauge),
    basis: [saturationPressureBasis('gauge'), atmosphereBasis('gauge')],
    cautions: steamCautions(),
  });
}
