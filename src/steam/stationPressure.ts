import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { elevation, fields, optional, pressure, readInput, temperature } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { standardAirTemperature } from './atmosphere';
import { steamCaution } from './cautions';

// The world's lowest and highest sea-level pressures on record are some 870 and 1085 hPa.
const LOWEST = { value: 850, unit: 'hPa' } as const;
const HIGHEST = { value: 1100, unit: 'hPa' } as const;

const schema = /* @__PURE__ */ fields({
  seaLevelPressure: pressure({ min: LOWEST, max: HIGHEST }),
  elevation: elevation(),
  temperature: optional(temperature({ min: { value: -60, unit: 'degC' }, max: { value: 60, unit: 'degC' } })),
});

export type StationPressureInput = z.input<typeof schema>;
export interface StationPressure {
  /** Absolute, in the unit of the report. */
  readonly pressure: Quantity<'pressure'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

// ASHRAE Handbook chapter 1, as its check rows use it: gas constant of dry air and standard gravity
const GAS_CONSTANT = 287.055; // J/(kg K)
const GRAVITY = 9.807; // m/s2
const HALF_LAPSE = 0.0065 / 2; // K/m, down to the middle of the air column

/**
 * The air pressure in the kitchen from the barometer figure of a weather report, which is reduced to sea level.
 *
 * p = p_sea exp(-Z/H) with H = R T/g, T the air temperature halfway down to the sea (0.0065 K/m). Hand the answer to
 * `boilingTemperature` for the boiling point on a day of unusual weather.
 *
 * Source: ASHRAE Handbook Fundamentals (2017), chapter 1.
 *
 * @param input.seaLevelPressure - of the report, 850 hPa to 1,100 hPa
 * @param input.elevation - of the kitchen, -500 m to 5,000 m
 * @param input.temperature - of the air outside; that of the standard atmosphere when left out
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { boilingTemperature, stationPressure } from 'stillroom/steam';
 *
 * const { pressure } = stationPressure({ seaLevelPressure: '29.5 inHg', elevation: '5000 ft', temperature: '60 degF' });
 * pressure.value; // ≈ 24.71
 * boilingTemperature({ pressure }).temperature.value; // ≈ 202.5
 * ```
 */
export function stationPressure(input: StationPressureInput): StationPressure {
  const given = readInput(schema, input);
  const metres = valueIn(given.elevation, 'm');
  const outside = given.temperature === undefined ? standardAirTemperature(metres) : valueIn(given.temperature, 'K');
  const scaleHeight = (GAS_CONSTANT * (outside + HALF_LAPSE * metres)) / GRAVITY;
  const pascals = valueIn(given.seaLevelPressure, 'Pa') * Math.exp(-metres / scaleHeight);
  return answer({
    pressure: quantityIn(pascals, 'Pa', given.seaLevelPressure.unit),
    basis: [{ of: 'station pressure', kind: 'equation', source: 'ashrae-hof-2017', locator: 'chapter 1' }],
    cautions: [steamCaution('station-pressure')],
  });
}
