import type * as z from 'zod/mini';
import foodsJson from '../../data/water-activity/food-water-activity.json';
import { answer } from '../common/answer';
import { lookUp, type Named } from '../common/names';
import { fields, name, readInput } from '../quantity/fields';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, basisOf, type Sourced } from '../sources/table';

export interface FoodActivityRow extends Named, Sourced {
  readonly low: number;
  readonly high: number;
  readonly printed: string;
  readonly moisture_pct?: readonly [number, number];
}
export const foodActivityRows = asTable<FoodActivityRow>(foodsJson).rows;

const schema = fields({ food: name('a food with a published water activity') });
export type TypicalWaterActivityInput = z.input<typeof schema>;
export interface TypicalWaterActivity {
  readonly food: string;
  /** Lowest and highest as printed; an open end is 0 or 1. */
  readonly waterActivity: readonly [number, number];
  /** Moisture it goes with on the wet basis, 0 to 1, where printed. */
  readonly moisture?: readonly [number, number];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The water activity a food is usually found at, as printed; a description, not a promise for your batch.
 *
 * @param input - `food`: its name, such as `honey`, `raisins`, `jam`, `dried apple`
 * @throws StillroomError UNKNOWN_NAME with the nearest foods
 *
 * @example
 * ```ts
 * import { typicalWaterActivity } from 'stillroom/water-activity';
 *
 * const apple = typicalWaterActivity({ food: 'dried apples' });
 * apple.waterActivity; // => [0.7, 0.75]
 * apple.moisture; // => [0.2, 0.24]
 * ```
 */
export function typicalWaterActivity(input: TypicalWaterActivityInput): TypicalWaterActivity {
  const { food } = readInput(schema, input);
  const row = lookUp(food, foodActivityRows, 'food', 'food with a published water activity');
  const moisture = row.moisture_pct;
  return answer({
    food: row.name,
    waterActivity: [row.low, row.high],
    ...(moisture === undefined ? {} : { moisture: [moisture[0] / 100, moisture[1] / 100] as const }),
    basis: joinBasis([basisOf(row, `water activity of ${row.name}`)]),
    cautions: [caution('estimate'), ...(row.obtained === 'memory' ? [caution('recalled')] : [])],
  });
}
