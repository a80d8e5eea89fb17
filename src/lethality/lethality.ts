import * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, list, optional, readInput, time } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { lethalityCaution } from './cautions';
import { type Log, type LogPoint, readLog, readPoint } from './readLog';
import { RATE_BASIS, rateAt, referenceTemperature, zValueField } from './terms';

const MOST_READINGS = 1_000_000;

const schema = /* @__PURE__ */ fields({
  log: list<z.ZodMiniType<LogPoint>>('readings of time and temperature', z.custom<LogPoint>(), 2, MOST_READINGS),
  reference: referenceTemperature(),
  z: zValueField(),
  longestGap: optional(time()),
});

export type LethalityInput = z.input<typeof schema>;
export interface Lethality {
  /** Minutes at the reference temperature that the record is worth (the F value), by the trapezoid rule. */
  readonly minutes: number;
  /** The same if the temperature moved in a straight line between readings; never more than `minutes`. */
  readonly straightLineMinutes: number;
  /** Part of `minutes` that came after the hottest reading 0 to 1. */
  readonly shareAfterHottest: number;
  /** The hottest reading as it was given; the last of them, where several are equal. */
  readonly hottest: { readonly time: Quantity<'time'>; readonly temperature: Quantity<'temperature'> };
  /** The longest time between two readings, in the unit of the hottest one. */
  readonly longestGap: Quantity<'time'>;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Trapezoid above straight line by more than this part of the whole: the log is too coarse to trust. */
const COARSE = 0.02;

/** Lethal rate integrated along one straight line of temperature: exact, (L2 - L1)/ln(L2/L1) a minute. */
function straightLine(before: number, after: number): number {
  const growth = Math.log(after / before);
  // two nearly equal rates: the mean, which is then exact to the last digit, and no division by zero
  if (!(Math.abs(growth) > 1e-6)) return (before + after) / 2;
  return (after - before) / growth;
}

function addUp({ minutes, temperatures }: Log, reference: number, zDegrees: number) {
  let trapezoid = 0;
  let straight = 0;
  let untilHottest = 0;
  let hottest = 0;
  let gap = 0;
  let before = rateAt(temperatures[0] as number, reference, zDegrees);
  for (let i = 1; i < minutes.length; i++) {
    const step = (minutes[i] as number) - (minutes[i - 1] as number);
    const rate = rateAt(temperatures[i] as number, reference, zDegrees);
    trapezoid += (step * (before + rate)) / 2;
    straight += step * straightLine(before, rate);
    gap = Math.max(gap, step);
    if ((temperatures[i] as number) >= (temperatures[hottest] as number)) {
      hottest = i;
      untilHottest = trapezoid;
    }
    before = rate;
  }
  return { trapezoid, straight: Math.min(straight, trapezoid), untilHottest, hottest, gap };
}

/**
 * How much heat a temperature record adds up to: the F value by the general method.
 *
 * **It checks a record and never makes a process.** No time or temperature may be taken from it for canning anything;
 * the tested process stands whatever a record says.
 *
 * Each reading is worth L = 10^((T - reference)/z) minutes a minute, and `minutes` is the area under L by the
 * trapezoid rule. Between readings a straight line of temperature would be worth a little less; that figure stands
 * beside it, and a record too coarse for the two to agree within 2 % is told so.
 *
 * Source: FAO Fisheries Circular 784, section 1.5 (the general method).
 *
 * @param input.log - 2 to 1,000,000 readings `{ time, temperature }`, times rising from any start, -80 degC to 200 degC
 * @param input.reference - temperature that the minutes are counted at (121.1 degC or 250 degF for F0), 0 degC to 200 degC
 * @param input.z - degrees for a tenfold rate (10 degC or 18 degF for F0), 1 degC to 100 degC
 * @param input.longestGap - refuse a record with a longer gap than this; when left out, any gap is taken
 * @throws StillroomError OUT_OF_RANGE for one reading or too long a gap, CONTRADICTION for times that do not rise
 *
 * @example
 * ```ts
 * import { lethality } from 'stillroom/lethality';
 *
 * const held = lethality({
 *   log: [
 *     { time: '0 min', temperature: '121.1 degC' },
 *     { time: '3 min', temperature: '121.1 degC' },
 *     { time: '4 min', temperature: '111.1 degC' },
 *   ],
 *   reference: '121.1 degC',
 *   z: '10 degC',
 * });
 * held.minutes; // ≈ 3.55
 * held.cautions[0].id; // => 'record-check-only'
 * lethality({ log: [{ time: '0 min', temperature: '90 degC' }], reference: '121.1 degC', z: '10 degC' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function lethality(input: LethalityInput): Lethality {
  const given = readInput(schema, input);
  const gap = given.longestGap === undefined ? undefined : valueIn(given.longestGap, 'min');
  const log = readLog(given.log, gap);
  const zDegrees = valueIn(given.z, 'delta degC');
  const sum = addUp(log, valueIn(given.reference, 'degC'), zDegrees);
  const hottest = readPoint(given.log[sum.hottest]);
  const coarse = sum.trapezoid - sum.straight > COARSE * sum.trapezoid;
  return answer({
    minutes: sum.trapezoid,
    straightLineMinutes: sum.straight,
    shareAfterHottest: sum.trapezoid === 0 ? 0 : (sum.trapezoid - sum.untilHottest) / sum.trapezoid,
    hottest,
    longestGap: quantityIn(sum.gap, 'min', hottest.time.unit),
    basis: [
      { of: 'temperatures', kind: 'measured' },
      { ...RATE_BASIS, what: 'minutes' },
    ],
    cautions: [
      lethalityCaution('record-check-only'),
      lethalityCaution('coldest-spot'),
      lethalityCaution('cooling-counts'),
      ...(coarse ? [lethalityCaution('coarse-log')] : []),
    ],
  });
}
