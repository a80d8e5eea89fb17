import { describe, expect, test } from 'vitest';
import type { ScheduledTask } from '../../src/plan/request/daySchedule';
import { handsWorkFrom } from '../../src/sheet/stretches';

const cut = (
  startMinute: number,
  endMinute: number,
  lb: number,
  goesOnMinute?: number,
  name = 'sauce',
): ScheduledTask => ({
  kind: 'prepare',
  what: 'tomatoes',
  forProducts: [name],
  raw: { value: lb, unit: 'lb' },
  startMinute,
  endMinute,
  uses: [{ resource: 'hands', used: 1 }],
  unattended: false,
  ...(goesOnMinute === undefined ? {} : { goesOnMinute }),
});

describe('food prepared in several stretches', () => {
  test('in one go: the task as it is', () => {
    const task = cut(0, 30, 5);
    expect(handsWorkFrom([task], 0)).toEqual([{ task, own: [0] }]);
  });
  test('with less than 10 min between: one row, the weight of all of it', () => {
    const [work, ...others] = handsWorkFrom([cut(0, 30, 5, 34), cut(34, 50, 3)], 0);
    expect(others).toEqual([]);
    expect(work).toMatchObject({
      task: { startMinute: 0, endMinute: 50, raw: { value: 8, unit: 'lb' } },
      own: [0, 1],
    });
    expect(work?.part).toBeUndefined();
  });
  test('with more between: each its own row, which says what it is of', () => {
    const tasks = [
      cut(0, 30, 5, 50),
      cut(20, 40, 9, undefined, 'juice'),
      cut(50, 60, 3, 64),
      cut(64, 70, 2, 90),
      cut(90, 95, 1),
    ];
    const all = { value: 11, unit: 'lb' };
    expect(handsWorkFrom(tasks, 0).map(({ own, task, part }) => [own, task.raw?.value, part])).toEqual([
      [[0], 5, { which: 'first', all }],
      [[2, 3], 5, { which: 'more', all }],
      [[4], 1, { which: 'last', all }],
    ]);
  });
  test('what begins at the same minute for another product is not of it', () => {
    const tasks = [cut(0, 30, 5, 40), cut(40, 60, 9, undefined, 'juice'), cut(40, 50, 3)];
    expect(handsWorkFrom(tasks, 0).map(({ own }) => own)).toEqual([[0], [2]]);
  });
});
