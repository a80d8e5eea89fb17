import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import type { NotKnown } from '../sources/no';
import { activityField } from './fields';
import { chooseIsotherm, isothermFields, moistureOn, usedOf } from './isotherm';
import type { IsothermUsed, OneIsotherm } from './isothermTypes';

const schema = fields({
  ...isothermFields,
  /** Water activity to dry to, or relative humidity of the air it lies in: above 0 and below 1. */
  waterActivity: activityField(),
});
export type IsothermMoistureInput = OneIsotherm<z.input<typeof schema>>;
export interface IsothermMoisture extends IsothermUsed {
  /** Moisture on the dry basis: g water per g dry matter. */
  readonly moisture: number;
  /** The same on the wet basis: g water per g food, 0 to 1. */
  readonly wetMoisture: number;
}

/**
 * The moisture a food comes to at a water activity, or in air of that relative humidity: how far to dry it.
 *
 * Equations: GAB `X = M0 C K aw / ((1 - K aw)(1 - K aw + C K aw))`, BET (GAB with K = 1), Oswin
 * `X = A (aw/(1-aw))^B`, Halsey, Henderson, Peleg, Smith and more, with constants published for a food (`waterActivityOf`
 * lists them) or with your own. Sources: see `basis`.
 *
 * @param input - `waterActivity`: above 0 and below 1; `food`, or `parameters` such as
 * `{ model: 'GAB', M0: 0.1, C: 10, K: 0.9 }`; `model`, `set`, `temperature`: which of a food's published sets,
 * where it has several (without them the set nearest 25 degC)
 * @returns `moisture` on the dry basis; or `{ known: false }` for a food without an isotherm in these tables
 * @throws StillroomError OUT_OF_RANGE outside the range of the isotherm, which it names, and at a temperature that
 * no set is for; UNKNOWN_NAME for a text that is no food
 *
 * @example
 * ```ts
 * import { isothermMoisture } from 'stillroom/water-activity';
 *
 * const kiwi = isothermMoisture({ food: 'kiwifruit', waterActivity: 0.432, temperature: '30 degC' });
 * kiwi.known && kiwi.moisture; // ≈ 0.0878
 * kiwi.known && kiwi.wetMoisture; // ≈ 0.0807
 * isothermMoisture({ food: 'kiwifruit', waterActivity: 0.8 }); // throws StillroomError OUT_OF_RANGE
 * isothermMoisture({ food: 'mango', waterActivity: 0.5 }).known; // => false
 * const own = isothermMoisture({ parameters: { model: 'GAB', M0: 0.209, C: 4.416, K: 0.976 }, waterActivity: 0.5 });
 * own.known && own.moisture; // ≈ 0.3298
 * ```
 */
export function isothermMoisture(input: IsothermMoistureInput): IsothermMoisture | NotKnown {
  const { waterActivity, ...choice } = readInput(schema, input);
  const isotherm = chooseIsotherm(choice);
  if (!isotherm.known) return answer(isotherm);
  const moisture = moistureOn(isotherm, waterActivity);
  return answer({ ...usedOf(isotherm, 'moisture'), moisture, wetMoisture: moisture / (1 + moisture) });
}
