import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { temperature } from '../words/temperature';
import { temperatureDifference } from '../words/temperatureDifference';
import { atmosphereBasis, standardElevation, standardPressure } from './atmosphere';
import { steamCaution } from './cautions';
import { saturationKelvin, saturationPascals, saturationPressureBasis } from './saturation';
import { isCustomary } from './units';

// Widest difference that a kitchen thermometer and the weather may make; past it the answer says nothing.
const WIDEST = { value: 5, unit: 'delta degC' } as const;

const schema = /* @__PURE__ */ fields({
  /** Of plain water at a full boil. */
  temperature: temperature(),
  /** How far off the reading may be, above 0 to 5 degC; 1 degF when left out. */
  doubt: optional(temperatureDifference({ max: WIDEST })),
});

export type ElevationFromBoilingInput = z.input<typeof schema>;
export interface ElevationFromBoiling {
  /** In ft for a temperature in degF, otherwise in m. The high end is the safe one for a process. */
  readonly elevation: Range<Quantity<'length'>>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** 1 degF: a good kitchen thermometer, or a usual change of weather. */
const USUAL_DOUBT = 5 / 9;
const LOWEST_LAND = -500; // m, as everywhere in the library
const HIGHEST_LAND = 5000;

/** The elevation at which water boils at an observed temperature: the standard atmosphere solved for the height. */
export function elevationFromBoiling(input: ElevationFromBoilingInput): ElevationFromBoiling {
  const given = readInput(schema, input);
  const kelvin = valueIn(given.temperature, 'K');
  const doubt = given.doubt === undefined ? USUAL_DOUBT : valueIn(given.doubt, 'delta degC');
  const unit = isCustomary(given.temperature) ? 'ft' : 'm';
  const boilingAt = (meters: number): number => saturationKelvin(standardPressure(meters));
  if (!(kelvin <= boilingAt(LOWEST_LAND) && kelvin >= boilingAt(HIGHEST_LAND))) {
    fail(
      'OUT_OF_RANGE',
      'temperature',
      input.temperature,
      'the boiling point of water somewhere from -500 m to 5000 m',
    );
  }
  const at = (temperature: number): Quantity<'length'> =>
    quantityIn(standardElevation(saturationPascals(temperature)), 'm', unit);
  return answer({
    elevation: { low: at(kelvin + doubt), likely: at(kelvin), high: at(kelvin - doubt) },
    basis: [saturationPressureBasis('elevation'), atmosphereBasis('elevation')],
    cautions: ['elevation-from-map', 'weather-moves-boiling'].map(steamCaution),
  });
}
