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
import { foodsWithHeat, heatOf, rowBasis } from './foodRows';

/** Gas constant, kJ/(mol K), CODATA. */
const GAS = 8.314462618e-3;

const schema = fields({
  /** Water activity at the temperature `from`, above 0 and below 1. */
  waterActivity: activityField(),
  /** Temperature it was measured at, -40 to 100 degC. */
  from: storageTemperature(),
  /** Temperature to know it at, -40 to 100 degC. */
  to: storageTemperature(),
  /** The food, where its heat of sorption is published. */
  food: optional(food()),
  /** Or a net heat of sorption of your own, in kJ/mol over that of pure water: 0 to 100. */
  heatOfSorption: optional(number('the net heat of sorption in kJ/mol: a number from 0 to 100', { min: 0, max: 100 })),
});
export type ShiftWaterActivityInput = z.input<typeof schema>;
export interface ShiftWaterActivity {
  /** Tells the answer from one that these tables have no figure for. */
  readonly known: true;
  /** Water activity at the temperature `to`, 0 to 1. */
  readonly waterActivity: number;
  /** The same from the heat of the wettest food to that of the driest, where the tables print both. */
  readonly range: Range<number>;
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** The water activity of a sealed food at another temperature, by Clausius and Clapeyron. */
export function shiftWaterActivity(input: ShiftWaterActivityInput): ShiftWaterActivity | NotKnown {
  const { waterActivity, from, to, food: asked, heatOfSorption } = readInput(schema, input);
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
    fail('OUT_OF_RANGE', 'to', `${to.value} ${to.unit}`, 'a temperature at which the water activity stays below 1');
  return answer({
    known: true,
    waterActivity: at(q),
    range: { low, likely: at(q), high },
    basis: [
      row === undefined || asked === undefined
        ? { of: 'waterActivity', kind: 'measured', note: 'heat of sorption' }
        : rowBasis(row, asked, 'waterActivity', 'heat of sorption'),
      { of: 'waterActivity', kind: 'equation', note: 'Clausius-Clapeyron equation' },
    ],
    cautions: [caution('estimate')],
  });
}
