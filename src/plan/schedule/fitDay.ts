import { fail } from '../../errors/StillroomError';
import { brokenRules } from '../check/checkTasks';
import { decide, isMade, type Kept } from '../program/decide';
import type { DayProgram } from '../program/decisions';
import { windowsOf } from '../program/hours';
import type { Prepared } from '../program/prepare';
import { minuteShare } from '../program/program';
import type { DaySchedule, Window } from '../request/daySchedule';
import { type Effort, FEWEST_NODES, nodesFor } from '../solver/effort';
import { reachOf, type Solved, type SolveOptions } from '../solver/solve';
import { growing } from './growing';
import { workedBy } from './hours';
import { jobsOf } from './jobs';
import { scheduleJobs } from './scheduleJobs';
import { withoutLate } from './withoutLate';

/** A plan with its order of work. */
export interface Fitted {
  readonly found: Solved;
  /** The same as the search of `program` left it: how far it is proven against that. */
  readonly solved: Solved;
  /** The program it is the best of, and the share of the day's minutes in it: 1, or less where more would run late. */
  readonly program: DayProgram;
  readonly share: number;
  readonly kept: readonly Kept[];
  readonly schedule: DaySchedule;
  /** How late the best plan by the sums runs, where this is a smaller one: 0 minutes where no order of it was found. */
  readonly runsLate?: RunsLate;
}

/** Minutes past the hours, and the machines and vessels that are busy then; hands where nothing else is. */
export interface RunsLate {
  readonly minutes: number;
  readonly uses: readonly string[];
}

/** Programs solved at the most in looking for one whose work fits. */
const MOST_TRIALS = 7;
/** And in making less of what runs late. */
const MOST_REPAIRS = 4;
/** And in giving what hours are left to one product more. */
const MOST_GROWN = 8;
/** Nearer to the best by the sums than this share no better plan is looked for. */
const GOOD_ENOUGH = 0.01;
/** The share of the minutes tried first where no order at all was found for the whole. */
const FIRST_SHARE = 0.7;
/** Loads, dryer and freezer fillings that an order of work is looked for, in some seconds. */
const MOST_JOBS = 600;
/** Nearer than this the share of the minutes is not looked for. */
const NEAR = 0.02;

/**
 * The best plan whose work fits the hours in an order that was found.
 *
 * The program knows minutes as sums; an order of work needs some more, for fruit is cut before it is cooked and canners
 * wait for their first load. Where the best plan by the sums runs late, less is made of what came late, until the work
 * fits; and the minutes of all are shortened, by bisection. The better of the two is the plan. The best by the sums stays the bound that `gap` is told against.
 *
 * @returns the plan; or where none fits the one by the sums, which runs late
 */
