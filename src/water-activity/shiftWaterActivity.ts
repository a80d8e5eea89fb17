import type * as z from 'zod/mini';
import heatsJson from '../../data/water-activity/sorption-heats.json';
import { answer } from '../common/answer';
import { lookUp, type Named } from '../common/names';
import { fail } from '../errors/StillroomError';
import { fields, name, number, optional, readInput, temperature } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Range } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { activityField, KELVIN } from './fields';

interface HeatRow extends Named, Sourced {
  readonly q_kJ_mol: number;
  readonly u_kJ_mol: number;
  readonly moisture_g_per_g_dry: readonly [number, number];
}
const heats = asTable<HeatRow>(heatsJson).rows;

/** Gas constant, kJ/(mol K), CODATA. */
const GAS = 8.314462618e-3;

const kitchen = () => temperature({ min: { value: -40, unit: 'degC' }, max: { value: 100, unit: 'degC' } });
const schema = fields({
  waterActivity: activityField(),
  from: kitchen(),
  to: kitchen(),
  food: optional(name('a food with a published heat of sorption')),
  heatOfSorption: optional(number('the net heat of sorption in kJ/mol: a number from 0 to 100', { min: 0, max: 100 })),
});
export type ShiftWaterActivityInput = z.input<typeof schema>;
export interface ShiftWaterActivity {
  readonly waterActivity: number;
  readonly range: Range<number>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The water activity of a sealed food at another temperature: measured in the cool kitchen, what is it in the warm
 * pantry? It rises as the bag warms.
 *
 * Formula: Clausius-Clapeyron with the net isosteric heat q, `ln(aw2/aw1) = -(q/R)(1/T2 - 1/T1)`, moisture unchanged.
 * The one published heat is for freeze-dried lowbush blueberry, 5.5 kJ/mol, from 8 to 36 % moisture (dry basis).
 *
 * @param input - `waterActivity`: at the temperature `from`; `to`: the other temperature, both -40 to 100 degC;
 * `food` with a published heat, or `heatOfSorption`: your own, kJ/mol over that of pure water
 * @throws StillroomError OUT_OF_RANGE where the result would not be below 1; UNKNOWN_NAME; MISSING
 *
 * @example
 * ```ts
 * import { shiftWaterActivity } from 'stillroom/water-activity';
 *
 * shiftWaterActivity({ waterActivity: 0.5, from: '20 degC', to: '30 degC', food: 'blueberries' }).waterActivity; // ≈ 0.539
 * ```
 */
export function shiftWaterActivity(input: ShiftWaterActivityInput): ShiftWaterActivity {
  const { waterActivity, from, to, food, heatOfSorption } = readInput(schema, input);
  if ((food === undefined) === (heatOfSorption === undefined)) {
    const code = food === undefined ? 'MISSING' : 'CONTRADICTION';
    fail(code, 'food', food, 'either a food with a published heat of sorption, or heatOfSorption');
  }
  const row = food === undefined ? undefined : lookUp(food, heats, 'food', 'food with a published heat of sorption');
  const q = heatOfSorption ?? row?.q_kJ_mol ?? 0;
  const u = row?.u_kJ_mol ?? 0;
  const kelvins = 1 / (valueIn(to, 'degC') + KELVIN) - 1 / (valueIn(from, 'degC') + KELVIN);
  const at = (heat: number): number => waterActivity * Math.exp((-heat / GAS) * kelvins);
  const ends = [at(q - u), at(q + u)].sort((a, b) => a - b);
  const [low = 0, high = 1] = ends;
  if (high >= 1)
    fail('OUT_OF_RANGE', 'to', `${to.value} ${to.unit}`, 'a temperature at which the water activity stays below 1');
  return answer({
    waterActivity: at(q),
    range: { low, likely: at(q), high },
    basis: [
      row === undefined
        ? { of: 'heat of sorption', kind: 'measured' }
        : basisOf(row, `heat of sorption of ${row.name}`),
      { of: 'Clausius-Clapeyron equation', kind: 'equation' },
    ],
    cautions: [caution('estimate')],
  });
}
