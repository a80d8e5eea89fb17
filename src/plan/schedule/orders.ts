/** The orders that jobs are tried in: those that are customary, and others with one job moved. */
import { shared } from './blocks';
import { heldOf } from './inWork';
import type { Job, Means } from './job';

const usesTrimmings = ({ needs }: Job): boolean => needs.length > 0;
const isHeld = (job: Job): boolean => heldOf(job) !== undefined;

/** What is in work already comes first, the one that may wait least before the others. */
const heldFirst = (jobs: readonly Job[]): Job[] => [
  ...jobs.filter(isHeld).sort((one, other) => (heldOf(one)?.by ?? 0) - (heldOf(other)?.by ?? 0)),
  ...jobs.filter((job) => !isHeld(job)),
];

/** Quickest first load first, then long ones; with what dries before the jars, or after them. Trimmings come last. */
export function customaryOrders(jobs: readonly Job[], { hands }: Means): Job[][] {
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

/**
 * The same order with one job moved; what is made of trimmings stays behind the rest.
 *
 * @param left - jobs that found no place in it: every second time one of them is moved
 */
export function moved(order: readonly Job[], random: () => number, left: readonly Job[] = []): Job[] {
  const held = order.filter(isHeld);
  const whole = order.filter((job) => !usesTrimmings(job) && !isHeld(job));
  const trimmings = order.filter((job) => usesTrimmings(job) && !isHeld(job));
  if (whole.length < 2) return [...order];
  const late = whole.flatMap((job, place) => (left.includes(job) ? [place] : []));
  const from =
    late.length > 0 && random() < 0.5
      ? (late[Math.floor(random() * late.length)] as number)
      : Math.floor(random() * whole.length);
  const [job] = whole.splice(from, 1) as [Job];
  whole.splice(Math.floor(random() * (whole.length + 1)), 0, job);
  return [...held, ...whole, ...trimmings];
}

/** A number for each job that is the same for jobs that are alike: to change their places changes nothing. */
export function alikeOf(): (job: Job) => number {
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

/** What a job is of, and what it goes into. */
const kindOf = ({ portions, into }: Job): string =>
  [into?.kind, ...new Set(portions.map(({ product }) => product))].join();

/** Jobs of one plan in the order that the jobs of another were done in, kind by kind; what that has fewer of comes last. */
export function inOrderOf(jobs: readonly Job[], like: readonly Job[]): Job[] {
  const waiting = new Map<string, Job[]>();
  for (const job of jobs) waiting.set(kindOf(job), [...(waiting.get(kindOf(job)) ?? []), job]);
  const order = like.flatMap((job) => waiting.get(kindOf(job))?.shift() ?? []);
  const whole = [...order, ...jobs.filter((job) => !order.includes(job))];
  return heldFirst([...whole.filter((job) => !usesTrimmings(job)), ...whole.filter(usesTrimmings)]);
}
