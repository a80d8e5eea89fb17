import { describe, expect, test } from 'vitest';
import { clockOf } from '../../src/sheet/clock';
import { frontOf } from '../../src/sheet/front';
import { measureIn } from '../../src/sheet/measure';
import { rowsOf } from '../../src/sheet/rows';
import { FEASIBLE_NAMES, feasiblePlan } from './days';

const penOf = (name: (typeof FEASIBLE_NAMES)[number]) => {
  const plan = feasiblePlan(name);
  return { plan, clock: clockOf(plan.schedule), measure: measureIn('us') };
};

describe.each(FEASIBLE_NAMES)('%s', (name) => {
  const pen = penOf(name);
  const all = pen.plan.schedule.tasks.map((_, index) => index);
  test('every task of the schedule stands in one row, before and after rows are put together', () => {
    const tasks = rowsOf(pen).flatMap((row) => row.tasks);
    expect(tasks.sort((one, other) => one - other)).toEqual(all);
    const front = frontOf(pen, undefined, false).front.rows.flatMap((row) => row.tasks);
    expect(front.sort((one, other) => one - other)).toEqual(all);
  });
  test('rows are in the order of their times, and each time is the one of its task', () => {
    const rows = rowsOf(pen);
    expect(rows.map(({ at }) => at)).toEqual(rows.map(({ at }) => at).sort((one, other) => one - other));
    for (const row of rows) {
      const starts = row.tasks.map((index) => pen.plan.schedule.tasks[index]?.startMinute);
      expect(starts).toContain(row.at);
      expect(row.times).toEqual([pen.clock.time(row.at)]);
      if (row.kind === 'work') expect(row.hands).not.toBe('');
    }
  });
  test('each load has its timer, with its jars in and out in the same row', () => {
    const { tasks } = pen.plan.schedule;
    const timers = rowsOf(pen).filter(({ kind }) => kind === 'timer');
    expect(timers.length).toBe(tasks.filter(({ kind }) => kind === 'can').length);
    for (const { tasks: own } of timers)
      expect(own.map((index) => tasks[index]?.kind).sort()).toEqual(['can', 'load', 'unload']);
  });
});
test('hands are named where the kitchen names them', () => {
  const rows = rowsOf(penOf('two days under pressure'));
  const fills = rows.filter(({ hands }) => hands.includes('FILL'));
  expect(fills.length).toBeGreaterThan(1);
  for (const { hands } of fills) expect(hands).toMatch(/^(cook|helper|cook, helper): /);
});
