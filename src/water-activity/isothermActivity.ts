import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, number, readInput } from '../quantity/fields';
import type { NotKnown } from '../sources/no';
import { activityOn, chooseIsotherm, isothermFields, usedOf } from './isotherm';
import type { IsothermUsed, OneIsotherm } from './isothermTypes';

const schema = fields({
  ...isothermFields,
  /** Moisture on the dry basis, in g water per g dry matter: 0 or more. 0.20 wet basis is 0.25 dry basis. */
  moisture: number('moisture on the dry basis, in g water per g dry matter: a number of at least 0', {
    min: 0,
    max: 1000,
  }),
});
export type IsothermActivityInput = OneIsotherm<z.input<typeof schema>>;
export interface IsothermActivity extends IsothermUsed {
  /** Water activity of the food at that moisture, 0 to 1. */
  readonly waterActivity: number;
}

/**
 * The water activity of a food at a moisture: will the batch at this dryness keep?
 *
 * The inverse of `isothermMoisture`, with the same equations, constants and ranges.
 *
 * @param input - `moisture`: on the dry basis, g water per g dry matter (0.20 wet basis is 0.25 dry basis); the rest as
 * in `isothermMoisture`
 * @returns `waterActivity`; or `{ known: false }` for a food without an isotherm in these tables
 * @throws StillroomError OUT_OF_RANGE outside the range of the isotherm, which it names, and at a temperature that
 * no set is for; UNKNOWN_NAME for a text that is no food
 *
 * @example
 * ```ts
 * import { isothermActivity } from 'stillroom/water-activity';
 *
 * const potato = isothermActivity({ food: 'potato', moisture: 0.14, temperature: '45 degC' });
 * potato.known && potato.waterActivity; // ≈ 0.540
 * isothermActivity({ food: 'potato', moisture: 9 }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function isothermActivity(input: IsothermActivityInput): IsothermActivity | NotKnown {
  const { moisture, ...choice } = readInput(schema, input);
  const isotherm = chooseIsotherm(choice);
  if (!isotherm.known) return answer(isotherm);
  return answer({ ...usedOf(isotherm, 'waterActivity'), waterActivity: activityOn(isotherm, moisture) });
}
