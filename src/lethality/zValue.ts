import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { lethalityCaution } from './cautions';
import { foodTemperature, holdTime, rateBasis } from './terms';

const pointSchema = () =>
  fields({
    /** Temperature of the D value, -80 to 200 degC. */
    temperature: foodTemperature(),
    /** Time for one log10 reduction there, above 0. */
    dValue: holdTime(),
  });
const schema = /* @__PURE__ */ fields({
  /** A D value and its temperature. */
  first: pointSchema(),
  /** Another, longer where it is cooler. */
  second: pointSchema(),
});

export type ZValueInput = z.input<typeof schema>;
export interface ZValue {
  /** In the degrees of the first temperature. */
  readonly z: Quantity<'temperatureDifference'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** The z value from D values at two temperatures: z = (T2 - T1)/log10(D1/D2). */
export function zValue(input: ZValueInput): ZValue {
  const { first, second } = readInput(schema, input);
  const rise = valueIn(second.temperature, 'degC') - valueIn(first.temperature, 'degC');
  const logs = Math.log10(valueIn(first.dValue, 'min') / valueIn(second.dValue, 'min'));
  if (!(rise * logs > 0)) {
    fail('CONTRADICTION', 'second', input.second, 'a shorter D value at a higher temperature, a longer one at a lower');
  }
  return answer({
    z: quantityIn(rise / logs, 'delta degC', first.temperature.unit === 'degF' ? 'delta degF' : 'delta degC'),
    basis: [rateBasis('z')],
    cautions: [lethalityCaution('resistance-varies')],
  });
}
