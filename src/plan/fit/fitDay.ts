import { windowsOf } from '../kitchen/hours';
import type { Kept } from '../program/decide';
import type { DayProgram } from '../program/decisions';
import type { Prepared } from '../program/prepare';
import { fullest, minuteShare } from '../program/program';
import type { DaySchedule, Window } from '../request/daySchedule';
import { workedBy } from '../schedule/hours';
import { type Effort, FEWEST_NODES, nodesFor } from '../solver/effort';
import { reachOf, type Solved, type SolveOptions } from '../solver/solve';
import { capped, growing, worthiest } from './inTime';
import { type BySums, type Trial, trialsOf } from './trial';

/** A plan with its order of work. */
export interface Fitted extends Omit<BySums, 'planned'> {
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

/** Programs solved at the most in making less of what found no place in the hours. */
const MOST_CUTS = 6;
/** Of them, those in which what a cut leaves over may go into other products. */
const MOST_SHIFTS = 3;
/** Programs with fewer minutes for all that is made. */
const MOST_SHARES = 4;
/** And where no order at all was found for the whole, the share of the minutes tried first. */
const FIRST_SHARE = 0.7;
/** Programs solved at the most in giving what hours are left to one product more. */
const MOST_GROWN = 30;
/** Nodes of one of these searches: how good its plan is proven does not matter, for the best by the sums is the bound. */
const MOST_NODES = 100;
/** Nearer to the best by the sums than this share no better plan is looked for. */
const GOOD_ENOUGH = 0.01;

type Search = (program: DayProgram, options: SolveOptions) => Solved;

/**
 * The best plan whose work fits the hours in an order that was found.
 *
 * The program knows minutes as sums; an order of work needs some more, for fruit is cut before it is cooked and canners
 * wait for their first load. Where a plan runs late, less is made of what found no place in the hours, as much as did;
 * and the minutes of all are cut by as much as it ran late. Then what hours are left go to one product after the other.
 * The best by the sums stays the bound that `gap` is measured from.
 *
 * @returns the plan; or where none fits the one by the sums, which runs late
 */
export function fitDay(
  prepared: Prepared,
  best: Solved,
  search: Search,
  effort: Effort,
): { readonly fits: boolean; readonly plan: Fitted | undefined } {
  const windows = windowsOf(prepared.request.kitchen);
  const tryPlan = trialsOf(prepared, windows, effort);
  const whole = tryPlan(best, prepared.program, 1);
  if (whole.fitting !== undefined) return { fits: true, plan: fittedOf(whole, whole.fitting()) };

  let fitting: Trial | undefined;
  const attempt = (program: DayProgram, share = 1): Trial | undefined => {
    const found = search(program, {
      nodes: Math.max(FEWEST_NODES, Math.min(MOST_NODES, nodesFor(program), effort.nodes)),
      effort,
      ...(fitting === undefined ? {} : { start: fitting.solved, onlyBetter: true }),
    });
    if (!found.feasible || (fitting !== undefined && !isBetter(found, fitting.found))) return undefined;
    const trial = tryPlan(found, program, share, (fitting ?? whole).order);
    if (trial.fitting !== undefined) fitting = trial;
    return trial;
  };
  const done = () => isBest(fitting, best) || (fitting !== undefined && effort.looks <= 0);
  // less is made of what found no place, until the rest has one
  const cut = (from: DayProgram, late: Trial | undefined, shifts: number): void => {
    let [program, trial] = [from, late];
    for (let round = 0; round < MOST_CUTS && trial !== undefined && trial.fitting === undefined; round++) {
      program = capped(program, trial.inTime, round < shifts ? 'late' : 'all');
      trial = attempt(program);
    }
  };
  if (effort.looks > 0) cut(prepared.program, whole, MOST_SHIFTS);
  cut(prepared.program, whole, 0);
  // or all that is made has fewer minutes, by as many as it ran late
  let [share, least] = [shareInTime(prepared.program, whole, windows), 0];
  for (let round = 0; round < MOST_SHARES && !done() && share - least > 0.01; round++) {
    const program = minuteShare(prepared.program, share);
    const trial = attempt(program, share);
    if (trial !== undefined && trial.fitting === undefined) {
      cut(program, trial, 0);
      share = shareInTime(prepared.program, trial, windows);
    } else {
      least = share;
      share = (share + 1) / 2;
    }
  }
  // what needs no minutes, or nothing at all
  if (fitting === undefined) attempt(minuteShare(prepared.program, 0), 0);
  const products = worthiest(prepared);
  for (let next = 0, vain = 0, left = MOST_GROWN; vain < products.length && left > 0 && !done(); next++) {
    const before: Trial | undefined = fitting;
    left -= grow(prepared, products[next % products.length] as number, before, attempt, left);
    vain = fitting === before ? vain + 1 : 0;
  }
  if (fitting?.fitting === undefined) return { fits: false, plan: whole.late && fittedOf(whole, whole.late) };
  const plan = fittedOf(fitting, fitting.fitting());
  return { fits: true, plan: { ...withGap(plan, best), runsLate: lateOf(whole, windows) } };
}

/** Lets one product grow as far as its work still fits; answers how many programs that took. */
function grow(
  { program }: Prepared,
  product: number,
  from: Trial | undefined,
  attempt: (program: DayProgram) => Trial | undefined,
  most: number,
): number {
  const planned = from?.planned ?? [];
  const readied = (trial: Trial | undefined) => trial?.inTime.get(product)?.of ?? 0;
  let trial = attempt(growing(program, product, planned, Number.POSITIVE_INFINITY));
  let [enough, tooMany, tries] = [readied(from), readied(trial), 1];
  if (trial?.fitting !== undefined) return tries;
  if (trial === undefined) return tries;
  for (; tries < most && tooMany - enough > 1; tries++) {
    const known: number = trial?.fitting === undefined ? (trial?.inTime.get(product)?.units ?? 0) : 0;
    const some: number = known > enough && known < tooMany ? known : Math.floor((enough + tooMany) / 2);
    trial = attempt(growing(program, product, planned, some));
    // so few more are worth nothing yet
    if (trial === undefined || trial.fitting !== undefined) enough = some;
    else tooMany = some;
  }
  return tries;
}

/** The share of the day's minutes that a plan which runs late takes of what is used most, less by as much as it is late. */
function shareInTime(program: DayProgram, { late, found }: Trial, windows: readonly Window[]): number {
  const taken = fullest(program, found.values);
  if (late === undefined) return FIRST_SHARE * taken;
  const hours = windows.reduce((sum, { startMinute, endMinute }) => sum + endMinute - startMinute, 0);
  return Math.min(0.99, hours / workedBy(late.makespan, windows)) * taken;
}

const isBetter = (one: Solved, other: Solved): boolean => one.worth > other.worth + 1e-9;

/** Whether a plan is as good as the best by the sums, but for what is not worth a search. */
const isBest = (plan: BySums | undefined, best: Solved): boolean =>
  plan !== undefined && reachOf(best) - plan.found.worth <= GOOD_ENOUGH * Math.abs(plan.found.worth);

const fittedOf = ({ planned, found, solved, program, share }: Trial, schedule: DaySchedule): Fitted => ({
  found,
  solved,
  program,
  share,
  kept: planned.map((each) => ({ ...each, said: each.making.describe(each.decided) })),
  schedule,
});

/** The plan with how far it may be from the best by the sums. */
function withGap(plan: Fitted, best: Solved): Fitted {
  const { found } = plan;
  const missed = reachOf(best) - found.worth;
  const optimal = best.optimal && missed <= 1e-6 * Math.max(1, Math.abs(found.worth));
  const gap = optimal ? 0 : missed / Math.max(Math.abs(found.worth), 1e-6);
  return { ...plan, found: { ...found, optimal, gap } };
}

function lateOf({ late: order }: Trial, windows: readonly Window[]): RunsLate {
  if (order === undefined || minutesLate(order.makespan, windows) === 0) return { minutes: 0, uses: [] };
  const { makespan, tasks } = order;
  const { endMinute: closes } = windows[windows.length - 1] as Window;
  const late = tasks.filter(
    ({ endMinute, startMinute, unattended }) => !unattended && endMinute > closes && startMinute < makespan,
  );
  const busy = [...new Set(late.flatMap(({ uses }) => uses.map(({ resource }) => resource)))];
  const machines = busy.filter((resource) => !SHARED.has(resource));
  return { minutes: makespan - closes, uses: machines.length > 0 ? machines : busy };
}
/** What nearly every task takes. */
const SHARED: ReadonlySet<string> = new Set(['hands', 'burners']);

/** Minutes that a day runs on after its hours. */
export const minutesLate = (makespan: number, windows: readonly Window[]): number =>
  Math.max(0, makespan - (windows[windows.length - 1] as Window).endMinute);
