import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, list, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Basis, Caution } from '../sources/basis';
import { lethalityCaution } from './cautions';
import { foodTemperature, holdTime, RATE_BASIS, rateAt, referenceTemperature, zValueField } from './terms';

const schema = /* @__PURE__ */ fields({
  holds: list('times held at a temperature', fields({ temperature: foodTemperature(), time: holdTime() }), 1, 10_000),
  reference: referenceTemperature(),
  z: zValueField(),
});

export type HoldLethalityInput = z.input<typeof schema>;
export interface HoldLethality {
  /** Minutes at the reference temperature that the holds are worth together. */
  readonly minutes: number;
  /** What each hold adds to it, in the order given. */
  readonly parts: readonly number[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * How much heat a list of holds adds up to, each temperature held for its time: sum of t 10^((T - reference)/z).
 *
 * For a record of readings use `lethality`. Like it, this checks and never makes a process.
 *
 * Source: FAO Fisheries Circular 784, section 1.5; the same sum in textbook examples.
 *
 * @param input.holds - 1 to 10,000 of `{ temperature, time }`
 * @param input.reference - temperature that the minutes are counted at, 0 degC to 200 degC
 * @param input.z - degrees for a tenfold rate, 1 degC to 100 degC
 * @throws StillroomError OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { holdLethality } from 'stillroom/lethality';
 *
 * holdLethality({
 *   holds: [
 *     { temperature: '111 degC', time: '10 min' },
 *     { temperature: '121 degC', time: '1 min' },
 *   ],
 *   reference: '121 degC',
 *   z: '10 degC',
 * }).minutes; // ≈ 2
 * ```
 */
export function holdLethality(input: HoldLethalityInput): HoldLethality {
  const given = readInput(schema, input);
  const reference = valueIn(given.reference, 'degC');
  const zDegrees = valueIn(given.z, 'delta degC');
  const parts = given.holds.map(
    ({ temperature, time }) => valueIn(time, 'min') * rateAt(valueIn(temperature, 'degC'), reference, zDegrees),
  );
  return answer({
    minutes: parts.reduce((sum, part) => sum + part, 0),
    parts,
    basis: [
      { of: 'temperatures', kind: 'measured' },
      { ...RATE_BASIS, what: 'minutes' },
    ],
    cautions: ['record-check-only', 'coldest-spot', 'cooling-counts'].map(lethalityCaution),
  });
}
