import type { Window } from '../request/daySchedule';
import { shared } from './blocks';
import { clockAt, daysOf } from './hours';
import { type CanStep, heatOf, type Job, type Means, type Portion } from './job';

/** A canner load, and the job that fills it. */
interface Load {
  readonly job: Job;
  readonly into: CanStep;
}

const loadsOf = (job: Job): Load[] =>
  job.into?.kind === 'can'
    ? [job.into, ...(job.together?.more ?? []).map(({ into }) => into)].map((into) => ({ job, into }))
    : [];

/** Loads that need the same canners, as the names of those canners say. */
function byCanners(jobs: readonly Job[]): Load[][] {
  const groups = new Map<string, Load[]>();
  for (const load of jobs.flatMap(loadsOf)) {
    const key = load.into.canners.map(({ canner }) => canner).join();
    groups.set(key, [...(groups.get(key) ?? []), load]);
  }
  return [...groups.values()];
}

/**
 * A minute before which no order of these jobs ends, as the highest of what each resource needs by itself: all work of
 * the hands shared out evenly; burners likewise; the pots, from when a first one can be filled until the last of it is
 * through its canner; the canners that can take the same loads, from when a first load can be ready; and the longest
 * job with all hands on it.
 */
export function lowerBound(jobs: readonly Job[], means: Means, windows: readonly Window[]): number {
  const sum = (some: readonly Job[], each: (job: Job) => number) => some.reduce((total, job) => total + each(job), 0);
  const least = (some: readonly Job[], each: (job: Job) => number) => Math.min(...some.map(each));
  const cut = ({ prepare }: Portion) => shared(prepare, means.hands);
  const pot = ({ cook, fill }: Portion) => {
    if (cook === undefined) return 0;
    return heatOf(cook) + cook.minutes + (cook.blanch === undefined ? shared(fill, means.hands) : 0);
  };
  // water heats while the food is cut
  const fed = (portion: Portion) => Math.max(cut(portion) + (portion.soak ?? 0), heatOf(portion.cook));
  const stove = ({ cook, fill }: Portion) => (cook?.minutes ?? 0) + shared(fill, means.hands);
  const potMinutes = ({ portions }: Job) => portions.reduce((total, portion) => total + pot(portion), 0);
  const filled = ({ portions }: Job) => Math.max(0, ...portions.map((portion) => fed(portion) + stove(portion)));
  const quickest = ({ into }: Job) =>
    into?.kind === 'can' ? Math.min(...into.canners.map(({ minutes }) => minutes)) : 0;
  const warmUp = ({ into }: Job) => (into?.kind === 'can' ? Math.min(...into.canners.map((each) => each.warmUp)) : 0);
  // a pot for several loads may have to be one for each, and then the first is ready sooner
  const ways = (job: Job): readonly Job[] => [job, ...(job.together?.apart ?? [])];
  const lead = (job: Job) => least(ways(job), (way) => Math.max(filled(way), warmUp(way)));
  const handMinutes = (job: Job) =>
    job.portions.reduce(
      (total, { prepare, fill, cook }) => total + prepare + fill + (cook?.stirred ? cook.minutes : 0),
      loadsOf(job).reduce((total, { into }) => total + 2 * into.lift, 0) +
        (job.together?.more ?? []).reduce((total, { fill }) => total + fill, 0),
    );
  const canned = (job: Job) =>
    loadsOf(job).reduce((total, { into }) => total + Math.min(...into.canners.map(({ minutes }) => minutes)), 0);

  const cooked = jobs.filter(({ portions }) => portions.some(({ cook }) => cook !== undefined));
  const firstCut = (job: Job) =>
    Math.min(
      ...ways(job)
        .flatMap(({ portions }) => portions)
        .filter(({ cook }) => cook !== undefined)
        .map((portion) => fed(portion) - heatOf(portion.cook)),
    );
  const hands = sum(jobs, handMinutes) / means.hands;
  const others = Math.max(
    sum(jobs, (job) => potMinutes(job) + canned(job)) / means.burners,
    cooked.length === 0
      ? 0
      : least(cooked, firstCut) + sum(cooked, potMinutes) / Math.max(1, means.pots.length) + least(cooked, quickest),
    ...byCanners(jobs).map((loads) => {
      const canners = loads[0]?.into.canners.length ?? 1;
      const all = loads.reduce((total, { into }) => total + Math.min(...into.canners.map(({ minutes }) => minutes)), 0);
      return Math.min(...loads.map(({ job }) => lead(job))) + all / canners;
    }),
    ...jobs.map((job) => lead(job) + quickest(job)),
  );
  const whole = (minutes: number) => Math.ceil(minutes - 1e-9);
  // pots and canners go on through a break
  return Math.max(clockAt(whole(hands), windows), clockAt(whole(others), daysOf(windows)));
}
