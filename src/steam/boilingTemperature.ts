import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { LengthInput, PressureInput, Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { elevation } from '../words/elevation';
import { atmosphereBasis, standardPressure } from './atmosphere';
import { steamCaution } from './cautions';
import {
  type ElevationFromBoiling,
  type ElevationFromBoilingInput,
  elevationFromBoiling,
} from './elevationFromBoiling';
import { saturationBasis, saturationKelvin } from './saturation';
import { saturatedPressure } from './saturationTemperature';
import { temperatureLike } from './units';

const schema = /* @__PURE__ */ fields({
  /** Of the kitchen, -500 to 5,000 m. */
  elevation: optional(elevation()),
  /** Absolute pressure in the room, instead of the elevation. */
  pressure: optional(saturatedPressure()),
});

/** Either the elevation, or the air pressure there. */
export type BoilingTemperatureInput =
  | {
      /** Of the kitchen, -500 to 5,000 m. */
      readonly elevation: LengthInput;
      readonly pressure?: undefined;
    }
  | {
      /** Absolute pressure in the room, 611.212677 Pa to 22.064 MPa. */
      readonly pressure: PressureInput;
      readonly elevation?: undefined;
    };
export interface BoilingTemperature {
  /** In degF for an elevation in feet or a pressure in psi or inHg, otherwise in degC. */
  readonly temperature: Quantity<'temperature'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * The temperature at which water boils in an open pot, by elevation or by the pressure read there; or, from the
 * `temperature` at which it boils, the elevation as a range.
 *
 * The elevation gives the air pressure (`airPressure`), the pressure the boiling point (`saturationTemperature`).
 * At 101.325 kPa that is 99.97 degC (211.95 degF): the old definition of exactly 100 degC was left in 1990.
 *
 * The other way the thermometer and the weather both mislead: 1 degF is about 550 ft. A map is better.
 *
 * Source: U.S. Standard Atmosphere 1976; IAPWS-IF97 equations 30 and 31.
 *
 * @param input - `elevation` of the kitchen, -500 m to 5,000 m; or `pressure`, the absolute pressure in the room (see
 *   `airPressure` for a weather report's figure); or `temperature`, with `doubt`, how far off it may be
 * @returns the temperature, in degF for an elevation in feet or a pressure in psi or inHg, otherwise in degC; of a
 *   `temperature` the `elevation`, in ft for degF and in m otherwise
 * @throws StillroomError MISSING without any, CONTRADICTION with both, OUT_OF_RANGE, also where the likely elevation is
 *   not between -500 m and 5,000 m
 *
 * @example
 * ```ts
 * import { boilingTemperature } from 'stillroom/steam';
 *
 * boilingTemperature({ elevation: '5000 ft' }).temperature.value; // ≈ 202.8
 * boilingTemperature({ elevation: '1000 m' }).temperature.value; // ≈ 96.65
 * boilingTemperature({ pressure: '24.9 inHg' }).temperature.value; // ≈ 202.8
 * const { elevation } = boilingTemperature({ temperature: '203 degF' });
 * elevation.likely.value; // ≈ 4906
 * elevation.high.value; // ≈ 5453
 * boilingTemperature({ temperature: '230 degF' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function boilingTemperature(input: ElevationFromBoilingInput): ElevationFromBoiling;
export function boilingTemperature(input: BoilingTemperatureInput): BoilingTemperature;
export function boilingTemperature(
  input: BoilingTemperatureInput | ElevationFromBoilingInput,
): BoilingTemperature | ElevationFromBoiling {
  return typeof input === 'object' && input !== null && 'temperature' in input
    ? elevationFromBoiling(input)
    : boilingAt(input);
}

function boilingAt(input: BoilingTemperatureInput): BoilingTemperature {
  const given = readInput(schema, input);
  if (given.elevation !== undefined && given.pressure !== undefined) {
    fail('CONTRADICTION', 'pressure', input.pressure, 'an elevation or a pressure, not both');
  }
  if (given.pressure !== undefined) {
    return answer({
      temperature: temperatureLike(given.pressure, saturationKelvin(valueIn(given.pressure, 'Pa'))),
      basis: [saturationBasis('temperature')],
      cautions: [steamCaution('station-pressure')],
    });
  }
  if (given.elevation === undefined) {
    fail('MISSING', 'elevation', undefined, 'the elevation, such as "3,400 ft", or the pressure in the room');
  }
  const pascals = standardPressure(valueIn(given.elevation, 'm'));
  return answer({
    temperature: temperatureLike(given.elevation, saturationKelvin(pascals)),
    basis: [atmosphereBasis('temperature'), saturationBasis('temperature')],
    cautions: [steamCaution('weather-moves-boiling')],
  });
}
