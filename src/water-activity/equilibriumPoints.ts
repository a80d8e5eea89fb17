import type * as z from 'zod/mini';
import pointsJson from '../../data/water-activity/isotherm-points.json';
import sugarsJson from '../../data/water-activity/sugar-moisture.json';
import { answer } from '../common/answer';
import { lookUp, type Named } from '../common/names';
import { fields, name, readInput } from '../quantity/fields';
import { type Basis, type Caution, joinBasis } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { activityCaution } from './cautions';

interface PointRow extends Named, Sourced {
  readonly temperature_degC: number;
  readonly aw: number;
  readonly X_g_per_g_dry: number;
}
interface SugarRow extends Named, Sourced {
  readonly state: string;
  readonly points: readonly (readonly [aw: number, per100: number])[];
}
/** The printed moistures of one food in one state. */
interface Series {
  readonly name: string;
  readonly synonyms?: readonly string[];
  readonly row: Sourced;
  readonly state: string;
  readonly points: readonly { readonly waterActivity: number; readonly moisture: number }[];
}
const series: readonly Series[] = [
  ...asTable<PointRow>(pointsJson).rows.map((row) => ({
    ...row,
    row,
    state: `${row.temperature_degC} degC`,
    points: [{ waterActivity: row.aw, moisture: row.X_g_per_g_dry }],
  })),
  ...asTable<SugarRow>(sugarsJson).rows.map((row) => ({
    ...row,
    row,
    points: row.points.map(([waterActivity, per100]) => ({ waterActivity, moisture: per100 / 100 })),
  })),
];
const foods = [...new Set(series.map((one) => one.name))].map((own) => ({
  name: own,
  synonyms: series.find((one) => one.name === own)?.synonyms ?? [],
  series: series.filter((one) => one.name === own),
}));

const schema = fields({ food: name('a sugar, salt or starch with printed equilibrium points') });
export type EquilibriumPointsInput = z.input<typeof schema>;
export interface EquilibriumPoints {
  readonly food: string;
  readonly series: readonly {
    readonly state: string;
    /** Moisture in g water per g dry matter. */
    readonly points: readonly { readonly waterActivity: number; readonly moisture: number }[];
  }[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How much water dry sugar, salt or starch takes up in air of a given humidity, as printed; nothing is read between
 * the points, since a crystal takes up almost nothing until it suddenly melts into its own water.
 *
 * @param input - `food`: `sucrose`, `glucose`, `fructose`, `lactose`, `sorbitol`, `corn syrup`, `NaCl`, `KCl`,
 * `potato starch`
 * @throws StillroomError UNKNOWN_NAME for anything else
 *
 * @example
 * ```ts
 * import { equilibriumPoints } from 'stillroom/water-activity';
 *
 * equilibriumPoints({ food: 'potato starch' }).series[0].points; // => [{ waterActivity: 0.3, moisture: 0.1 }]
 * ```
 */
export function equilibriumPoints(input: EquilibriumPointsInput): EquilibriumPoints {
  const food = lookUp(readInput(schema, input).food, foods, 'food', 'food with printed equilibrium points');
  const damaged = food.series.some(({ row }) => row.source === 'sloan-labuza-1975');
  return answer({
    food: food.name,
    series: food.series.map(({ state, points }) => ({ state, points })),
    basis: joinBasis(food.series.map(({ row }) => basisOf(row, `equilibrium moisture of ${food.name}`))),
    cautions: [activityCaution('isotherm-state'), ...(damaged ? [activityCaution('damaged-copy')] : [])],
  });
}
