import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { lookUp } from '../common/names';
import { fields, name, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import { basisOf, type Sourced } from '../sources/table';
import { namedFoods } from './foodNames';
import {
  RECALLED_POINTS,
  THERMAL_TEXTBOOK,
  THERMAL_US,
  THERMAL_VEGETABLES,
  type ThermalRow,
  type UsUnitRow,
} from './tables';

const schema = fields({ food: name('a food, such as "peach"') });
export type InitialFreezingPointInput = z.input<typeof schema>;

/** What one source prints of a food. */
export interface FreezingFigures {
  readonly temperature: Quantity<'temperature'>;
  /** Water, share of the weight. */
  readonly water?: number;
  /** kJ/(kg K) */
  readonly specificHeatAbove?: number;
  /** kJ/(kg K) */
  readonly specificHeatBelow?: number;
  /** kJ/kg */
  readonly latentHeat?: number;
  readonly basis: readonly Basis[];
}

export interface InitialFreezingPoint extends FreezingFigures {
  readonly food: string;
  /** What the other sources print. */
  readonly others: readonly FreezingFigures[];
  readonly cautions: readonly Caution[];
}

/** kJ/(kg K) in 1 Btu/(lb degF), and kJ/kg in 1 Btu/lb: definitions of the international table Btu. */
const BTU_PER_LB_F = 4.1868;
const BTU_PER_LB = 2.326;

const ofThermal = (row: ThermalRow): FreezingFigures => ({
  temperature: { value: row.initialFreezing, unit: 'degC' },
  water: row.water / 100,
  specificHeatAbove: row.specificHeatAbove,
  specificHeatBelow: row.specificHeatBelow,
  latentHeat: row.latentHeat,
  basis: [basisOf(row, 'freezing point, specific heats and latent heat')],
});
const ofUsUnits = (row: UsUnitRow): FreezingFigures => ({
  temperature: { value: row.initialFreezingF, unit: 'degF' },
  specificHeatAbove: row.specificHeatAboveBtu * BTU_PER_LB_F,
  specificHeatBelow: row.specificHeatBelowBtu * BTU_PER_LB_F,
  latentHeat: row.latentHeatBtu * BTU_PER_LB,
  basis: [basisOf(row, 'freezing point, specific heats and latent heat')],
});

/** Every row with its food, the handbook's first, then the textbook's rounded figures, then what is recalled. */
const FIGURES: readonly { food: string; row: Sourced; figures: () => FreezingFigures }[] = [
  ...THERMAL_VEGETABLES.map((row) => ({ food: row.food, row, figures: () => ofThermal(row) })),
  ...THERMAL_US.map((row) => ({ food: row.food, row, figures: () => ofUsUnits(row) })),
  ...THERMAL_TEXTBOOK.map((row) => ({ food: row.food, row, figures: () => ofThermal(row) })),
  ...RECALLED_POINTS.map((row) => ({
    food: row.food,
    row,
    figures: (): FreezingFigures => ({
      temperature: { value: row.initialFreezing, unit: 'degC' },
      basis: [basisOf(row, 'initial freezing point')],
    }),
  })),
];
const FOODS = namedFoods(FIGURES.map(({ food }) => food));

/**
 * The temperature at which a food begins to freeze, with its specific heats and latent heat where they are printed.
 *
 * The handbook comes first, then a textbook that rounds to whole degrees, then recalled figures, which say so.
 *
 * @param input.food - `"peach"`, `"green beans"`
 * @returns `temperature` in the unit the source prints; specific heats in kJ/(kg K), latent heat in kJ/kg; `others`
 * holds what further sources print
 * @throws StillroomError UNKNOWN_NAME, with the nearest names
 *
 * @example
 * ```ts
 * import { initialFreezingPoint } from 'stillroom/freezing';
 *
 * initialFreezingPoint({ food: 'carrots' }).temperature; // => { value: -1.4, unit: 'degC' }
 * initialFreezingPoint({ food: 'peaches' }).temperature; // => { value: 30.4, unit: 'degF' }
 * ```
 */
export function initialFreezingPoint(input: InitialFreezingPointInput): InitialFreezingPoint {
  const { food: asked } = readInput(schema, input);
  const food = lookUp(asked, FOODS, 'food', 'food with a freezing point').name;
  const entries = FIGURES.filter((entry) => entry.food === food);
  const [first, ...rest] = entries;
  if (first === undefined) throw new Error(`no freezing point for ${food}`);
  return answer({
    food,
    ...first.figures(),
    others: rest.map(({ figures }) => figures()),
    cautions: entries.every(({ row }) => row.obtained === 'memory') ? [caution('recalled')] : [],
  });
}
