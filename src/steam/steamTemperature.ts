import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput } from '../quantity/fields';
import { formatQuantity } from '../quantity/formatQuantity';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { elevation } from '../words/elevation';
import { gauge } from '../words/gauge';
import { temperature } from '../words/temperature';
import { atmosphereBasis, standardPressure } from './atmosphere';
import { steamCaution } from './cautions';
import { COLDEST, saturationBasis, saturationKelvin, saturationPascals, saturationPressureBasis } from './saturation';
import { pressureLike, temperatureLike } from './units';

/** The steam of 100 psi, as far as a gauge is read here. */
const WARMEST = { value: 170, unit: 'degC' } as const;

const schema = /* @__PURE__ */ fields({
  /** What the gauge shows, 0 to 100 psi; or `temperature`. */
  gauge: optional(gauge({ max: { value: 100, unit: 'psi' } })),
  /** Of the steam, from the boil at that elevation to 170 degC; or `gauge`. */
  temperature: optional(temperature({ min: { value: COLDEST, unit: 'K' }, max: WARMEST })),
  /** Of the kitchen, -500 to 5,000 m. */
  elevation: elevation(),
});

export type SteamTemperatureInput = z.input<typeof schema>;
export interface SteamTemperature {
  /** What the gauge shows: as given, or in psi for an elevation in feet and in kPa otherwise. */
  readonly gauge: Quantity<'pressure'>;
  /** Of the steam: as given, or in degF for an elevation in feet and in degC otherwise. */
  readonly temperature: Quantity<'temperature'>;
  /** Absolute pressure inside, in the unit of the gauge: the gauge and the air together. */
  readonly pressure: Quantity<'pressure'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

export const steamCautions = (): Caution[] =>
  ['physics-explains-tables', 'air-in-canner', 'weather-moves-boiling'].map(steamCaution);

/**
 * How hot the steam in a vented pressure canner is when its gauge shows a pressure at an elevation; or what the gauge
 * shows when the steam is at a temperature.
 *
 * A gauge shows the pressure above the air outside, and the air is thinner higher up: the same gauge reading is less
 * steam. T = Tsat(gauge + air pressure); gauge = psat(T) - air pressure.
 *
 * It explains the printed pressures and never replaces them.
 *
 * Source: U.S. Standard Atmosphere 1976; IAPWS-IF97 equations 30 and 31.
 *
 * @returns `gauge`, `temperature` and the absolute `pressure`; what you gave stays in your unit
 * @throws StillroomError MISSING without `gauge` and `temperature`, CONTRADICTION with both; OUT_OF_RANGE, also for steam
 *   below the boiling point there
 *
 * @example
 * ```ts
 * import { steamTemperature } from 'stillroom/steam';
 *
 * steamTemperature({ gauge: '11 psi', elevation: '2000 ft' }).temperature.value; // ≈ 239.3
 * steamTemperature({ gauge: '10 psi', elevation: '0 ft' }).temperature.value; // ≈ 239.4
 * steamTemperature({ temperature: '240 degF', elevation: '2000 ft' }).gauge.value; // ≈ 11.32
 * steamTemperature({ gauge: '-1 psi', elevation: '0 ft' }); // throws StillroomError OUT_OF_RANGE
 * steamTemperature({ temperature: '200 degF', elevation: '0 ft' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function steamTemperature(input: SteamTemperatureInput): SteamTemperature {
  const { gauge: shown, temperature: steam, elevation: where } = readInput(schema, input);
  const air = standardPressure(valueIn(where, 'm'));
  if (shown !== undefined && steam !== undefined) {
    fail('CONTRADICTION', 'temperature', input.temperature, 'a gauge or a temperature, not both');
  }
  if (shown !== undefined) {
    const absolute = valueIn(shown, 'Pa') + air;
    return answer({
      gauge: shown,
      temperature: temperatureLike(where, saturationKelvin(absolute)),
      pressure: pressureLike(shown, absolute),
      basis: [atmosphereBasis('pressure'), saturationBasis('temperature')],
      cautions: steamCautions(),
    });
  }
  if (steam === undefined) fail('MISSING', 'gauge', undefined, 'what the gauge shows, or the temperature of the steam');
  const absolute = saturationPascals(valueIn(steam, 'K'));
  if (absolute < air) {
    const boiling = formatQuantity(temperatureLike(where, saturationKelvin(air)), { step: 0.1 });
    fail('OUT_OF_RANGE', 'temperature', input.temperature, `at least the boiling point there, ${boiling}`);
  }
  return answer({
    gauge: pressureLike(where, absolute - air),
    temperature: steam,
    pressure: pressureLike(where, absolute),
    basis: [saturationPressureBasis('gauge'), atmosphereBasis('gauge')],
    cautions: steamCautions(),
  });
}
