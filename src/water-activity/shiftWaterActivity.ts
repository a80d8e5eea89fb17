import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, number, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { activityField, KELVIN, storageTemperature } from './fields';

/** Gas constant, kJ/(mol K), CODATA. */
const GAS = 8.314462618e-3;

const schema = fields({
  /** Water activity at `startTemperature`, above 0 and below 1. */
  waterActivity: activityField(),
  /** Temperature it was measured at, -40 to 100 degC. */
  startTemperature: storageTemperature(),
  /** Temperature to know it at, -40 to 100 degC. */
  targetTemperature: storageTemperature(),
  /** Net heat of sorption of the food at its moisture, in kJ/mol over that of pure water: 0 to 100. */
  heatOfSorption: number('the net heat of sorption in kJ/mol: a number from 0 to 100', { min: 0, max: 100 }),
});
export type ShiftWaterActivityInput = z.input<typeof schema>;
export interface ShiftWaterActivity {
  /** Water activity at `targetTemperature`, 0 to 1. */
  readonly waterActivity: number;
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** The water activity of a sealed food at another temperature, by Clausius and Clapeyron. */
export function shiftWaterActivity(input: ShiftWaterActivityInput): ShiftWaterActivity {
  const { waterActivity, startTemperature: from, targetTemperature: to, heatOfSorption } = readInput(schema, input);
  const kelvins = 1 / (valueIn(to, 'degC') + KELVIN) - 1 / (valueIn(from, 'degC') + KELVIN);
  const shifted = waterActivity * Math.exp((-heatOfSorption / GAS) * kelvins);
  if (shifted >= 1) {
    const expected = 'a temperature at which the water activity stays below 1';
    fail('OUT_OF_RANGE', 'targetTemperature', `${to.value} ${to.unit}`, expected);
  }
  return answer({
    waterActivity: shifted,
    basis: [
      { of: 'waterActivity', kind: 'measured', note: 'heat of sorption' },
      { of: 'waterActivity', kind: 'equation', note: 'Clausius-Clapeyron equation' },
    ],
    cautions: [caution('estimate')],
  });
}
