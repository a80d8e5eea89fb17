import * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, list, optional, readInput } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, type Caution, measured } from '../sources/basis';
import { time } from '../words/time';
import { lethalityCaution } from './cautions';
import { type Log, type LogPoint, readLog, readPoint } from './readLog';
import { foodTemperature, holdTime, rateAt, rateBasis, referenceTemperature, zValueField } from './terms';
import { type ZValue, type ZValueInput, zValue } from './zValue';

const MOST_READINGS = 1_000_000;

const scale = {
  /** Temperature that the minutes are counted at (121.1 degC or 250 degF for F0), 0 to 200 degC. */
  reference: /* @__PURE__ */ referenceTemperature(),
  /** Degrees for a tenfold rate (10 degC or 18 degF for F0), 1 to 100 degC. */
  z: /* @__PURE__ */ zValueField(),
  /** Time for one log10 reduction of an organism at the reference temperature, above 0: asks for `reductions`. */
  dValue: /* @__PURE__ */ optional(/* @__PURE__ */ holdTime()),
};
const logSchema = /* @__PURE__ */ fields({
  /** Readings of time and temperature, 2 to 1,000,000, their times rising from any start. */
  log: list<z.ZodMiniType<LogPoint>>('readings of time and temperature', z.custom<LogPoint>(), 2, MOST_READINGS),
  ...scale,
  /** Refuse a record with a longer gap than this; any gap is taken when left out. */
  longestGap: optional(time()),
});
const holdSchema = () =>
  fields({
    /** Held at, -80 to 200 degC. */
    temperature: foodTemperature(),
    /** For how long, above 0. */
    time: holdTime(),
  });
const holdsSchema = /* @__PURE__ */ fields({
  /** Times held at a temperature, 1 to 10,000, in place of a log. */
  heldAt: list('times held at a temperature', holdSchema(), 1, 10_000),
  ...scale,
});

export type LethalityInput = z.input<typeof logSchema>;
export type HoldLethalityInput = z.input<typeof holdsSchema>;
/** What a list of holds adds up to. */
export interface HoldLethality {
  /** Minutes at the reference temperature that the holds are worth together. */
  readonly minutes: number;
  /** What each hold adds to it, in the order given. */
  readonly minutesOfEach: readonly number[];
  /** How many times the survivors fall to a tenth, where `dValue` is given. */
  readonly reductions?: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}