export function fitDay(
  prepared: Prepared,
  best: Solved,
  search: (program: DayProgram, options: SolveOptions) => Solved,
  effort: Effort,
): { readonly fits: boolean; readonly plan: Fitted | undefined } {
  const windows = windowsOf(prepared.request.kitchen);
  const orderOf = (found: Solved, program: DayProgram, share: number): Fitted | undefined => {
    const kept = keptOf(prepared, found);
    const jobs = jobsOf(prepared, kept, found.values);
    if (jobs.length > MOST_JOBS)
      fail(
        'TOO_MUCH',
        'lots',
        jobs.length,
        `at most ${MOST_JOBS} loads, runs and batches in one plan: plan it in parts`,
      );
    const schedule = scheduleJobs(jobs, prepared.means, windows, effort);
    return schedule && { found, solved: found, program, share, kept, schedule };
  };
  // an order of work that breaks a wait is no plan, whatever it is worth
  const fits = (plan: Fitted | undefined): boolean =>
    plan !== undefined && !isLate(plan.schedule, windows) && brokenRules(plan.schedule).length === 0;
  const whole = orderOf(best, prepared.program, 1);
  if (fits(whole)) return { fits: true, plan: whole };

  let fitting: Fitted | undefined;
  const attempt = (program: DayProgram, share: number): Fitted | 'late' | 'none' => {
    const found = search(program, {
      nodes: Math.max(FEWEST_NODES, Math.min(nodesFor(program), effort.nodes)),
      effort,
      ...(fitting === undefined ? {} : { start: fitting.solved }),
    });
    if (!found.feasible) return 'none';
    const plan = orderOf(found, program, share);
    if (plan === undefined) return 'late';
    if (fits(plan) && !(fitting !== undefined && fitting.found.worth > found.worth)) fitting = plan;
    return plan;
  };
  // what runs late is made in the number that came in time
  const repair = (from: DayProgram, plan: Fitted | 'late' | 'none' | undefined): void => {
    let [program, late] = [from, plan];
    for (let trial = 0; typeof late === 'object' && !fits(late) && trial < MOST_REPAIRS; trial++) {
      program = withoutLate(program, late, windows);
      late = attempt(program, 1);
    }
  };
  repair(prepared.program, whole);
  // or all that is made has fewer minutes
  let [enough, tooMuch] = [0, 1];
  let share = whole === undefined ? FIRST_SHARE : hoursOf(windows) / workedBy(whole.schedule.makespan, windows);
  for (let trial = 0; trial < MOST_TRIALS && tooMuch - enough > NEAR && !isBest(fitting, best); trial++) {
    const plan = attempt(minuteShare(prepared.program, share), share);
    // with musts that not even their minutes are left for, more minutes are needed, not fewer
    if (plan === 'none' || (plan !== 'late' && fits(plan))) enough = share;
    else tooMuch = share;
    share = (enough + tooMuch) / 2;
  }
  // what needs no minutes, or nothing at all
  if (fitting === undefined) attempt(minuteShare(prepared.program, 0), 0);
  // and what hours are left go to one product after the other
  const { length } = prepared.makings;
  for (let next = 0; next < Math.min(length, MOST_GROWN) && !isBest(fitting, best); next++) {
    const wider = growing(prepared.program, prepared, fitting?.kept ?? [])[next] as DayProgram;
    repair(wider, attempt(wider, 1));
  }
  return fitting === undefined
    ? { fits: false, plan: whole }
    : { fits: true, plan: { ...withGap(fitting, best), runsLate: lateOf(whole, windows) } };
}

/** Whether a plan is as good as the best by the sums, but for what is not worth a search. */
const isBest = (plan: Fitted | undefined, best: Solved): boolean =>
  plan !== undefined && reachOf(best) - plan.found.worth <= GOOD_ENOUGH * Math.abs(plan.found.worth);

/** The plan with how far it may be from the best by the sums. */
function withGap(plan: Fitted, best: Solved): Fitted {
  const { found } = plan;
  const missed = reachOf(best) - found.worth;
  const optimal = best.optimal && missed <= 1e-6 * Math.max(1, Math.abs(found.worth));
  const gap = optimal ? 0 : missed / Math.max(Math.abs(found.worth), 1e-6);
  return { ...plan, found: { ...found, optimal, gap } };
}

function lateOf(whole: Fitted | undefined, windows: readonly Window[]): RunsLate {
  if (whole === undefined || !isLate(whole.schedule, windows)) return { minutes: 0, uses: [] };
  const { makespan, tasks } = whole.schedule;
  const { endMinute: to } = windows[windows.length - 1] as Window;
  const late = tasks.filter(
    ({ endMinute: end, startMinute: start, unattended }) => !unattended && end > to && start < makespan,
  );
  const busy = [...new Set(late.flatMap(({ uses }) => uses.map(({ resource }) => resource)))];
  const machines = busy.filter((resource) => !SHARED.has(resource));
  return { minutes: makespan - to, uses: machines.length > 0 ? machines : busy };
}
/** What nearly every task takes. */
const SHARED: ReadonlySet<string> = new Set(['hands', 'burners']);

const hoursOf = (windows: readonly Window[]): number =>
  windows.reduce((sum, { startMinute: from, endMinute: to }) => sum + to - from, 0);
const isLate = ({ makespan }: DaySchedule, windows: readonly Window[]): boolean => minutesLate(makespan, windows) > 0;
/** Minutes that a day runs on after its hours. */
export const minutesLate = (makespan: number, windows: readonly Window[]): number =>
  Math.max(0, makespan - (windows[windows.length - 1] as Window).endMinute);

/** What is made, what was decided of it, and what is to be said of it. */
const keptOf = ({ makings }: Prepared, found: Solved): Kept[] =>
  makings.flatMap((making) => {
    const decided = decide(making, found.values);
    return isMade(decided) ? [{ making, decided, said: making.describe(decided) }] : [];
  });
