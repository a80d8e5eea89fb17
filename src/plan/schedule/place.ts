import { type Day, released, takeBackTo } from './day';
import { heldOf } from './inWork';
import type { Job } from './job';
import { placeCanning } from './placeCanning';
import { earliestFilled, placeAlone } from './placePortions';
import { placeQuiet } from './placeQuiet';
import { placeTogether } from './placeTogether';

/** Places a job as early as it fits beside those that stand; false where it does not fit before the horizon. */
export function place(day: Day, job: Job): boolean {
  if (job.together === undefined) return placeOne(day, job);
  return placeOne(day, job) || placeEach(day, job.together.apart);
}

function placeEach(day: Day, jobs: readonly Job[]): boolean {
  const first = day.placed.length;
  const [ends, taken] = [[...day.cannerEnds], new Map(day.takenTrimmings)];
  if (jobs.every((job) => placeOne(day, job))) return true;
  takeBackTo(day, first);
  ends.forEach((end, canner) => {
    day.cannerEnds[canner] = end;
  });
  for (const { lot } of jobs.flatMap(({ needs }) => needs)) day.takenTrimmings.set(lot, taken.get(lot) ?? 0);
  return false;
}

/** The same, with one pot for all its loads or not at all. */
export function placeOne(day: Day, job: Job): boolean {
  const free = released(day, job.needs);
  const from = free === undefined ? undefined : Math.max(free, heldOf(job)?.from ?? 0);
  const filled = from === undefined ? undefined : earliestFilled(day, job, from);
  if (from === undefined || filled === undefined) return false;
  const first = day.placed.length;
  if (!placed(day, job, from, filled)) {
    takeBackTo(day, first);
    return false;
  }
  for (const { lot, kg } of job.needs) day.takenTrimmings.set(lot, (day.takenTrimmings.get(lot) ?? 0) + kg);
  return true;
}

function placed(day: Day, job: Job, from: number, filled: number): boolean {
  const { into, together } = job;
  if (together !== undefined) return placeTogether(day, job, together, from, filled);
  if (into === undefined) return placeAlone(day, job, from, filled) !== undefined;
  return into.kind === 'can' ? placeCanning(day, job, into, from, filled) : placeQuiet(day, job, into, from, filled);
}