/** What a record adds up to. */
export interface Lethality {
  /** Minutes at the reference temperature that the record is worth (the F value), by the trapezoid rule. */
  readonly minutes: number;
  /** The same if the temperature moved in a straight line between readings; never more than `minutes`. */
  readonly straightLineMinutes: number;
  /** How many times the survivors fall to a tenth, where `dValue` is given. */
  readonly reductions?: number;
  /** Part of `minutes` that came after the hottest reading, 0 to 1. */
  readonly shareAfterHottest: number;
  /** The hottest reading as it was given; the last of them, where several are equal. */
  readonly hottestPoint: {
    /** When. */
    readonly time: Quantity<'time'>;
    /** How hot. */
    readonly temperature: Quantity<'temperature'>;
  };
  /** The longest time between two readings, in the unit of the hottest one. */
  readonly longestGap: Quantity<'time'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
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

const CAUTIONS = ['record-check-only', 'coldest-spot', 'cooling-counts'] as const;

/** The log10 reductions of some minutes, n = t / D, where a D value is given. */
function reductionsOf(minutes: number, dValue: Quantity<'time'> | undefined) {
  if (dValue === undefined) return { field: {}, basis: [], cautions: [] };
  return {
    field: { reductions: minutes / valueIn(dValue, 'min') },
    basis: [
      {
        of: 'reductions',
        kind: 'equation' as const,
        source: 'singh-heldman',
        locator: 'chapter 5, decimal reduction time',
      },
    ],
    cautions: ['published-heat-no-process', 'resistance-varies'],
  };
}

/**
 * How much heat a temperature record adds up to: the F value by the general method; or, from D values at two
 * temperatures, the z value.
 *
 * **It checks a record; it is not a process.** Take no time or temperature from it for canning anything; follow the
 * tested process whatever a record says.
 *
 * Each reading is worth L = 10^((T - reference)/z) minutes a minute, and `minutes` is the area under L by the
 * trapezoid rule. Between readings a straight line of temperature would be worth a little less; `straightLineMinutes`
 * gives that figure, and a record too coarse for the two to agree within 2 % gets a caution. A list of holds, each
 * temperature held for its time, adds up time x L: one hold of a minute gives the lethal rate L itself, and one published
 * hold, with another temperature as the `reference`, the time that does its work there.
 *
 * With a `dValue` the answer also counts log10 reductions, minutes / D: what the record is worth against one organism, and
 * the arithmetic behind published figures (12 times 0.21 min).
 *
 * From D values at a `first` and a `second` temperature: z = (T2 - T1)/log10(D1/D2), in the degrees of the first.
 *
 * Sources: FAO Fisheries Circular 784, section 1.5 (the general method); Singh and Heldman, Introduction to Food
 * Engineering, chapter 5 (decimal reduction time).
 *
 * @throws StillroomError OUT_OF_RANGE for one reading or too long a gap, CONTRADICTION for times that do not
 *   rise, or where D does not fall as the temperature rises
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
 * const holds = [{ temperature: '111 degC', time: '10 min' }, { temperature: '121 degC', time: '1 min' }] as const;
 * lethality({ heldAt: [...holds], reference: '121 degC', z: '10 degC' }).minutes; // ≈ 2
 * const printed = [{ temperature: '160 degF', time: '5.6 min' }] as const;
 * lethality({ heldAt: [...printed], reference: '150 degF', z: '16.7 degF' }).minutes; // ≈ 22.23
 * const botulinum = { reference: '121.1 degC', z: '10 degC', dValue: '0.21 min' } as const;
 * lethality({ heldAt: [{ temperature: '121.1 degC', time: '2.52 min' }], ...botulinum }).reductions; // ≈ 12
 * const first = { temperature: '80 degC', dValue: '208.3 min' } as const;
 * lethality({ first, second: { temperature: '90 degC', dValue: '2.0 min' } }).z.value; // ≈ 4.956
 * lethality({ log: [{ time: '0 min', temperature: '90 degC' }], reference: '121.1 degC', z: '10 degC' }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function lethality(input: ZValueInput): ZValue;
export function lethality(input: LethalityInput): Lethality;
export function lethality(input: HoldLethalityInput): HoldLethality;
export function lethality(
  input: LethalityInput | HoldLethalityInput | ZValueInput,
): Lethality | HoldLethality | ZValue {
  const asked = input as Partial<LethalityInput & HoldLethalityInput & ZValueInput> | null | undefined;
  if (asked?.first !== undefined || asked?.second !== undefined) return zValue(input as ZValueInput);
  if (asked?.heldAt === undefined) return answer(ofLog(input as LethalityInput));
  if (asked.log !== undefined) fail('CONTRADICTION', 'heldAt', asked.heldAt, 'a log or a list of holds, not both');
  return answer(ofHolds(input as HoldLethalityInput));
}

function ofLog(input: LethalityInput): Lethality {
  const given = readInput(logSchema, input);
  const gap = given.longestGap === undefined ? undefined : valueIn(given.longestGap, 'min');
  const log = readLog(given.log, gap);
  const sum = addUp(log, valueIn(given.reference, 'degC'), valueIn(given.z, 'delta degC'));
  const hottest = readPoint(given.log[sum.hottest]);
  const reduced = reductionsOf(sum.trapezoid, given.dValue);
  const coarse = sum.trapezoid - sum.straight > COARSE * sum.trapezoid;
  return {
    minutes: sum.trapezoid,
    straightLineMinutes: sum.straight,
    shareAfterHottest: sum.trapezoid === 0 ? 0 : (sum.trapezoid - sum.untilHottest) / sum.trapezoid,
    hottestPoint: hottest,
    longestGap: quantityIn(sum.gap, 'min', hottest.time.unit),
    ...reduced.field,
    basis: [
      measured('hottestPoint', 'the readings'),
      rateBasis('minutes'),
      rateBasis('straightLineMinutes'),
      ...reduced.basis,
    ],
    cautions: [...CAUTIONS, ...reduced.cautions, ...(coarse ? ['coarse-log'] : [])].map(lethalityCaution),
  };
}

function ofHolds(input: HoldLethalityInput): HoldLethality {
  const given = readInput(holdsSchema, input);
  const reference = valueIn(given.reference, 'degC');
  const zDegrees = valueIn(given.z, 'delta degC');
  const parts = given.heldAt.map(
    (hold) => valueIn(hold.time, 'min') * rateAt(valueIn(hold.temperature, 'degC'), reference, zDegrees),
  );
  const minutes = parts.reduce((sum, part) => sum + part, 0);
  const reduced = reductionsOf(minutes, given.dValue);
  return {
    minutes,
    minutesOfEach: parts,
    ...reduced.field,
    basis: [
      measured('minutesOfEach', 'times and temperatures'),
      rateBasis('minutesOfEach'),
      rateBasis('minutes'),
      ...reduced.basis,
    ],
    cautions: [...CAUTIONS, ...reduced.cautions].map(lethalityCaution),
  };
}
