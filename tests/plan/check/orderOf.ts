import type { DaySchedule } from '../../../src/plan/request/daySchedule';
import { fitsAlone } from '../../../src/plan/schedule/loadsThatFit';
import { scheduleJobs } from '../../../src/plan/schedule/scheduleJobs';
import { randomWork } from './randomWork';

/** The order of work of a kitchen, its last hours as long as it takes: whether it fits them is for the plan to see. */
export function orderOf(seed: number): DaySchedule | undefined {
  const { jobs: all, means, windows } = randomWork(seed);
  // a load that this kitchen cannot have ready in time is for the plan to make smaller
  const jobs = all.filter((job) => job.into?.kind !== 'can' || fitsAlone(job, means));
  const schedule = scheduleJobs(jobs, means, windows, { looks: 3e5 });
  if (schedule === undefined) return undefined;
  const last = windows[windows.length - 1] as (typeof windows)[number];
  const to = Math.max(
    last.endMinute,
    ...schedule.tasks.map(({ startMinute: start, endMinute: end, unattended }) => (unattended ? start : end)),
  );
  return { ...schedule, windows: [...windows.slice(0, -1), { ...last, endMinute: to }] };
}
