import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { fromFreezing } from './models';
import { equationBasis } from './solutionWaterActivity';

const schema = fields({
  freezingPoint: temperature({ min: { value: -40, unit: 'degC' }, max: { value: 0, unit: 'degC' } }),
});
export type FreezingPointActivityInput = z.input<typeof schema>;
export interface FreezingPointActivity {
  /** At the freezing point itself; at room temperature it is a little higher. */
  readonly waterActivity: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The water activity of a juice or syrup from the temperature at which it begins to freeze.
 *
 * Formula: Ferro Fontan and Chirife (1981), `-ln aw = 9.6934e-3 d + 4.761e-6 d^2`, d degC below 0, to 40 degC.
 *
 * @param input - `freezingPoint`: where ice first forms, 0 to -40 degC
 * @throws StillroomError OUT_OF_RANGE outside that range
 *
 * @example
 * ```ts
 * import { freezingPointActivity } from 'stillroom/water-activity';
 *
 * freezingPointActivity({ freezingPoint: '-4.93 degC' }).waterActivity; // ≈ 0.9532
 * ```
 */
export function freezingPointActivity(input: FreezingPointActivityInput): FreezingPointActivity {
  const t = valueIn(readInput(schema, input).freezingPoint, 'degC');
  return answer({
    waterActivity: fromFreezing(-t),
    basis: [equationBasis('freezing-point')],
    cautions: [caution('estimate'), caution('recalled')],
  });
}
