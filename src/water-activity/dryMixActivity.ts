import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, list, number, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { mass } from '../words/mass';
import { equationBasis } from './equations';
import { activityField } from './fields';

const schema = fields({
  /** The dry ingredients, one entry for each. */
  parts: list(
    'the dry ingredients',
    fields({
      /** Its water activity before, above 0 and below 1. */
      waterActivity: activityField(),
      /** Slope of its isotherm: moisture (dry basis) for each unit of water activity, above 0. */
      slope: number('the slope of its isotherm: moisture (dry basis) per unit of water activity, above 0', {
        above: 0,
        max: 1000,
      }),
      /** Mass of its dry solids. */
      mass: mass(),
    }),
    1,
    100,
  ),
});
export type DryMixActivityInput = z.input<typeof schema>;
export interface DryMixActivity {
  /** The one water activity that all ingredients come to, 0 to 1. */
  readonly waterActivity: number;
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * The water activity of dry ingredients packed together: dried fruit gives water to the cereal, the nuts or the
 * powder beside it until all have the same.
 *
 * Formula: Salwin and Slawson (1959), `aw = sum(a_i S_i W_i)/sum(S_i W_i)`; a_i the activity before, S_i the slope of
 * the isotherm, W_i the dry solids. It holds where the isotherms are nearly straight. Slopes may be in any unit, the
 * same for all, since only their proportions count.
 *
 * @param input - `parts`: for each ingredient `waterActivity` (above 0 and below 1), `slope` (above 0), `mass`
 * (of its dry solids)
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { dryMixActivity } from 'stillroom/water-activity';
 *
 * const mix = dryMixActivity({
 *   parts: [
 *     { waterActivity: 0.2, slope: 12, mass: '60 g' },
 *     { waterActivity: 0.6, slope: 20, mass: '40 g' },
 *   ],
 * });
 * mix.waterActivity; // ≈ 0.4105
 * ```
 */
export function dryMixActivity(input: DryMixActivityInput): DryMixActivity {
  const { parts } = readInput(schema, input);
  const weights = parts.map(({ slope, mass: dry }) => slope * valueIn(dry, 'g'));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const waterActivity = parts.reduce((sum, part, i) => sum + part.waterActivity * ((weights[i] ?? 0) / all), 0);
  return answer({
    waterActivity,
    basis: [equationBasis('salwin-slawson')],
    cautions: [caution('estimate'), caution('recalled')],
  });
}
