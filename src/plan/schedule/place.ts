import { type Day, released, takeBackTo } from './day';
import type { Job } from './job';
import { placeCanning } from './placeCanning';
import { earliestFilled, placeAlone } from './placePortions';
import { placeQuiet } from './placeQuiet';

/** Places a job as early as it fits beside those that stand; false where it does not fit before the horizon. */
export function place(day: Day, job: Job): boolean {
  const from = released(day, job.needs);
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
  const { into } = job;
  if (into === undefined) return placeAlone(day, job, from, filled) !== undefined;
  return into.kind === 'can' ? placeCanning(day, job, into, from, filled) : placeQuiet(day, job, into, from, filled);
}
