import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { elevation } from '../words/elevation';
import { pressure } from '../words/pressure';
import { temperature } from '../words/temperature';
import { standardAirTemperature } from './atmosphere';
import { steamCaution } from './cautions';
import { airConstant } from './tables';

// The world's lowest and highest sea-level pressures on record are some 870 and 1085 hPa.
const LOWEST = { value: 850, unit: 'hPa' } as const;
const HIGHEST = { value: 1100, unit: 'hPa' } as const;

const schema = /* @__PURE__ */ fields({
  /** Of the weather report, 850 to 1,100 hPa. */
  seaLevelPressure: pressure({ min: LOWEST, max: HIGHEST }),
  /** Of the kitchen, -500 to 5,000 m. */
  elevation: elevation(),
  /** Of the air outside, -60 to 60 degC; that of the standard atmosphere when left out. */
  temperature: optional(temperature({ min: { value: -60, unit: 'degC' }, max: { value: 60, unit: 'degC' } })),
});

export type StationPressureInput = z.input<typeof schema>;
export interface StationPressure {
  /** Absolute, in the unit of the report. */
  readonly pressure: Quantity<'pressure'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * The air pressure in the kitchen from the barometer figure of a weather report, which is reduced to sea level.
 *
 * p = p_sea exp(-Z/H) with H = R T/g, T the air temperature halfway down to the sea (0.0065 K/m). Pass the answer to
 * `boilingTemperature` for the boiling point on a day of unusual weather.
 *
 * Source: ASHRAE Handbook Fundamentals (2017), chapter 1.
 *
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
  const meters = valueIn(given.elevation, 'm');
  const outside = given.temperature === undefined ? standardAirTemperature(meters) : valueIn(given.temperature, 'K');
  const scaleHeight =
    (airConstant('station-gas-constant') * (outside + airConstant('station-half-lapse') * meters)) /
    airConstant('station-gravity');
  const pascals = valueIn(given.seaLevelPressure, 'Pa') * Math.exp(-meters / scaleHeight);
  return answer({
    pressure: quantityIn(pascals, 'Pa', given.seaLevelPressure.unit),
    basis: [{ of: 'pressure', kind: 'equation', source: 'ashrae-hof-2017', locator: 'chapter 1' }],
    cautions: [steamCaution('station-pressure')],
  });
}
