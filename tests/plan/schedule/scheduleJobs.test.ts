import { describe, expect, test } from 'vitest';
import type { DaySchedule } from '../../../src/plan/daySchedule';
import { workedBy } from '../../../src/plan/schedule/bound';
import type { Means } from '../../../src/plan/schedule/job';
import { rowsOf } from '../../../src/plan/schedule/place';
import { scheduleJobs } from '../../../src/plan/schedule/scheduleJobs';
import { clashes, randomJobs, waits } from './randomJobs';

const capacityOf = (means: Means) => new Map(rowsOf(means).map(({ name, capacity }) => [name, capacity]));

describe('on 100 random days', () => {
  const gaps: number[] = [];
  test.each(Array.from({ length: 100 }, (_, index) => index + 1))(
    'day %i: nothing is used twice, nothing waits too long, the bound holds',
    (seed) => {
      const { jobs, means, windows } = randomJobs(seed);
      const schedule = scheduleJobs(jobs, means, windows) as DaySchedule;
      expect(schedule).toBeDefined();
      expect(clashes(schedule.tasks, capacityOf(means), windows)).toEqual([]);
      expect(waits(jobs, schedule.tasks)).toEqual([]);
      expect(schedule.lowerBound).toBeLessThanOrEqual(schedule.makespan);
      const worked = (clock: number) => workedBy(clock, windows);
      expect(schedule.gap).toBeCloseTo(worked(schedule.makespan) / worked(schedule.lowerBound) - 1, 12);
      expect(schedule.allDone).toBeGreaterThanOrEqual(schedule.makespan);
      gaps.push(schedule.gap);
    },
  );
  test('the gap to the bound', () => {
    const sorted = gaps.toSorted((one, other) => one - other);
    console.log(
      'gap median',
      sorted[50],
      'p90',
      sorted[90],
      'max',
      sorted[99],
      'zero',
      gaps.filter((g) => g === 0).length,
    );
    expect(sorted.length).toBe(100);
  });
});
