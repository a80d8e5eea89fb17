import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { pressure } from '../words/pressure';
import { COLDEST_K, iceBasis, icePressure, iceTemperature, TRIPLE_PA } from './ice';

const schema = /* @__PURE__ */ fields({
  /** Of the water vapor, as a gauge on the chamber shows it: up to 611.657 Pa, the triple point. */
  pressure: pressure({ max: { value: TRIPLE_PA, unit: 'Pa' } }),
});
export type FrostPointInput = z.input<typeof schema>;

export interface FrostPoint {
  /** Of ice that has this vapor pressure, degC. */
  readonly temperature: Quantity<'temperature'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * How cold the ice in a freeze-dryer stays, from the pressure that its gauge shows: the temperature at which ice has
 * that vapor pressure. The inverse of `iceVapourPressure`, IAPWS R14-08 (2011) Eq. 6.
 *
 * @returns `temperature` in degC
 * @throws StillroomError OUT_OF_RANGE above the triple point, where ice melts
 *
 * @example
 * ```ts
 * import { frostPoint } from 'stillroom/heat';
 *
 * frostPoint({ pressure: '103.239 Pa' }).temperature.value; // ≈ -20.00
 * ```
 */
export function frostPoint(input: FrostPointInput): FrostPoint {
  const given = readInput(schema, input);
  const pascal = valueIn(given.pressure, 'Pa');
  const least = icePressure(COLDEST_K);
  if (pascal > TRIPLE_PA || pascal < least) {
    fail('OUT_OF_RANGE', 'pressure', input.pressure, `a pressure from ${least.toExponential(2)} to ${TRIPLE_PA} Pa`);
  }
  return answer({
    temperature: quantityIn(iceTemperature(pascal), 'K', 'degC'),
    basis: iceBasis('temperature'),
    cautions: [],
  });
}
