import { describe, expect, test } from 'vitest';
import { clockOf } from '../../src/sheet/clock';
import { frontOf } from '../../src/sheet/front';
import { measureIn } from '../../src/sheet/measure';
import { offTrays, rowsOf } from '../../src/sheet/rows';
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
      if (row.tasks.length > 0) expect(starts).toContain(row.at);
      expect(row.starts).toEqual([row.at]);
      expect(row.time).toBe(pen.clock.time(row.at));
      expect(row.boxes).toEqual(['']);
      if (row.kind === 'work') expect(row.hands).not.toBe('');
    }
  });
  test('a pot that nobody stirs is put on in a row of its own, or in words where its food is prepared', () => {
    const { tasks } = pen.plan.schedule;
    const quiet = tasks.flatMap(({ kind, uses }, index) =>
      (kind === 'cook' || kind === 'heat water') && !uses.some(({ resource }) => resource === 'hands') ? [index] : [],
    );
    for (const index of quiet) {
      const row = rowsOf(pen).find(({ tasks: own }) => own.includes(index));
      if (row?.kinds.includes('prepare'))
        expect(row.hands).toMatch(/, then put (it on|on the syrup: )[^;]*(; keep the sound trimmings for \w)?$/);
      else expect(row?.hands).toMatch(/^Put on/);
      if (!row?.kinds.includes('prepare')) expect(row?.at).toBe(tasks[index]?.startMinute);
    }
  });
  test('every load of trays is taken off in a row, or tomorrow', () => {
    const { tasks, windows } = pen.plan.schedule;
    const loads = tasks.filter(({ kind }) => kind === 'dry' || kind === 'freeze-dry');
    const off = offTrays(pen.plan);
    expect(off.length).toBe(loads.length);
    for (const { task, at } of off) {
      if (at === undefined) expect(task.endMinute).toBeGreaterThanOrEqual(windows.at(-1)?.endMinute ?? 0);
      else expect(windows.some(({ startMinute: from, endMinute: to }) => from <= at && at < to)).toBe(true);
    }
    const rows = rowsOf(pen).filter(({ tasks: own }) => own.length === 0);
    expect(rows.map(({ at }) => at)).toEqual(off.flatMap(({ at }) => at ?? []).sort((one, other) => one - other));
    for (const { hands } of rows) expect(hands).toMatch(/take off \d+ trays?|take off 1 tray/);
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

test('what goes into the dryer at once says so in the row before it', () => {
  const rows = rowsOf(penOf('drying only'));
  expect(rows.some(({ hands, trays }) => hands.endsWith(', then into the dryer') && trays.length === 1)).toBe(true);
});
test('a load that is not packed is taken off, though another of its product is packed', () => {
  const task = (kind: string, startMinute: number, endMinute: number) => ({
    kind,
    startMinute,
    endMinute,
    forProducts: ['pears'],
  });
  const tasks = [task('dry', 0, 100), task('dry', 20, 300), task('pack', 110, 120)];
  const windows = [{ day: 0, startMinute: 0, endMinute: 200 }];
  const left = offTrays({ schedule: { tasks, windows } } as never);
  expect(left.map(({ task: { endMinute }, at }) => [endMinute, at])).toEqual([[300, undefined]]);
});
