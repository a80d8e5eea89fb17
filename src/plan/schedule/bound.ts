import type { Window } from '../daySchedule';
import type { Job, Means } from './job';
import { shared } from './place';

/** The minute at which so many minutes of work have passed: breaks between the windows do not count. */
export function clockAt(worked: number, windows: readonly Window[]): number {
  let left = worked;
  for (const { from, to } of windows) {
    if (left <= to - from) return from + left;
    left -= to - from;
  }
  return (windows[windows.length - 1]?.to ?? 0) + left;
}

/** Minutes of work that have passed by a minute of the clock; after the last window every minute counts. */
export function workedBy(clock: number, windows: readonly Window[]): number {
  const last = windows[windows.length - 1] as Window;
  return windows.reduce(
    (sum, { from, to }) => sum + Math.max(0, Math.min(clock, to) - from),
    Math.max(0, clock - last.to),
  );
}

/**
 * A minute before which no order of these jobs ends, as the highest of what each resource needs by itself: all work of
 * the hands shared out evenly; burners and pots likewise; the canners, from when a first load can be ready; and the
 * longest job with all hands on it.
 */
export function lowerBound(jobs: readonly Job[], means: Means, windows: readonly Window[]): number {
  const sum = (each: (job: Job) => number) => jobs.reduce((total, job) => total + each(job), 0);
  const portions = (job: Job, each: (portion: Job['portions'][number]) => number) =>
    job.portions.reduce((total, portion) => total + each(portion), 0);
  const filling = (fill: number) => shared(fill, means.hands);
  const potMinutes = (job: Job) =>
    portions(job, ({ cook, fill }) => (cook === undefined ? 0 : cook.minutes + filling(fill)));
  const quickest = ({ into }: Job) =>
    into?.kind === 'can' ? Math.min(...into.canners.map(({ minutes }) => minutes)) : 0;
  const warmUp = ({ into }: Job) => (into?.kind === 'can' ? Math.min(...into.canners.map((each) => each.warmUp)) : 0);

  const hands = sum(({ portions: own, into }) =>
    own.reduce(
      (total, { prepare, fill, cook }) => total + prepare + fill + (cook?.stirred ? cook.minutes : 0),
      into?.kind === 'can' ? 2 * into.lift : 0,
    ),
  );
  const longestPortion = (job: Job) =>
    Math.max(
      0,
      ...job.portions.map((each) => shared(each.prepare, means.hands) + (each.cook?.minutes ?? 0) + filling(each.fill)),
    );
  const loads = jobs.filter(({ into }) => into?.kind === 'can');
  const canners = new Set(
    loads.flatMap(({ into }) => (into?.kind === 'can' ? into.canners.map(({ canner }) => canner) : [])),
  );
  const lead = Math.min(...loads.map((job) => Math.max(longestPortion(job), warmUp(job))));
  const pots = Math.max(1, means.pots.length);
  const worked = Math.max(
    hands / means.hands,
    sum((job) => potMinutes(job) + quickest(job)) / means.burners,
    sum(potMinutes) / pots,
    canners.size === 0 ? 0 : lead + loads.reduce((total, job) => total + quickest(job), 0) / canners.size,
    ...jobs.map((job) => Math.max(longestPortion(job), warmUp(job)) + quickest(job)),
  );
  return clockAt(Math.ceil(worked - 1e-9), windows);
}
