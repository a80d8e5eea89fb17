import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, number, readInput } from '../quantity/fields';
import { activityOn, chooseIsotherm, isothermFields } from './isotherm';
import { type IsothermUsed, usedOf } from './isothermMoisture';

const schema = fields({
  ...isothermFields,
  moisture: number('moisture on the dry basis, in g water per g dry matter: a number of at least 0', {
    min: 0,
    max: 1000,
  }),
});
export type IsothermActivityInput = z.input<typeof schema>;
export interface IsothermActivity extends IsothermUsed {
  readonly waterActivity: number;
}

/**
 * The water activity of a food at a moisture: will the batch at this dryness keep?
 *
 * The inverse of `isothermMoisture`, with the same equations, constants and ranges.
 *
 * @param input - `moisture`: on the dry basis, g water per g dry matter (0.20 wet basis is 0.25 dry basis); the rest as
 * in `isothermMoisture`
 * @throws StillroomError OUT_OF_RANGE outside the range of the isotherm, which it names, and at a temperature that
 * no set is for; UNKNOWN_NAME for a food without a published isotherm
 *
 * @example
 * ```ts
 * import { isothermActivity } from 'stillroom/water-activity';
 *
 * isothermActivity({ food: 'potato', moisture: 0.33, temperature: '45 degC' }).waterActivity; // ≈ 0.500
 * isothermActivity({ food: 'potato', moisture: 9 }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function isothermActivity(input: IsothermActivityInput): IsothermActivity {
  const { moisture, ...choice } = readInput(schema, input);
  const isotherm = chooseIsotherm(choice);
  return answer({ waterActivity: activityOn(isotherm, moisture), ...usedOf(isotherm) });
}
