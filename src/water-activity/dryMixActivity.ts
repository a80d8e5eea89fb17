import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, list, mass, number, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { activityField } from './fields';
import { equationBasis } from './solutionWaterActivity';

const schema = fields({
  parts: list(
    'the dry ingredients',
    fields({
      waterActivity: activityField(),
      slope: number('the slope of its isotherm: moisture (dry basis) per unit of water activity, above 0', {
        above: 0,
        max: 1000,
      }),
      solids: mass(),
    }),
    1,
    100,
  ),
});
export type DryMixActivityInput = z.input<typeof schema>;
export interface DryMixActivity {
  readonly waterActivity: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Where dry ingredients packed together settle: dried fruit gives water to the cereal, the nuts or the powder
 * beside it until all have one water activity.
 *
 * Formula: Salwin and Slawson (1959), `aw = sum(a_i S_i W_i)/sum(S_i W_i)`; a_i the activity before, S_i the slope of
 * the isotherm, W_i the dry solids. It holds where the isotherms are near straight lines. Slopes may be in any one
 * unit, since only their ratios count.
 *
 * @param input - `parts`: for each ingredient `waterActivity` (0 to 1, exclusive), `slope` (above 0), `solids` (mass of
 * its dry solids)
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { dryMixActivity } from 'stillroom/water-activity';
 *
 * const mix = dryMixActivity({
 *   parts: [
 *     { waterActivity: 0.2, slope: 12, solids: '60 g' },
 *     { waterActivity: 0.6, slope: 20, solids: '40 g' },
 *   ],
 * });
 * mix.waterActivity; // ≈ 0.4105
 * ```
 */
export function dryMixActivity(input: DryMixActivityInput): DryMixActivity {
  const { parts } = readInput(schema, input);
  const weights = parts.map(({ slope, solids }) => slope * valueIn(solids, 'g'));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const waterActivity = parts.reduce((sum, part, i) => sum + part.waterActivity * ((weights[i] ?? 0) / all), 0);
  return answer({
    waterActivity,
    basis: [equationBasis('salwin-slawson')],
    cautions: [caution('estimate'), caution('recalled')],
  });
}
