import { describe, expect, test } from 'vitest';
import { brokenRules } from '../../../src/plan/check/checkTasks';
import type { DaySchedule } from '../../../src/plan/request/daySchedule';
import { fitsAlone } from '../../../src/plan/schedule/loadsThatFit';
import { scheduleJobs } from '../../../src/plan/schedule/scheduleJobs';
import { KINDS, randomWork } from './randomWork';

/** How many kitchens: 300, or as many as the environment says. */
const KITCHENS = Number(process.env.STILLROOM_KITCHENS ?? 300);

/** The order of work of a kitchen, its last hours as long as it takes: whether it fits them is for the plan to see. */
export function orderOf(seed: number): DaySchedule | undefined {
  const { jobs: all, means, windows } = randomWork(seed);
  const jobs = all.filter((job) => job.into?.kind !== 'can' || fitsAlone(job, means));
  const schedule = scheduleJobs(jobs, means, windows, { looks: 2e7 });
  if (schedule === undefined) return undefined;
  const last = windows[windows.length - 1] as (typeof windows)[number];
  const to = Math.max(last.to, ...schedule.tasks.map(({ start, end, unattended }) => (unattended ? start : end)));
  return { ...schedule, windows: [...windows.slice(0, -1), { ...last, to }] };
}

describe(`${KITCHENS} random kitchens: no order of work breaks a rule`, () => {
  const seen = new Map<string, number>();
  const count = (what: string) => seen.set(what, (seen.get(what) ?? 0) + 1);
  test.each(KINDS.map((kind, index) => [kind, index] as const))(
    '%s',
    (kind, index) => {
      for (let seed = index + KINDS.length; seed < KITCHENS + KINDS.length; seed += KINDS.length) {
        const schedule = orderOf(seed);
        if (schedule === undefined) continue;
        count(kind);
        expect(brokenRules(schedule), `kitchen ${seed}`).toEqual([]);
        expect(schedule.lowerBound, `kitchen ${seed}`).toBeLessThanOrEqual(schedule.makespan);
        for (const { kind: task, throughBreak, who } of schedule.tasks) {
          count(task);
          if (throughBreak) count(`${task} through a break`);
          if (who !== undefined) count('people');
        }
      }
    },
    600_000,
  );
  test('most have an order, and every kind of work is seen', () => {
    for (const kind of KINDS) expect(seen.get(kind) ?? 0, kind).toBeGreaterThan((0.8 * KITCHENS) / KINDS.length - 1);
    for (const kind of ['keep hot', 'stand', 'ferment', 'freeze-dry', 'heat canner', 'can through a break', 'people'])
      expect(seen.get(kind) ?? 0, kind).toBeGreaterThan(0);
  });
});
