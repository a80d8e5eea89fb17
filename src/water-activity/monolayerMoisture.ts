import type * as z from 'zod/mini';
import monolayersJson from '../../data/water-activity/monolayers.json';
import { answer } from '../common/answer';
import { lookUp, type Named } from '../common/names';
import { fields, name, readInput } from '../quantity/fields';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { activityCaution } from './cautions';

interface MonolayerRow extends Named, Sourced {
  readonly state: string;
  readonly model: 'BET' | 'GAB';
  readonly temperature_degC: readonly [number, number] | null;
  readonly M0_g_per_g_dry: readonly [number, number];
}
const rows = asTable<MonolayerRow>(monolayersJson).rows;
const foods = [...new Set(rows.map((row) => row.name))].map((own) => {
  const values = rows.filter((row) => row.name === own);
  return { name: own, synonyms: [...new Set(values.flatMap(({ synonyms }) => synonyms ?? []))], values };
});

const schema = fields({ food: name('a food with a published monolayer value') });
export type MonolayerMoistureInput = z.input<typeof schema>;
export interface MonolayerMoisture {
  readonly food: string;
  /** Lowest and highest published value, g water per g dry matter. */
  readonly moisture: readonly [number, number];
  readonly values: readonly {
    readonly model: 'BET' | 'GAB';
    readonly state: string;
    readonly temperatures?: readonly [number, number];
    readonly moisture: readonly [number, number];
  }[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The monolayer moisture of a food: about where dried food keeps its quality longest. Drier than this, fats go
 * stale sooner; wetter, browning and then growth set in.
 *
 * @param input - `food`: its name
 * @throws StillroomError UNKNOWN_NAME for a food without a published value
 *
 * @example
 * ```ts
 * import { monolayerMoisture } from 'stillroom/water-activity';
 *
 * monolayerMoisture({ food: 'raisins' }).moisture; // => [0.0789, 0.082]
 * ```
 */
export function monolayerMoisture(input: MonolayerMoistureInput): MonolayerMoisture {
  const food = lookUp(readInput(schema, input).food, foods, 'food', 'food with a published monolayer value');
  const ends = food.values.flatMap(({ M0_g_per_g_dry }) => M0_g_per_g_dry);
  const memory = food.values.some(({ obtained }) => obtained === 'memory');
  return answer({
    food: food.name,
    moisture: [Math.min(...ends), Math.max(...ends)],
    values: food.values.map(({ model, state, temperature_degC, M0_g_per_g_dry }) => ({
      model,
      state,
      ...(temperature_degC === null ? {} : { temperatures: temperature_degC }),
      moisture: M0_g_per_g_dry,
    })),
    basis: joinBasis(food.values.map((row) => basisOf(row, `monolayer moisture of ${food.name}`))),
    cautions: [activityCaution('isotherm-state'), ...(memory ? [caution('recalled')] : [])],
  });
}
