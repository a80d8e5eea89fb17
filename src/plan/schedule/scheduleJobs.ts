import type { DaySchedule, Window } from '../request/daySchedule';
import type { Effort } from '../solver/effort';
import { resourcesOf } from './blocks';
import { lowerBound } from './bound';
import { workedBy } from './hours';
import { type Job, type Means, machineMinutes, minutesAlone } from './job';
import { withNames } from './people';
import { type Ordered, ordersOf, type Until } from './searchOrders';
import { tasksOf } from './tasksOf';

/** Orders of the jobs that are tried; a long day gets fewer. */
const MOST_ORDERS = 60;
const PLACINGS = 3000;

/** Looks for the order of these jobs that ends first, as far as that pays. */
export const untilBest = (jobs: readonly Job[], bound: number): Until => {
  const tries = Math.max(4, Math.min(MOST_ORDERS, Math.floor(PLACINGS / Math.max(1, jobs.length))));
  return { enough: ({ left, makespan }) => left.length === 0 && makespan <= bound, tries, inVain: tries };
};

/**
 * An order of work for these jobs, and how good it is.
 *
 * Each job is placed as early as it fits beside those before it, its steps as late as they may be before what they are
 * for, so that nothing waits longer than it should (see `place`). Orders are tried: the customary ones first, then the
 * best so far with one job moved, a fixed number of times from a fixed seed.
 *
 * @param windows - the hours of work in minutes from the start; the last one is lengthened where the work needs it
 * @returns nothing where a job fits nowhere
 */
export function scheduleJobs(
  jobs: readonly Job[],
  means: Means,
  windows: readonly Window[],
  effort: Pick<Effort, 'looks'> = { looks: Number.POSITIVE_INFINITY },
  until = untilBest(jobs, lowerBound(jobs, means, windows)),
): DaySchedule | undefined {
  const overtime = overtimeOf(jobs, means);
  const best = ordersOf({ jobs, means, windows, effort, overtime })(until);
  return best && scheduleOf(best, jobs, means, windows);
}

/** The order of work of jobs that were all placed. */
export function scheduleOf(
  { day, makespan }: Ordered,
  jobs: readonly Job[],
  means: Means,
  windows: readonly Window[],
): DaySchedule {
  const bound = lowerBound(jobs, means, windows);
  const tasks = tasksOf(day);
  return {
    startClock: means.start,
    tasks: withNames(tasks, means.names),
    windows,
    resources: resourcesOf(means).map(({ name, capacity, busyUntil }) => ({
      resource: name,
      ...(Number.isFinite(capacity) ? { available: capacity } : {}),
      ...(busyUntil === undefined ? {} : { busyUntilMinute: busyUntil }),
    })),
    makespan,
    lowerBound: bound,
    gap: workedBy(bound, windows) === 0 ? 0 : workedBy(makespan, windows) / workedBy(bound, windows) - 1,
    allDoneMinute: Math.max(
      0,
      ...tasks.filter(({ kind }) => kind !== 'ferment' && kind !== 'stand').map(({ endMinute: end }) => end),
    ),
  };
}

/** Minutes after the hours in which every job can be done after the others. */
export function overtimeOf(jobs: readonly Job[], means: Means): number {
  const { dryer = 0, freezeDryer = 0, canners = [] } = means.busy ?? {};
  return Math.ceil(
    jobs.reduce((total, job) => total + minutesAlone(job) + 1, 0) +
      quietRounds(jobs, means) +
      Math.max(dryer, freezeDryer, ...canners.map((until = 0) => until)),
  );
}

/** Minutes that what goes on by itself may have to wait for trays: each job after the other at the worst. */
const quietRounds = (jobs: readonly Job[], means: Means): number => {
  const trayMinutes = jobs.reduce(
    (total, { into }) => total + (into?.kind === 'dry' ? into.amount * into.minutes : 0),
    0,
  );
  const others = jobs.reduce(
    (total, job) => total + (job.into?.kind === 'freeze-dry' || job.into?.kind === 'freeze' ? machineMinutes(job) : 0),
    0,
  );
  return (means.trays > 0 ? (2 * trayMinutes) / means.trays : 0) + others;
};
