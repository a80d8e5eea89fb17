import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import type { Given } from '../common/given';
import { fail } from '../errors/StillroomError';
import { fields, list, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { temperature } from '../words/temperature';
import { time } from '../words/time';
import { recordCaution } from './cautions';
import { COOLING, figureOf, rowNamed } from './tables';

const readingOf = /* @__PURE__ */ fields({
  /** When you read it, from any start, zero or more. */
  time: time({ min: { value: 0, unit: 'min' } }),
  /** Of the middle of the food. */
  temperature: temperature(),
});
const schema = /* @__PURE__ */ fields({
  /** Your readings in the order of time, 2 to 10,000. */
  log: list('readings in the order you made them', readingOf, 2, 10_000),
});
export type CheckCoolingInput = Given<z.input<typeof schema>>;

/** One limit, and whether the log kept it. */
export interface CoolingStage {
  /** Its fixed name: `food-code-stage-1`. */
  readonly id: string;
  /** The temperature it starts at. */
  readonly startTemperature: Quantity<'temperature'>;
  /** The temperature to reach. */
  readonly targetTemperature: Quantity<'temperature'>;
  /** The longest time that it may take. */
  readonly allowedTime: Quantity<'time'>;
  /** `kept`, `broken`, or `open` where the log ends too early, or begins too late, to tell. */
  readonly verdict: 'kept' | 'broken' | 'open';
  /** Time from the last reading at or above `startTemperature` to the first reading at or below `targetTemperature`. */
  readonly took?: Quantity<'time'>;
}
/** Whether cooked food cooled fast enough. */
export interface CheckCooling {
  /** `kept`; `broken` where a limit is; `open` where the log cannot tell. */
  readonly verdict: 'kept' | 'broken' | 'open';
  /** Each limit. */
  readonly stages: readonly CoolingStage[];
  /** What to do. */
  readonly next: readonly string[];
  /** Where the limits come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const NEXT = {
  kept: 'Put it away, covered and dated.',
  open: 'Keep cooling and reading; spread it in shallow pans or set it in ice water.',
  broken:
    'Throw it out. Only if you catch food at the first limit may you heat it to 165 degF at once and cool it again.',
} as const;
const STAGES = ['food-code-stage-1', 'food-code-total'] as const;

const inDegF = (value: number): Quantity<'temperature'> => ({ value, unit: 'degF' });
const inHours = (value: number): Quantity<'time'> => ({ value, unit: 'h' });

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
  const rows = STAGES.map((id) => rowNamed(COOLING, id));
  const end = readings[readings.length - 1] as (typeof readings)[number];
  const stages = rows.map((row): CoolingStage => {
    const from = figureOf(row, 'from_degF');
    const seenHot = readings.filter(({ degF }) => degF >= from - 1e-6).pop();
    const start = seenHot ?? (readings[0] as (typeof readings)[number]);
    const limit = {
      id: row.id,
      startTemperature: inDegF(from),
      targetTemperature: inDegF(row.to_degF),
      allowedTime: inHours(row.max_hours),
    };
    // a millionth for the conversion of units
    const cold = readings.find(({ hours, degF }) => hours >= start.hours && degF <= row.to_degF + 1e-6);
    if (cold === undefined) return { ...limit, verdict: end.hours - start.hours > row.max_hours ? 'broken' : 'open' };
    const hours = cold.hours - start.hours;
    if (hours > row.max_hours + 1e-9) return { ...limit, verdict: 'broken', took: inHours(hours) };
    return { ...limit, verdict: seenHot === undefined ? 'open' : 'kept', took: inHours(hours) };
  });
  const verdict = stages.some((stage) => stage.verdict === 'broken')
    ? 'broken'
    : stages.some((stage) => stage.verdict === 'open')
      ? 'open'
      : 'kept';
  return answer({
    verdict,
    stages,
    next: [NEXT[verdict]],
    basis: [
      ...rows.map((row) => basisOf(row, 'stages[].allowedTime', row.printed)),
      basisOf(rowNamed(COOLING, 'extension-sheet'), 'next', 'food that is too warm after 2 h'),
    ],
    cautions: [recordCaution('cooling-for-cooked-food'), caution('follow-local-guidance')],
  });
}
