/** The search for an order of jobs: each is placed as early as it fits beside those before it. */
import { seeded } from '../../common/seeded';
import type { Window } from '../request/daySchedule';
import type { Effort } from '../solver/effort';
import { blocksOf } from './blocks';
import { type Day, emptyDay, type Placed, put } from './day';
import { putRunning } from './inWork';
import { type Job, type Means, machineMinutes } from './job';
import { alikeOf, customaryOrders, inOrderOf, moved } from './orders';
import { place } from './place';

/** The work of a day, and what it is worth to leave some of it out. */
export interface Work {
  readonly jobs: readonly Job[];
  readonly means: Means;
  readonly windows: readonly Window[];
  readonly effort: Pick<Effort, 'looks'>;
  /** Minutes after the last window that work may run on. */
  readonly overtime: number;
  /** The order that another plan of this day was done in. */
  readonly like?: readonly Job[];
  /** What is lost with jobs that find no place; without it each must find one. */
  readonly lossOf?: (left: readonly Job[]) => number;
}

/** How long an order is looked for. */
export interface Until {
  /** Whether nothing better is wanted. */
  readonly enough: (best: Ordered) => boolean;
  /** Orders that are tried, and how many of them in vain. */
  readonly tries: number;
  readonly inVain: number;
}

/** The best order so far, and the day that is filled by it. */
export interface Ordered {
  readonly order: readonly Job[];
  readonly day: Day;
  /** How the day stood before each job was placed. */
  readonly before: readonly Stand[];
  /** What found no place, and what is lost with it. */
  readonly left: readonly Job[];
  readonly loss: number;
  readonly makespan: number;
  /** Among orders that end together the one whose work is done earlier. */
  readonly sum: number;
}

/** How far a day is filled: what `takeUp` brings an empty day to. */
interface Stand {
  readonly placed: number;
  readonly left: number;
  readonly cannerEnds: readonly number[];
  readonly takenTrimmings: ReadonlyMap<number, number>;
}
const standOf = ({ placed, cannerEnds, takenTrimmings }: Day, left: number): Stand => ({
  placed: placed.length,
  left,
  cannerEnds: [...cannerEnds],
  takenTrimmings: new Map(takenTrimmings),
});

/** Puts the same on an empty day as another had when it stood so, without looking for where it fits. */
function takeUp(day: Day, { placed, cannerEnds, takenTrimmings }: Stand, from: Day): void {
  for (let index = 0; index < placed; index++) put(day, from.placed[index] as Placed);
  day.cannerEnds.splice(0, day.cannerEnds.length, ...cannerEnds);
  for (const [lot, kg] of takenTrimmings) day.takenTrimmings.set(lot, kg);
}

/** When the work of hands, pots and canners ends that was placed since: what goes on by itself has been loaded by somebody when it starts. */
function endOf({ placed }: Day, first = 0): number {
  let latest = 0;
  for (let index = first; index < placed.length; index++)
    for (const { kind, startMinute, endMinute, unattended, was } of (placed[index] as Placed).tasks)
      if (kind !== 'pack' && kind !== 'freeze-dry' && was !== 'running')
        latest = Math.max(latest, unattended ? startMinute : endMinute);
  return latest;
}

/** When its tasks end, all together. */
const sumOf = ({ placed }: Day): number =>
  placed.reduce(
    (sum, { tasks }) =>
      tasks.reduce((own, { startMinute, endMinute, unattended }) => own + (unattended ? startMinute : endMinute), sum),
    0,
  );

const better = (one: Ordered, other: Ordered): boolean =>
  one.loss !== other.loss
    ? one.loss < other.loss
    : one.makespan < other.makespan || (one.makespan === other.makespan && one.sum < other.sum);

/** Places a job; what finds no place in one pot for several loads may find it in a pot for each. Answers what is left. */
function placeOrLeave(day: Day, job: Job): readonly Job[] {
  if (place(day, job)) return [];
  return job.together === undefined ? [job] : job.together.apart.filter((each) => !place(day, each));
}

/** Fills a day by searches for an order, each from the best order that those before it found. */
export function ordersOf({ jobs, means, windows, effort, overtime, like, lossOf }: Work) {
  // at most half of what is left, for there may be a shorter day to try after this one
  const enoughLooks = effort.looks / 2;
  const longest = Math.max(0, ...jobs.map(machineMinutes));
  const blocks = blocksOf(means);
  const alike = alikeOf();
  const known = new Set<string>();
  let best: Ordered | undefined;

  const sameUntil = (order: readonly Job[], other: readonly Job[]): number => {
    const apart = order.findIndex((job, at) => alike(job) !== alike(other[at] as Job));
    return apart < 0 ? order.length : apart;
  };
  const attempt = (order: readonly Job[]): Ordered | undefined => {
    const day = emptyDay(means, windows, overtime, longest, effort, blocks);
    // what an order begins with like the best one is placed like that
    const same = best === undefined ? 0 : sameUntil(order, best.order);
    const stand = best?.before[same];
    if (best === undefined || stand === undefined || same === 0) putRunning(day);
    else takeUp(day, stand, best.day);
    const before: Stand[] = best?.before.slice(0, same) ?? [];
    const left: Job[] = best?.left.slice(0, stand?.left ?? 0) ?? [];
    let loss = left.length === 0 ? 0 : (lossOf?.(left) ?? 0);
    for (const job of order.slice(same)) {
      const first = day.placed.length;
      before.push(standOf(day, left.length));
      const over = placeOrLeave(day, job);
      if (over.length > 0) {
        if (lossOf === undefined) return undefined;
        left.push(...over);
        loss = lossOf(left);
      }
      // what is worse than the best before all of it is placed stays so
      if (best === undefined || loss < best.loss) continue;
      if (loss > best.loss || endOf(day, first) > best.makespan) return undefined;
    }
    return {
      order,
      day,
      before,
      left,
      loss,
      makespan: Math.max(windows[0]?.startMinute ?? 0, endOf(day)),
      sum: sumOf(day),
    };
  };
  /** Whether an order is better than the best so far, which it then is. */
  const keep = (order: readonly Job[]): boolean => {
    const key = order.map(alike).join();
    if (known.has(key)) return false;
    known.add(key);
    const tried = attempt(order);
    if (tried === undefined || (best !== undefined && !better(tried, best))) return false;
    best = tried;
    return true;
  };
  const random = seeded(1);
  let begun = false;
  return ({ enough, tries, inVain }: Until): Ordered | undefined => {
    const goesOn = () => best === undefined || (!enough(best) && effort.looks > 0 && effort.looks >= enoughLooks);
    const first = like === undefined || begun ? customaryOrders(jobs, means) : [inOrderOf(jobs, like)];
    begun = true;
    for (const order of first) if (goesOn()) keep(order);
    for (let tried = 0, vain = 0; tried < tries && vain < inVain && best !== undefined && goesOn(); tried++)
      vain = keep(moved(best.order, random, best.left)) ? 0 : vain + 1;
    return best;
  };
}
