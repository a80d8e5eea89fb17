import { seeded } from '../../common/seeded';
import type { DaySchedule, Window } from '../request/daySchedule';
import type { Effort } from '../solver/effort';
import { blocksOf, resourcesOf, shared } from './blocks';
import { lowerBound } from './bound';
import { type Day, emptyDay, type Placed, type PlainTask, put } from './day';
import { workedBy } from './hours';
import { heldOf, putRunning } from './inWork';
import { type Job, type Means, machineMinutes, minutesAlone } from './job';
import { withNames } from './people';
import { place } from './place';
import { tasksOf } from './tasksOf';

/** Orders of the jobs that are tried; a long day gets fewer. */
const MOST_ORDERS = 60;
const PLACINGS = 3000;

interface Tried {
  readonly day: Day;
  /** How the day stood before each job was placed. */
  readonly before: readonly Stand[];
  readonly makespan: number;
  /** Among orders that end together the one whose work is done earlier. */
  readonly sum: number;
}

/** How far a day is filled: what `takeUp` brings an empty day to. */
interface Stand {
  readonly placed: number;
  readonly cannerEnds: readonly number[];
  readonly takenTrimmings: ReadonlyMap<number, number>;
}
const standOf = ({ placed, cannerEnds, takenTrimmings }: Day): Stand => ({
  placed: placed.length,
  cannerEnds: [...cannerEnds],
  takenTrimmings: new Map(takenTrimmings),
});
/** Puts the same on an empty day as another had when it stood so, without looking for where it fits. */
function takeUp(day: Day, { placed, cannerEnds, takenTrimmings }: Stand, from: Day): void {
  for (let index = 0; index < placed; index++) put(day, from.placed[index] as Placed);
  day.cannerEnds.splice(0, day.cannerEnds.length, ...cannerEnds);
  for (const [lot, kg] of takenTrimmings) day.takenTrimmings.set(lot, kg);
}

/** A number for each job that is the same for jobs that are alike: to change their places changes nothing. */
function alikeOf(): (job: Job) => number {
  const [known, numbers] = [new Map<Job, number>(), new Map<string, number>()];
  return (job) => {
    const number = known.get(job);
    if (number !== undefined) return number;
    const text = JSON.stringify(job);
    const own = numbers.get(text) ?? numbers.size;
    numbers.set(text, own);
    known.set(job, own);
    return own;
  };
}

