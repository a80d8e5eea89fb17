import type * as z from 'zod/mini';
import rehydrationTable from '../../../data/drying/rehydration.json';
import generalTable from '../../../data/drying/rehydration-general.json';
import { answer } from '../../common/answer';
import { fields, name, readInput, volume } from '../../quantity/fields';
import type { Quantity } from '../../quantity/types';
import { type Basis, type Caution, joinBasis } from '../../sources/basis';
import { asTable, basisOf } from '../../sources/table';
import { caution } from '../cautions';
import { type FoodRow, rowsOf } from './foods';
import { endsOf, type ItemRow, itemOf, numberOf } from './settings';

interface RehydrationRow extends FoodRow {
  readonly printed: string;
  readonly water_cups_per_cup_dried: number;
  readonly soak_hours_min: number;
}

const rows = asTable<RehydrationRow>(rehydrationTable).rows;
const general = asTable<ItemRow>(generalTable).rows;
const item = (id: string): ItemRow => itemOf(general, id);

const schema = fields({ food: name('a dried fruit or vegetable'), dried: volume() });
export type RehydrateInput = z.input<typeof schema>;

export interface Rehydrate {
  readonly food: string;
  readonly water: Quantity<'volume'>;
  /** Boiling for vegetables; for fruit warm or cold does too. */
  readonly waterIs: 'boiling' | 'warm or cold';
  readonly soakAtLeast: Quantity<'time'>;
  /** Soaks longer than this belong in the refrigerator. */
  readonly refrigerateAfter: Quantity<'time'>;
  /** What it comes to, about. */
  readonly yields: Quantity<'volume'>;
  /** Quicker ways for fruit: minutes in boiling water, and minutes of steam. */
  readonly quickFruit?: {
    readonly boilingWater: Quantity<'time'>;
    readonly steam: { readonly low: Quantity<'time'>; readonly high: Quantity<'time'> };
  };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How much water dried food takes up again, and the least soak.
 *
 * water = dried x cups of water per cup dried, by the food; about two cups come of one.
 *
 * @param input.food - the dried fruit or vegetable
 * @param input.dried - its volume
 * @returns `water` and `yields` in the unit of `dried`, `soakAtLeast` in h
 * @throws StillroomError UNKNOWN_NAME with the nearest names
 *
 * @example
 * ```ts
 * import { rehydrate } from 'stillroom/drying';
 *
 * rehydrate({ food: 'apples', dried: '2 cups' }).water; // => { value: 3, unit: 'cup' }
 * ```
 */
export function rehydrate(input: RehydrateInput): Rehydrate {
  const { food: asked, dried } = readInput(schema, input);
  const { food, rows: found } = rowsOf(asked, rows);
  const row = found[0] as RehydrationRow;
  const { value, unit } = dried;
  const fruit = food.kind === 'fruit';
  const minutes = (amount: number): Quantity<'time'> => ({ value: amount, unit: 'min' });
  const [steamLow, steamHigh] = endsOf(item('fruit_steam_minutes'));
  const doubled = item('yield_cups_rehydrated_per_cup_dried');
  const cold = item('soak_over_hours_refrigerate');
  return answer({
    food: food.name,
    water: { value: value * row.water_cups_per_cup_dried, unit },
    waterIs: fruit ? 'warm or cold' : 'boiling',
    soakAtLeast: { value: row.soak_hours_min, unit: 'h' },
    refrigerateAfter: { value: numberOf(cold), unit: 'h' },
    yields: { value: value * numberOf(doubled), unit },
    ...(fruit
      ? {
          quickFruit: {
            boilingWater: minutes(numberOf(item('fruit_plump_boilingWater_minutes'))),
            steam: { low: minutes(steamLow), high: minutes(steamHigh) },
          },
        }
      : {}),
    basis: joinBasis(
      [
        basisOf(row, `water for ${row.printed}`),
        basisOf(doubled, 'volume after soaking'),
        basisOf(cold, 'longest soak'),
      ],
      fruit
        ? [
            basisOf(item('fruit_plump_boilingWater_minutes'), 'plumping'),
            basisOf(item('fruit_steam_minutes'), 'steaming'),
          ]
        : [basisOf(item('vegetables_start_cups_water_per_cup'), 'another sheet starts with 1 1/2 to 2 cups a cup')],
    ),
    cautions: [caution('soaking-food-spoils'), caution('recalled')],
  });
}
