import { answer } from '../../common/answer';
import { type Basis, type Caution, joinCautions } from '../../sources/basis';
import { caution } from '../../sources/cautions';
import type { FeasibleDay } from '../request/dayPlan';
import type { DaySchedule } from '../request/daySchedule';
import { withPlan } from '../request/withPlan';
import type { BrokenRule } from './brokenRule';
import { checkedSchedule } from './checkedSchedule';
import { planRules } from './checkProducts';
import { brokenRules } from './checkTasks';
import { waitsBasis } from './waits';

/** The answer of `checkSchedule`. */
export interface ScheduleChecked {
  /** Every rule that is broken, by the minute it shows at; none where the order of work stands. */
  readonly broken: readonly BrokenRule[];
  /** Where the longest waits come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/**
 * Checks an order of work by its tasks alone, no matter who wrote it: `planDay`, you with a pencil, or another program.
 *
 * It looks for: more of a resource in use than there is; a pot, canner or tray in two uses at once, or in use while it
 * still does what it did before; a person who does two things at once; work outside the hours or in a break; anything
 * loaded when nobody is there; cooking before cutting, filling before cooking, a load before its jars are filled; food
 * that is cooked and not filled at once, or kept hot for over an hour; what stands or ferments for less than its
 * `leastMinutes`; prepared food, filled trays and bags, and hot canners that wait longer than they may; a load in a canner
 * that was not heated, or stood for an hour since the last load; jars that nobody puts in or lifts out; and for every
 * single jar, from the minute it is filled, whether a load takes it within 20 minutes.
 * The jars of a filling are filled one after the other, evenly over its minutes. With a whole plan it also counts: all
 * food prepared, all batches cooked, all jars filled and canned for their full time, all trays dried, and no trimmings
 * used before they fell off.
 *
 * In a break no hands work. What takes none may go on, on the stove and with `throughBreak`: a pot that simmers, a
 * boiling-water canner. Nothing is stirred, filled, loaded or lifted out, and a pressure canner does not run.
 *
 * The longest waits are common practice (data/plan/waits): no published figure was found.
 *
 * @param given - a `schedule` of `planDay`, or its whole answer: `tasks` (up to 10,000; minutes from the start), `windows`
 *   (the hours of work) and `resources` (how much there is of each)
 * @returns `broken`: one entry for each rule that is broken, empty where none is
 * @throws StillroomError MISSING, WRONG_TYPE, OUT_OF_RANGE, TOO_MUCH, naming the field
 *
 * @example
 * ```ts
 * import { checkSchedule } from 'stillroom/plan';
 *
 * const fill = { kind: 'fill', what: 'peaches', forProducts: ['peaches'], units: { count: 7, unit: 'quart jar' }, startMinute: 0, endMinute: 14 };
 * const can = { kind: 'can', what: 'peaches', forProducts: ['peaches'], units: { count: 7, unit: 'quart jar' }, startMinute: 30, endMinute: 90 };
 * const day = { windows: [{ startMinute: 0, endMinute: 120 }], resources: [{ resource: 'hands', available: 1 }, { resource: 'canner', available: 1 }] };
 * const tasks = [
 *   { ...fill, uses: [{ resource: 'hands', used: 1 }], unattended: false },
 *   { ...can, uses: [{ resource: 'canner', used: 1 }], unattended: false },
 * ];
 * const [first] = checkSchedule({ ...day, tasks }).broken;
 * first; // => { rule: 'wait', minute: 2, text: 'peaches: a jar is filled, and no load takes it within 20 min' }
 * ```
 */
export function checkSchedule(given: DaySchedule | FeasibleDay | object): ScheduleChecked {
  const { schedule, products } = checkedSchedule(given);
  const broken = [
    ...brokenRules(schedule),
    ...(products === undefined ? [] : withPlan('products', products, (plan) => planRules(plan, schedule))),
  ];
  return answer({
    broken: broken.sort((one, other) => one.minute - other.minute),
    basis: [waitsBasis('broken')],
    cautions: joinCautions([caution('follow-local-guidance')]),
  });
}
