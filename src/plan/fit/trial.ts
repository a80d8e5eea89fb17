/** Plans tried for an order of work. */
import { fail } from '../../errors/StillroomError';
import { brokenRules } from '../check/checkTasks';
import { decide, isMade, type Planned } from '../program/decide';
import type { DayProgram } from '../program/decisions';
import type { Prepared } from '../program/prepare';
import type { DaySchedule, Window } from '../request/daySchedule';
import { lowerBound } from '../schedule/bound';
import { workedBy } from '../schedule/hours';
import type { Job } from '../schedule/job';
import { overtimeOf, scheduleOf, untilBest } from '../schedule/scheduleJobs';
import { type Ordered, ordersOf, type Until } from '../schedule/searchOrders';
import type { Effort } from '../solver/effort';
import type { Solved } from '../solver/solve';
import { type InTime, inTimeOf, lossesOf } from './inTime';
import { jobsOf } from './jobs';

/** A plan by the sums of minutes. */
export interface BySums {
  readonly found: Solved;
  /** The same as the search of `program` left it: how far it is proven against that. */
  readonly solved: Solved;
  /** The program it is the best of, and the share of the day's minutes in it. */
  readonly program: DayProgram;
  readonly share: number;
  readonly planned: readonly Planned[];
}

/** A plan, and how its work went into the hours. */
export interface Trial extends BySums {
  /** What of it found a place in the hours. */
  readonly inTime: InTime;
  /** The order that did best. */
  readonly order: readonly Job[] | undefined;
  /** The order of work that runs on after the hours; nothing where none was found. */
  readonly late: DaySchedule | undefined;
  /** The best order of work within the hours that is found, where all of it fits. */
  readonly fitting?: () => DaySchedule;
}

/** Loads, dryer and freezer fillings that an order of work is looked for, in some seconds. */
const MOST_JOBS = 600;
/** Orders looked at for one plan until it fits, and for as much of it as does. */
const UNTIL_IT_FITS = { tries: 40, inVain: 20 };
/** And where it cannot fit. */
const TO_SEE_HOW_LATE = { tries: 20, inVain: 10 };
/** And where it is late by no more than this share of the hours. */
const NEARLY = 0.1;
const WHERE_IT_NEARLY_FITS = { tries: 60, inVain: 50 };
const AS_MUCH_AS_FITS = { tries: 20, inVain: 10 };

/** What is made, and what was decided of it. */
const plannedOf = ({ makings }: Prepared, found: Solved): Planned[] =>
  makings.flatMap((making) => {
    const decided = decide(making, found.values);
    return isMade(decided) ? [{ making, decided }] : [];
  });

/** By how much work runs on after the hours, as a share of them. */
const minutesOver = (makespan: number, windows: readonly Window[]): number => {
  const hours = windows.reduce((sum, { startMinute, endMinute }) => sum + endMinute - startMinute, 0);
  return workedBy(makespan, windows) / hours - 1;
};

/** Tries plans, each once; `like` is an order that a similar plan was done in. */
export function trialsOf(prepared: Prepared, windows: readonly Window[], effort: Effort) {
  const known = new Map<string, Trial>();
  return (found: Solved, program: DayProgram, share: number, like?: readonly Job[]): Trial => {
    const key = program.variables.map(({ name }) => (found.values.get(name) ?? 0).toFixed(3)).join();
    const solved = { found, solved: found, program, share };
    const before = known.get(key);
    if (before !== undefined) return { ...before, ...solved };
    const trial = trialOf(prepared, windows, effort, { ...solved, planned: plannedOf(prepared, found) }, like);
    known.set(key, trial);
    return trial;
  };
}

function trialOf(
  prepared: Prepared,
  windows: readonly Window[],
  effort: Effort,
  plan: BySums,
  like: readonly Job[] | undefined,
): Trial {
  const { means } = prepared;
  const jobs = jobsOf(prepared, plan.planned, plan.found.values);
  if (jobs.length > MOST_JOBS)
    fail('TOO_MUCH', 'lots', jobs.length, `at most ${MOST_JOBS} loads, runs and batches in one plan: plan it in parts`);
  const last = (windows[windows.length - 1] as Window).endMinute;
  const bound = lowerBound(jobs, means, windows);
  const work = { jobs, means, windows, effort };
  const whole = ordersOf({ ...work, overtime: overtimeOf(jobs, means), ...(like === undefined ? {} : { like }) });
  const enough: Until['enough'] = ({ left, makespan }) => left.length === 0 && makespan <= last;
  const best = untilBest(jobs, bound);
  const hopeless = like === undefined ? TO_SEE_HOW_LATE : { tries: 0, inVain: 0 };
  const begun = bound > last ? hopeless : like === undefined ? best : UNTIL_IT_FITS;
  let first = whole({ ...begun, enough });
  const nearly = first !== undefined && minutesOver(first.makespan, windows) <= NEARLY;
  if (nearly && bound <= last) first = whole({ ...WHERE_IT_NEARLY_FITS, enough });
  const fits = (order: Ordered | undefined, search: ReturnType<typeof ordersOf>): Trial | undefined => {
    if (order === undefined || !enough(order)) return undefined;
    const schedule = scheduleOf(order, jobs, means, windows);
    // an order of work that breaks a wait is no plan, whatever it is worth
    if (brokenRules(schedule).length > 0) return undefined;
    const fitting = () => {
      const better = search(best);
      const polished = better === undefined ? schedule : scheduleOf(better, jobs, means, windows);
      return brokenRules(polished).length > 0 ? schedule : polished;
    };
    return { ...plan, inTime: inTimeOf(plan.planned, []), order: order.order, late: undefined, fitting };
  };
  const inHours = ordersOf({
    ...work,
    overtime: 0,
    lossOf: lossesOf(prepared, plan.planned),
    ...(first === undefined ? {} : { like: first.order }),
  });
  const all = fits(first, whole);
  if (all !== undefined) return all;
  const some = inHours({ ...AS_MUCH_AS_FITS, enough });
  return (
    fits(some, inHours) ?? {
      ...plan,
      inTime: inTimeOf(plan.planned, some?.left ?? jobs),
      order: some?.order,
      late: first && scheduleOf(first, jobs, means, windows),
    }
  );
}