/** When the work of hands, pots and canners ends: what goes on by itself has been loaded by somebody when it starts. */
const endOf = (tasks: readonly PlainTask[]): number =>
  tasks.reduce(
    (latest, { kind, start, end, unattended, was }) =>
      kind === 'pack' || kind === 'freeze-dry' || was === 'running'
        ? latest
        : Math.max(latest, unattended ? start : end),
    0,
  );

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
): DaySchedule | undefined {
  // at most half of what is left, for there may be a shorter day to try after this one
  const enough = effort.looks / 2;
  const longest = Math.max(0, ...jobs.map(machineMinutes));
  const { dryer = 0, freezeDryer = 0, canners = [] } = means.busy ?? {};
  const overtime = Math.ceil(
    jobs.reduce((total, job) => total + minutesAlone(job) + 1, 0) +
      quietRounds(jobs, means) +
      Math.max(dryer, freezeDryer, ...canners.map((until = 0) => until)),
  );

  const blocks = blocksOf(means);
  const alike = alikeOf();
  let best: { order: readonly Job[]; tried: Tried } | undefined;
  const attempt = (order: readonly Job[]): Tried | undefined => {
    const day = emptyDay(means, windows, overtime, longest, effort, blocks);
    // what an order begins with like the best one is placed like that
    const same = best === undefined ? 0 : sameUntil(order, best.order);
    if (best === undefined || same === 0) putRunning(day);
    else takeUp(day, best.tried.before[same] as Stand, best.tried.day);
    const most = best?.tried.makespan ?? Number.POSITIVE_INFINITY;
    const stands: Stand[] = best?.tried.before.slice(0, same) ?? [];
    for (const job of order.slice(same)) {
      const before = day.placed.length;
      stands.push(standOf(day));
      // what is later than the best before all of it is placed stays so
      if (!place(day, job) || endOf(day.placed.slice(before).flatMap((each) => each.tasks)) > most) return undefined;
    }
    const tasks = day.placed.flatMap((each) => each.tasks);
    return {
      day,
      before: stands,
      makespan: Math.max(windows[0]?.from ?? 0, endOf(tasks)),
      sum: tasks.reduce((total, { start, end, unattended }) => total + (unattended ? start : end), 0),
    };
  };
  const sameUntil = (order: readonly Job[], other: readonly Job[]): number => {
    const apart = order.findIndex((job, place) => alike(job) !== alike(other[place] as Job));
    return apart < 0 ? order.length : apart;
  };
  const better = (one: Tried, other: Tried): boolean =>
    one.makespan < other.makespan || (one.makespan === other.makespan && one.sum < other.sum);

  const bound = lowerBound(jobs, means, windows);
  const known = new Set<string>();
  const keep = (order: readonly Job[]): void => {
    const key = order.map(alike).join();
    if (known.has(key)) return;
    known.add(key);
    const tried = attempt(order);
    if (tried !== undefined && (best === undefined || better(tried, best.tried))) best = { order, tried };
  };
  const mayTry = () => best === undefined || effort.looks > enough;
  for (const order of customaryOrders(jobs, means)) if (mayTry()) keep(order);
  const random = seeded(1);
  const orders = Math.max(4, Math.min(MOST_ORDERS, Math.floor(PLACINGS / Math.max(1, jobs.length))));
  for (let tries = 0; tries < orders && best !== undefined && best.tried.makespan > bound && mayTry(); tries++)
    keep(moved(best.order, random));
  if (best === undefined) return undefined;
  const { day, makespan } = best.tried;
  const tasks = tasksOf(day);
  return {
    start: means.start,
    tasks: withNames(tasks, means.names),
    windows,
    resources: resourcesOf(means).map(({ name, capacity, busyUntil }) => ({
      resource: name,
      ...(Number.isFinite(capacity) ? { amount: capacity } : {}),
      ...(busyUntil === undefined ? {} : { busyUntil }),
    })),
    makespan,
    lowerBound: bound,
    gap: workedBy(bound, windows) === 0 ? 0 : workedBy(makespan, windows) / workedBy(bound, windows) - 1,
    allDone: Math.max(0, ...tasks.filter(({ kind }) => kind !== 'ferment' && kind !== 'stand').map(({ end }) => end)),
  };
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

const usesTrimmings = ({ needs }: Job): boolean => needs.length > 0;
const isHeld = (job: Job): boolean => heldOf(job) !== undefined;

/** What is in work already comes first, the one that may wait least before the others. */
const heldFirst = (jobs: readonly Job[]): Job[] => [
  ...jobs.filter(isHeld).sort((one, other) => (heldOf(one)?.by ?? 0) - (heldOf(other)?.by ?? 0)),
  ...jobs.filter((job) => !isHeld(job)),
];

/** Quickest first load first, then long ones; with what dries before the jars, or after them. Trimmings come last. */
function customaryOrders(jobs: readonly Job[], { hands }: Means): Job[][] {
  const whole = jobs.filter((job) => !usesTrimmings(job));
  const trimmings = jobs.filter(usesTrimmings);
  const lead = ({ portions }: Job) =>
    Math.max(0, ...portions.map(({ prepare, cook, fill }) => shared(prepare + fill, hands) + (cook?.minutes ?? 0)));
  const canned = whole.filter(({ into }) => into?.kind === 'can');
  const others = whole.filter(({ into }) => into?.kind !== 'can');
  const minutes = ({ into }: Job) => (into?.kind === 'can' ? Math.max(...into.canners.map((each) => each.minutes)) : 0);
  const byLead = [...canned].sort((one, other) => lead(one) - lead(other));
  const [first, ...rest] = byLead;
  const longestNext = first === undefined ? [] : [first, ...rest.sort((one, other) => minutes(other) - minutes(one))];
  const asGiven = first === undefined ? [] : [first, ...canned.filter((job) => job !== first)];
  return [
    [...asGiven, ...others, ...trimmings],
    [...longestNext, ...others, ...trimmings],
    [...byLead, ...others, ...trimmings],
    [...others, ...asGiven, ...trimmings],
  ].map(heldFirst);
}

/** The same order with one job moved; what is made of trimmings stays behind the rest. */
function moved(order: readonly Job[], random: () => number): Job[] {
  const held = order.filter(isHeld);
  const whole = order.filter((job) => !usesTrimmings(job) && !isHeld(job));
  const trimmings = order.filter((job) => usesTrimmings(job) && !isHeld(job));
  if (whole.length < 2) return [...order];
  const from = Math.floor(random() * whole.length);
  const [job] = whole.splice(from, 1) as [Job];
  whole.splice(Math.floor(random() * (whole.length + 1)), 0, job);
  return [...held, ...whole, ...trimmings];
}
