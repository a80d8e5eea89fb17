import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { lethalityCaution } from './cautions';
import { foodTemperature, holdTime, rateAt, rateBasis, referenceTemperature, zValueField } from './terms';

const schema = /* @__PURE__ */ fields({
  /** At the reference temperature: a D value, an F value, a hold time; above 0. */
  time: holdTime(),
  /** Temperature of that time, 0 to 200 degC. */
  reference: referenceTemperature(),
  /** Degrees for a tenfold rate, 1 to 100 degC. */
  z: zValueField(),
  /** The other temperature, -80 to 200 degC. */
  temperature: foodTemperature(),
});

export type EquivalentTimeInput = z.input<typeof schema>;
export interface EquivalentTime {
  /** In the unit of the time given. */
  readonly time: Quantity<'time'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** Past this many times the given time the answer means nothing. */
const LONGEST = 1e12;

/**
 * The time at another temperature that does the same work as a time at the reference temperature: t = t_reference
 * 10^((reference - T)/z).
 *
 * It moves D values and published hold times along their own z line, to read a record against them. It is not
 * a process, and far from the reference the line is a guess.
 *
 * Source: FAO Fisheries Circular 784, section 1.5 (the same line as the lethal rate).
 *
 * @throws StillroomError OUT_OF_RANGE, also where the answer would be over 10^12 times the time or below 10^-12 of it
 *
 * @example
 * ```ts
 * import { equivalentTime } from 'stillroom/lethality';
 *
 * equivalentTime({ time: '5.6 min', reference: '160 degF', z: '16.7 degF', temperature: '150 degF' }).time.value; // ≈ 22.23
 * ```
 */
export function equivalentTime(input: EquivalentTimeInput): EquivalentTime {
  const given = readInput(schema, input);
  const rate = rateAt(
    valueIn(given.temperature, 'degC'),
    valueIn(given.reference, 'degC'),
    valueIn(given.z, 'delta degC'),
  );
  if (rate < 1 / LONGEST || rate > LONGEST) {
    fail('OUT_OF_RANGE', 'temperature', input.temperature, 'a temperature within 12 z of the reference');
  }
  return answer({
    time: quantityIn(given.time.value / rate, given.time.unit, given.time.unit),
    basis: [rateBasis('time')],
    cautions: ['record-check-only', 'published-heat-no-process', 'resistance-varies'].map(lethalityCaution),
  });
}
