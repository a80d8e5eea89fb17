import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { elevation } from '../words/elevation';
import { gauge } from '../words/gauge';
import { atmosphereBasis, standardPressure } from './atmosphere';
import { steamCaution } from './cautions';
import { saturationBasis, saturationKelvin } from './saturation';
import { pressureLike, temperatureLike } from './units';

const schema = /* @__PURE__ */ fields({
  /** What the gauge shows, 0 to 100 psi. */
  gauge: gauge({ max: { value: 100, unit: 'psi' } }),
  /** Of the kitchen, -500 to 5,000 m. */
  elevation: elevation(),
});

export type SteamTemperatureInput = z.input<typeof schema>;
export interface SteamTemperature {
  /** In degF for an elevation in feet, otherwise in degC. */
  readonly temperature: Quantity<'temperature'>;
  /** Absolute pressure inside: the gauge and the air together. */
  readonly pressure: Quantity<'pressure'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

export const steamCautions = (): Caution[] =>
  ['physics-explains-tables', 'air-in-canner', 'weather-moves-boiling'].map(steamCaution);

/**
 * How hot the steam in a vented pressure canner is when its gauge shows a pressure at an elevation.
 *
 * A gauge shows the pressure above the air outside, and the air is thinner higher up: the same gauge reading is less
 * steam. T = Tsat(gauge + air pressure).
 *
 * It explains the printed pressures and never replaces them.
 *
 * Source: U.S. Standard Atmosphere 1976; IAPWS-IF97 equation 31.
 *
 * @returns the temperature, in degF for an elevation in feet and in degC otherwise, and the absolute pressure
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { steamTemperature } from 'stillroom/steam';
 *
 * steamTemperature({ gauge: '11 psi', elevation: '2000 ft' }).temperature.value; // ≈ 239.3
 * steamTemperature({ gauge: '10 psi', elevation: '0 ft' }).temperature.value; // ≈ 239.4
 * steamTemperature({ gauge: '-1 psi', elevation: '0 ft' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function steamTemperature(input: SteamTemperatureInput): SteamTemperature {
  const given = readInput(schema, input);
  const absolute = valueIn(given.gauge, 'Pa') + standardPressure(valueIn(given.elevation, 'm'));
  return answer({
    temperature: temperatureLike(given.elevation, saturationKelvin(absolute)),
    pressure: pressureLike(given.gauge, absolute),
    basis: [atmosphereBasis('pressure'), saturationBasis('temperature')],
    cautions: steamCautions(),
  });
}
