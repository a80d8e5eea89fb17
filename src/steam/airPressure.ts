import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { elevation } from '../words/elevation';
import { atmosphereBasis, standardPressure } from './atmosphere';
import { steamCaution } from './cautions';

const schema = /* @__PURE__ */ fields({
  /** Of the kitchen above the sea, -500 to 5,000 m. */
  elevation: elevation(),
});

export type AirPressureInput = z.input<typeof schema>;
export interface AirPressure {
  /** Absolute, in kPa. */
  readonly pressure: Quantity<'pressure'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * The usual air pressure at an elevation.
 *
 * The elevation of a place is geometric; the standard is written in geopotential height H = r0 Z/(r0 + Z), so it is
 * converted first. Then P = P0 (T/T0)^(g0 M0/(R* 0.0065)) with T = T0 - 0.0065 H.
 *
 * Source: U.S. Standard Atmosphere 1976, lowest layer.
 *
 * @returns the absolute pressure in kPa
 * @throws StillroomError OUT_OF_RANGE outside those elevations
 *
 * @example
 * ```ts
 * import { airPressure } from 'stillroom/steam';
 *
 * airPressure({ elevation: '0 ft' }).pressure; // => { value: 101.325, unit: 'kPa' }
 * airPressure({ elevation: '5000 ft' }).pressure.value; // ≈ 84.31
 * airPressure({ elevation: '20,000 ft' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function airPressure(input: AirPressureInput): AirPressure {
  const given = readInput(schema, input);
  return answer({
    pressure: quantityIn(standardPressure(valueIn(given.elevation, 'm')), 'Pa', 'kPa'),
    basis: [atmosphereBasis('pressure')],
    cautions: [steamCaution('weather-moves-boiling')],
  });
}
