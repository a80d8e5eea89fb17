import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { food } from '../foods/fields';
import { figuresFor } from '../foods/figuresFor';
import { nameOf } from '../foods/tables';
import { fields, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import { derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import { type NotKnown, notKnown } from '../sources/no';
import { basisOf, type Sourced } from '../sources/table';
import {
  RECALLED_POINTS,
  THERMAL_TEXTBOOK,
  THERMAL_US,
  THERMAL_VEGETABLES,
  type ThermalRow,
  type UsUnitRow,
} from './tables';

const schema = fields({
  /** A food, such as `"peach"`. */
  food: food(),
});
export type PrintedPropertiesInput = z.input<typeof schema>;

/** What one source prints of a food. */
export interface FreezingFigures {
  /** Where it begins to freeze, in the unit the source prints. */
  readonly temperature: Quantity<'temperature'>;
  /** Water, share of the weight, 0 to 1. */
  readonly moisture?: number;
  /** Specific heat above freezing, kJ/(kg K). */
  readonly specificHeatAbove?: number;
  /** Specific heat when frozen, kJ/(kg K). */
  readonly specificHeatBelow?: number;
  /** Heat to freeze it, kJ/kg. */
  readonly latentHeat?: number;
  /** Where these figures come from. */
  readonly basis: readonly Basis[];
}

export interface PrintedProperties extends FreezingFigures {
  /** The figures are here. */
  readonly known: true;
  /** Trade name of the food. */
  readonly food: string;
  /** What the other sources print. */
  readonly others: readonly FreezingFigures[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** kJ/(kg K) in 1 Btu/(lb degF), and kJ/kg in 1 Btu/lb: definitions of the international table Btu. */
const BTU_PER_LB_F = 4.1868;
const BTU_PER_LB = 2.326;

const ofThermal = (row: ThermalRow): FreezingFigures => ({
  temperature: { value: row.initialFreezing, unit: 'degC' },
  moisture: row.water / 100,
  specificHeatAbove: row.specificHeatAbove,
  specificHeatBelow: row.specificHeatBelow,
  latentHeat: row.latentHeat,
  basis: [basisOf(row, 'temperature', 'and its specific heats and latent heat')],
});
const ofUsUnits = (row: UsUnitRow): FreezingFigures => ({
  temperature: { value: row.initialFreezingF, unit: 'degF' },
  specificHeatAbove: row.specificHeatAboveBtu * BTU_PER_LB_F,
  specificHeatBelow: row.specificHeatBelowBtu * BTU_PER_LB_F,
  latentHeat: row.latentHeatBtu * BTU_PER_LB,
  basis: [basisOf(row, 'temperature', 'and its specific heats and latent heat')],
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
      basis: [basisOf(row, 'temperature')],
    }),
  })),
];

/**
 * The temperature at which a food begins to freeze, with its specific heats and latent heat where they are printed. The
 * handbook comes first, then a textbook that rounds to whole degrees, then recalled figures, which say so.
 */
export function printedProperties(input: PrintedPropertiesInput): PrintedProperties | NotKnown {
  const { food: asked } = readInput(schema, input);
  const from = figuresFor(asked.id, 'freezing-point').find((id) => FIGURES.some((entry) => entry.food === id));
  const entries = FIGURES.filter((entry) => entry.food === from);
  const [first, ...rest] = entries;
  if (first === undefined || from === undefined) {
    return answer(
      notKnown({
        code: 'not in these tables',
        text: `These tables hold no freezing point for ${asked.name}.`,
        instead:
          'Most fruit and vegetables begin to freeze between -0.5 and -2 degC. For the energy, pass the moisture of the food to freezeEnergy.',
        basis: [derived('reason', 'what the tables of freezing points hold')],
      }),
    );
  }
  const lent = (figures: FreezingFigures): FreezingFigures =>
    from === asked.id ? figures : { ...figures, basis: figures.basis.map((line) => ({ ...line, food: nameOf(from) })) };
  return answer({
    known: true,
    food: asked.name,
    ...lent(first.figures()),
    others: rest.map(({ figures }) => lent(figures())),
    cautions: entries.every(({ row }) => row.obtained === 'memory') ? [caution('recalled')] : [],
  });
}
