import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { food } from '../foods/fields';
import { fields, number, optional, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Range } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import { type NotKnown, notKnown } from '../sources/no';
import { activityField, KELVIN, storageTemperature } from './fields';
import { foodsWithHeat, heatOf, rowBasis } from './waterActivityOf';

/** Gas constant, kJ/(mol K), CODATA. */
const GAS = 8.314462618e-3;

const schema = fields({
  /** Water activity at `startTemperature`, above 0 and below 1. */
  waterActivity: activityField(),
  /** Temperature it was measured at, -40 to 100 degC. */
  startTemperature: storageTemperature(),
  /** Temperature to know it at, -40 to 100 degC. */
  targetTemperature: storageTemperature(),
  /** The food, where its heat of sorption is published. */
  food: optional(food()),
  /** Or a net heat of sorption of your own, in kJ/mol over that of pure water: 0 to 100. */
  heatOfSorption: optional(number('the net heat of sorption in kJ/mol: a number from 0 to 100', { min: 0, max: 100 })),
});
export type ShiftWaterActivityInput = z.input<typeof schema>;
export interface ShiftWaterActivity {
  /** Tells the answer from one that these tables have no figure for. */
  readonly known: true;
  /** Water activity at `targetTemperature`, 0 to 1. */
  readonly waterActivity: number;
  /** The same from the heat of the wettest food to that of the driest, where the tables print both. */
  readonly waterActivityRange: Range<number>;
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * The water activity of a sealed food at another temperature. It rises as the bag warms: a batch measured in a cool
 * kitchen has a higher one in a warm pantry.
 *
 * Formula: Clausius-Clapeyron with the net isosteric heat q, `ln(aw2/aw1) = -(q/R)(1/T2 - 1/T1)`, moisture unchanged.
 * The one published heat is for freeze-dried lowbush blueberry: 5.5 kJ/mol at 8 % moisture (dry basis), which is served,
 * falling to 0.25 at 36 %; the range takes in both.
 *
 * @param input - `waterActivity`: at `startTemperature`; `targetTemperature`: the other one, both -40 to 100 degC;
 * `food` with a published heat, or `heatOfSorption`: your own, kJ/mol over that of pure water
 * @returns `waterActivity` and `waterActivityRange`; or `{ known: false }` for a food without a heat of sorption in
 * these tables
 * @throws StillroomError OUT_OF_RANGE where the result would not be below 1; UNKNOWN_NAME; MISSING; CONTRADICTION
 *
 * @example
 * ```ts
 * import { shiftWaterActivity } from 'stillroom/water-activity';
 *
 * const warm = shiftWaterActivity({ waterActivity: 0.5, startTemperature: '20 degC', targetTemperature: '30 degC', food: 'blueberries' });
 * warm.known && warm.waterActivity; // ≈ 0.539
 * ```
 */
export function shiftWaterActivity(input: ShiftWaterActivityInput): ShiftWaterActivity | NotKnown {
  const {
    waterActivity,
    startTemperature: from,
    targetTemperature: to,
    food: asked,
    heatOfSorption,
  } = readInput(schema, input);
  if (asked === undefined && heatOfSorption === undefined) {
    fail('MISSING', 'food', asked, 'either a food with a published heat of sorption, or heatOfSorption');
  }
  if (asked !== undefined && heatOfSorption !== undefined) {
    fail('CONTRADICTION', 'food', asked.name, 'either a food or a heatOfSorption, not both');
  }
  const row = asked === undefined ? undefined : heatOf(asked);
  if (asked !== undefined && row === undefined) {
    return answer(
      notKnown({
        code: 'no-heat-of-sorption',
        text: `These tables have no heat of sorption of ${asked.name}.`,
        instead: [
          { text: 'Measure the water activity at the warmest temperature it will be kept at.' },
          { text: 'Give a heat of your own as `heatOfSorption`.' },
          ...foodsWithHeat().map((name) => ({ text: `These tables have one of ${name}.`, food: name })),
        ],
        basis: [derived('known', 'the heats of sorption of these tables')],
        cautions: [caution('estimate')],
      }),
    );
  }
  const q = heatOfSorption ?? row?.q_kJ_mol ?? 0;
  const kelvins = 1 / (valueIn(to, 'degC') + KELVIN) - 1 / (valueIn(from, 'degC') + KELVIN);
  const at = (heat: number): number => waterActivity * Math.exp((-heat / GAS) * kelvins);
  const ends = [at(row?.wettest_kJ_mol ?? q), at(q)].sort((a, b) => a - b);
  const [low = 0, high = 1] = ends;
  if (high >= 1)
    fail(
      'OUT_OF_RANGE',
      'targetTemperature',
      `${to.value} ${to.unit}`,
      'a temperature at which the water activity stays below 1',
    );
  return answer({
    known: true,
    waterActivity: at(q),
    waterActivityRange: { low, likely: at(q), high },
    basis: [
      row === undefined || asked === undefined
        ? { of: 'waterActivity', kind: 'measured', note: 'heat of sorption' }
        : rowBasis(row, asked, 'waterActivity', 'heat of sorption'),
      { of: 'waterActivity', kind: 'equation', note: 'Clausius-Clapeyron equation' },
    ],
    cautions: [caution('estimate')],
  });
}
