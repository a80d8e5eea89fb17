import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { lethalityCaution } from './cautions';
import { equivalentTime } from './equivalentTime';
import { foodTemperature, holdTime, RATE_BASIS, referenceTemperature, zValueField } from './terms';

const schema = /* @__PURE__ */ fields({
  dValue: holdTime(),
  reference: referenceTemperature(),
  z: zValueField(),
  temperature: foodTemperature(),
});

export type DValueAtInput = z.input<typeof schema>;
export interface DValueAt {
  /** In the unit of the D value given. */
  readonly dValue: Quantity<'time'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The D value (time for one log10 reduction) at another temperature, along its z: D = D_ref 10^((T_ref - T)/z).
 *
 * Source: as for `equivalentTime`.
 *
 * @param input.dValue - D at the reference temperature
 * @param input.reference - 0 degC to 200 degC
 * @param input.z - degrees for a tenfold rate, 1 degC to 100 degC
 * @param input.temperature - the other temperature, -80 degC to 200 degC
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { dValueAt } from 'stillroom/lethality';
 *
 * dValueAt({ dValue: '0.21 min', reference: '121.1 degC', z: '10 degC', temperature: '111.1 degC' }).dValue.value; // ≈ 2.1
 * ```
 */
export function dValueAt(input: DValueAtInput): DValueAt {
  const { dValue, reference, z, temperature } = readInput(schema, input);
  const moved = equivalentTime({ time: dValue, reference, z, temperature });
  return answer({
    dValue: moved.time,
    basis: [{ ...RATE_BASIS, what: 'D value' }],
    cautions: [...moved.cautions, lethalityCaution('resistance-varies')],
  });
}
