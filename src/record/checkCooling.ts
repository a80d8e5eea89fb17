import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { fields, list, readInput, temperature, time } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { recordCaution } from './cautions';
import { coolingRows, ruleNamed } from './tables';

const schema = /* @__PURE__ */ fields({
  /** Readings `{ time, temperature }` in rising order of time, 2 to 10,000. */
  log: list(
    'readings in the order they were made',
    fields({ time: time({ min: { value: 0, unit: 'min' } }), temperature: temperature() }),
    2,
    10_000,
  ),
});
export type CheckCoolingInput = Given<z.input<typeof schema>>;

/** One limit, and how the log stands to it. */
export interface CoolingStage {
  readonly rule: string;
  /** From and to, degF. */
  readonly from: number;
  readonly to: number;
  readonly mostHours: number;
  /** `kept`, `broken`, or `open` where the log ends too early, or begins too late, to tell. */
  readonly verdict: 'kept' | 'broken' | 'open';
  /** Hours from the one temperature to the first reading at or below the other. */
  readonly hours?: number;
}
export interface CheckCooling {
  readonly verdict: 'kept' | 'broken' | 'open';
  readonly stages: readonly CoolingStage[];
  readonly next: string;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const NEXT = {
  kept: 'Put it away, covered and dated.',
  open: 'Go on cooling and reading; spread it in shallow pans or set it in ice water.',
  broken:
    'Throw it out; only food that missed the first limit and is caught there may be heated to 165 degF at once and cooled again.',
} as const;
const STAGES = ['Food Code stage 1', 'Food Code total'] as const;

/**
 * Whether cooked food that is not canned (stock, soup, filling for the freezer) cooled fast enough: from 135 to 70 degF
 * in 2 h, and from 135 to 41 degF in 6 h in all. The clock runs from the last reading at or above 135 degF to the first
 * reading at or below the limit; a log that never shows 135 degF cannot show that the limits were kept.
 *
 * @returns `verdict` (`kept`, `broken`, or `open` where the log is too short to tell), each stage, what to do
 * @throws StillroomError CONTRADICTION for times out of order
 *
 * Source: FDA Food Code 3-501.14, seen in cooling logs that quote it; University of Maine cooling sheet (165 degF).
 *
 * @example
 * ```ts
 * import { checkCooling } from 'stillroom/record';
 *
 * checkCooling({
 *   log: [
 *     { time: '0 h', temperature: '140 degF' },
 *     { time: '1.5 h', temperature: '68 degF' },
 *     { time: '5 h', temperature: '40 degF' },
 *   ],
 * }).verdict; // => 'kept'
 * ```
 */
export function checkCooling(input: CheckCoolingInput): CheckCooling {
  const readings = readInput(schema, input).log.map(({ time: at, temperature: read }) => ({
    hours: valueIn(at, 'h'),
    degF: valueIn(read, 'degF'),
  }));
  readings.forEach(({ hours }, index) => {
    const before = readings[index - 1]?.hours ?? -1;
    if (hours <= before)
      fail('CONTRADICTION', `log[${index}].time`, input.log[index]?.time, 'a time after the reading before it');
  });
  const rows = STAGES.map((rule) => ruleNamed(coolingRows, rule));
  const end = readings[readings.length - 1] as (typeof readings)[number];
  const stages = rows.map((row): CoolingStage => {
    const from = row.from_degF as number;
    const seenHot = readings.filter(({ degF }) => degF >= from - 1e-6).pop();
    const start = seenHot ?? (readings[0] as (typeof readings)[number]);
    const limit = { rule: row.rule, from, to: row.to_degF, mostHours: row.max_hours };
    // a millionth for the conversion of units
    const cold = readings.find(({ hours, degF }) => hours >= start.hours && degF <= row.to_degF + 1e-6);
    if (cold === undefined) return { ...limit, verdict: end.hours - start.hours > row.max_hours ? 'broken' : 'open' };
    const hours = cold.hours - start.hours;
    if (hours > row.max_hours + 1e-9) return { ...limit, verdict: 'broken', hours };
    return { ...limit, verdict: seenHot === undefined ? 'open' : 'kept', hours };
  });
  const verdict = stages.some((stage) => stage.verdict === 'broken')
    ? 'broken'
    : stages.some((stage) => stage.verdict === 'open')
      ? 'open'
      : 'kept';
  return answer({
    verdict,
    stages,
    next: NEXT[verdict],
    basis: coolingRows.map((row) => basisOf(row, row.rule)),
    cautions: [recordCaution('cooling-for-cooked-food'), caution('follow-local-guidance')],
  });
}
