import type * as z from 'zod/mini';
import tableJson from '../../data/solution/sucrose-solubility.json';
import equationsJson from '../../data/solution/sucrose-solubility-equations.json';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity, Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import type { RowOf } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { liquidTemperature } from './fields';
import { densityAt, densityBasis, polynomialAt } from './sucroseDensity';
import { between, type Point } from './table';
import type { solubilityEquationRow, solubilityRow } from './tables';

const equations = asTable<RowOf<typeof solubilityEquationRow>>(equationsJson).rows;
const table = asTable<RowOf<typeof solubilityRow>>(tableJson).rows;
const printed: readonly Point[] = table.map((row) => [row.temperature, row.perSolution]);
const followed = equations.find((row) => row.id === 'bubnik-kadlec') as (typeof equations)[number];

/** Brix of a saturated solution at t degC (0 to 100): the equation followed, and the ends of all published figures. */
export function solubilityAt(t: number): Range<number> {
  const handbook = between(printed, t) as number; // the table and the equations reach over the same 0 to 100 degC
  const all = [handbook, ...equations.map((row) => polynomialAt(row.coefficients, t))];
  return { low: Math.min(...all), likely: polynomialAt(followed.coefficients, t), high: Math.max(...all) };
}

/** What an answer that checks against solubility rests on: `of` is the path of the answer's field. */
export const solubilityBasis = (of: string, range = of): Basis[] => [
  { ...basisOf(followed, of, 'solubility of sucrose'), kind: 'equation' },
  ...equations.filter((row) => row !== followed).map((row) => basisOf(row, range, 'range of the solubility')),
  ...table.slice(0, 1).map((row) => basisOf(row, range, 'range of the solubility')),
];

const schema = /* @__PURE__ */ fields({
  /** Of the solution, 0 to 100 degC. */
  temperature: liquidTemperature(),
});
export type SucroseSolubilityInput = z.input<typeof schema>;
export interface SucroseSolubility {
  /** Degrees Brix of the saturated solution. */
  readonly brix: number;
  /** Grams of sugar that a gram of water holds. */
  readonly sugarPerWater: number;
  /** The published figures differ: the lowest and the highest, in Brix. */
  readonly brixRange: Range<number>;
  /** Density of the saturated solution at that temperature. */
  readonly density: Quantity<'density'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * The most table sugar that water holds at a temperature: above it a cooled syrup or jam grows crystals.
 *
 * Follows Bubnik and Kadlec (1995): S = 64.447 + 0.08222 t + 0.0016169 t^2 - 1.558e-6 t^3 - 4.63e-8 t^4, g in
 * 100 g of solution, 0 to 100 degC. The range takes in Vavrinecz's equation (recalled) and the older handbook
 * table (Mohos 2010, tables A2.2 and A2.3), which is 0.4 higher at 20 degC. Pure sucrose only: sugar that has
 * turned into glucose and fructose in an acid boil stays dissolved further.
 *
 * @param input - `temperature`: 0 to 100 degC
 * @throws StillroomError OUT_OF_RANGE outside that range
 *
 * @example
 * ```ts
 * import { sucroseSolubility } from 'stillroom/solution';
 *
 * sucroseSolubility({ temperature: '20 degC' }).brix; // ≈ 66.72
 * sucroseSolubility({ temperature: '20 degC' }).sugarPerWater; // ≈ 2.005
 * ```
 */
export function sucroseSolubility(input: SucroseSolubilityInput): SucroseSolubility {
  const t = valueIn(readInput(schema, input).temperature, 'degC');
  const range = solubilityAt(t);
  const brix = range.likely;
  return answer({
    brix,
    sugarPerWater: brix / (100 - brix),
    brixRange: range,
    density: { value: densityAt(brix, t) / 1000, unit: 'g/mL' },
    basis: [...solubilityBasis('brix', 'brixRange'), ...densityBasis('density')],
    cautions: [],
  });
}
