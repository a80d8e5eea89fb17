import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Basis, Caution } from '../sources/basis';
import { lethalityCaution } from './cautions';
import { foodTemperature, RATE_BASIS, rateAt, referenceTemperature, zValueField } from './terms';

const schema = /* @__PURE__ */ fields({
  temperature: foodTemperature(),
  reference: referenceTemperature(),
  z: zValueField(),
});

export type LethalRateInput = z.input<typeof schema>;
export interface LethalRate {
  /** Minutes at the reference temperature that one minute at this temperature is worth. */
  readonly rate: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * What one minute at a temperature is worth in minutes at the reference temperature: L = 10^((T - reference)/z).
 *
 * Source: FAO Fisheries Circular 784, section 1.5.
 *
 * @param input.temperature - of the food, -80 degC to 200 degC
 * @param input.reference - 0 degC to 200 degC
 * @param input.z - degrees for a tenfold rate, 1 degC to 100 degC
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { lethalRate } from 'stillroom/lethality';
 *
 * lethalRate({ temperature: '116.1 degC', reference: '121.1 degC', z: '10 degC' }).rate; // ≈ 0.316228
 * lethalRate({ temperature: '232 degF', reference: '250 degF', z: '18 degF' }).rate; // ≈ 0.1
 * ```
 */
export function lethalRate(input: LethalRateInput): LethalRate {
  const given = readInput(schema, input);
  return answer({
    rate: rateAt(valueIn(given.temperature, 'degC'), valueIn(given.reference, 'degC'), valueIn(given.z, 'delta degC')),
    basis: [RATE_BASIS],
    cautions: [lethalityCaution('record-check-only')],
  });
}
