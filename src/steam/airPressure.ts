import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { elevation } from '../words/elevation';
import { pressure } from '../words/pressure';
import { temperature } from '../words/temperature';
import { atmosphereBasis, standardAirTemperature, standardPressure } from './atmosphere';
import { steamCaution } from './cautions';
import { airConstant } from './tables';

// The world's lowest and highest sea-level pressures on record are some 870 and 1085 hPa.
const LOWEST = { value: 850, unit: 'hPa' } as const;
const HIGHEST = { value: 1100, unit: 'hPa' } as const;

const schema = /* @__PURE__ */ fields({
  /** Of the kitchen above the sea, -500 to 5,000 m. */
  elevation: elevation(),
  /** Today's barometer figure of a weather report, which is reduced to sea level: 850 to 1,100 hPa. */
  seaLevelPressure: optional(pressure({ min: LOWEST, max: HIGHEST })),
  /** Of the air outside, with that figure only: -60 to 60 degC; that of the standard atmosphere when left out. */
  temperature: optional(temperature({ min: { value: -60, unit: 'degC' }, max: { value: 60, unit: 'degC' } })),
});

export type AirPressureInput = z.input<typeof schema>;
export interface AirPressure {
  /** Absolute: in kPa, or in the unit of the weather report. */
  readonly pressure: Quantity<'pressure'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** Pa in the kitchen from the figure at sea level: p = p_sea exp(-Z/H), H = R T/g. */
function fromSeaLevel(pascals: number, meters: number, outside: number): number {
  const halfway = outside + airConstant('station-half-lapse') * meters;
  return (
    pascals * Math.exp((-meters * airConstant('station-gravity')) / (airConstant('station-gas-constant') * halfway))
  );
}

/**
 * The air pressure in the kitchen: the usual one at its elevation, or today's from a weather report.
 *
 * The elevation of a place is geometric; the standard is written in geopotential height H = r0 Z/(r0 + Z), so it is
 * converted first. Then P = P0 (T/T0)^(g0 M0/(R* 0.0065)) with T = T0 - 0.0065 H. A weather report's figure is reduced to
 * sea level; it is taken back by p = p_sea exp(-Z/H) with H = R T/g, T the air temperature halfway down to the sea (0.0065
 * K/m). Pass that pressure to `boilingTemperature` for the boiling point on a day of unusual weather.
 *
 * Sources: U.S. Standard Atmosphere 1976, lowest layer; ASHRAE Handbook Fundamentals (2017), chapter 1.
 *
 * @returns the absolute pressure in kPa, or in the unit of `seaLevelPressure`
 * @throws StillroomError OUT_OF_RANGE outside those ranges; CONTRADICTION for a temperature without a weather report
 *
 * @example
 * ```ts
 * import { airPressure, boilingTemperature } from 'stillroom/steam';
 *
 * airPressure({ elevation: '0 ft' }).pressure; // => { value: 101.325, unit: 'kPa' }
 * airPressure({ elevation: '5000 ft' }).pressure.value; // ≈ 84.31
 * const today = { seaLevelPressure: '29.5 inHg', temperature: '60 degF' } as const;
 * const { pressure } = airPressure({ elevation: '5000 ft', ...today });
 * pressure.value; // ≈ 24.71
 * boilingTemperature({ pressure }).temperature.value; // ≈ 202.5
 * airPressure({ elevation: '20,000 ft' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function airPressure(input: AirPressureInput): AirPressure {
  const { elevation: place, seaLevelPressure: report, temperature: outside } = readInput(schema, input);
  const meters = valueIn(place, 'm');
  if (report === undefined) {
    if (outside !== undefined)
      fail('CONTRADICTION', 'temperature', input.temperature, 'a temperature only with seaLevelPressure');
    return answer({
      pressure: quantityIn(standardPressure(meters), 'Pa', 'kPa'),
      basis: [atmosphereBasis('pressure')],
      cautions: [steamCaution('weather-moves-boiling')],
    });
  }
  const kelvin = outside === undefined ? standardAirTemperature(meters) : valueIn(outside, 'K');
  return answer({
    pressure: quantityIn(fromSeaLevel(valueIn(report, 'Pa'), meters, kelvin), 'Pa', report.unit),
    basis: [{ of: 'pressure', kind: 'equation', source: 'ashrae-hof-2017', locator: 'chapter 1' }],
    cautions: [steamCaution('station-pressure')],
  });
}
