import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { activityField } from './fields';
import { chooseIsotherm, type Isotherm, isothermFields, moistureOn } from './isotherm';

const schema = fields({ ...isothermFields, waterActivity: activityField() });
export type IsothermMoistureInput = z.input<typeof schema>;

/** Which isotherm an answer was read from. */
export interface IsothermUsed {
  readonly food?: string;
  readonly state?: string;
  readonly model: string;
  readonly temperature?: Quantity<'temperature'>;
  /** The water activities it may be asked about. */
  readonly awRange: readonly [number, number];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}
export interface IsothermMoisture extends IsothermUsed {
  /** Moisture on the dry basis: g water per g dry matter. */
  readonly moisture: number;
  /** The same on the wet basis: g water per g food, 0 to 1. */
  readonly wetBasis: number;
}

/** The isotherm without its function, for an answer. */
export const usedOf = ({ moisture: _, ...used }: Isotherm): IsothermUsed => used;

/**
 * The moisture a food comes to at a water activity, or in air of that relative humidity: how far to dry it.
 *
 * Equations: GAB `X = M0 C K aw / ((1 - K aw)(1 - K aw + C K aw))`, BET (GAB with K = 1), Oswin
 * `X = A (aw/(1-aw))^B`, Halsey, Henderson, Peleg, Smith and more, with constants published for a food (see
 * `isothermFoods`) or with your own. Sources: see `basis`.
 *
 * @param input - `waterActivity`: 0 to 1, exclusive, or relative humidity in percent; `food`, or `parameters`
 * such as `{ model: 'GAB', M0: 0.1, C: 10, K: 0.9 }`; `model`, `state`, `temperature`: which of a food's published sets,
 * where it has several (without them the set nearest 25 degC)
 * @throws StillroomError OUT_OF_RANGE outside the range of the isotherm, which it names, and at a temperature that
 * no set is for; UNKNOWN_NAME for a food without a published isotherm
 *
 * @example
 * ```ts
 * import { isothermMoisture } from 'stillroom/water-activity';
 *
 * const kiwi = isothermMoisture({ food: 'kiwifruit', waterActivity: 0.432, temperature: '30 degC' });
 * kiwi.moisture; // ≈ 0.0878
 * kiwi.wetBasis; // ≈ 0.0807
 * isothermMoisture({ food: 'kiwifruit', waterActivity: 0.8 }); // throws StillroomError OUT_OF_RANGE
 * isothermMoisture({ parameters: { model: 'GAB', M0: 0.209, C: 4.416, K: 0.976 }, waterActivity: 0.5 }).moisture; // ≈ 0.3298
 * ```
 */
export function isothermMoisture(input: IsothermMoistureInput): IsothermMoisture {
  const { waterActivity, ...choice } = readInput(schema, input);
  const isotherm = chooseIsotherm(choice);
  const moisture = moistureOn(isotherm, waterActivity);
  return answer({ moisture, wetBasis: moisture / (1 + moisture), ...usedOf(isotherm) });
}
