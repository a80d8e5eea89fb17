import { describe, expect, test } from 'vitest';
import { clockBlock, clockText } from '../../src/sheet/clock';
import { exampleDay, feasible } from '../helpers/plans';

const rows = (text: string) => text.split('\n').filter((line) => /^\| [\dd]/.test(line));

test('minutes as the clock shows them, later days by their number', () => {
  expect(clockText(0, 1)).toBe('0:00');
  expect(clockText(125, 1)).toBe('2:05');
  expect(clockText(1500, 1)).toBe('day 2, 1:00');
  expect(clockText(61, 2)).toBe('day 1, 1:01');
  expect(clockText(1441, 2)).toBe('day 2, 0:01');
});

describe('the example by the clock', () => {
  const plan = feasible(exampleDay('day.json'));
  const text = clockBlock(plan).join('\n\n');
  test('one line for each task but lifting, in the order of their starts', () => {
    const told = plan.schedule.tasks.filter(({ kind }) => kind !== 'load' && kind !== 'unload');
    expect(rows(text).length).toBe(told.length);
  });
  test('the sheet shows the process with its minutes, and nothing wrong', () => {
    expect(text).toContain('Can peach halves in quarts (7): **process 35 min**');
    expect(text).toContain('no other order finishes sooner');
    expect(text).toMatch(/Spread plum leather \(4\)/);
    expect(text).toMatch(/Pack peach slices, frozen \(\d+\)/);
    expect(text).toMatch(/dryer, \d+ trays/);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  });
  test('what comes dry after the hours is left for later, and the jars are left to cool', () => {
    expect(text).toMatch(/By \d+:\d\d: test apple slices, dried for dryness/);
    expect(text).toContain('cool undisturbed for 12 to 24 hours');
  });
});
test('a day that ends later than its bound says so; on two days each time names its day', () => {
  const input = exampleDay('day.json');
  const text = clockBlock(feasible({ ...input, kitchen: { ...input.kitchen, hours: ['6 h', '8 h'] } })).join('\n\n');
  expect(text).toMatch(/no other order finishes before day 2, \d+:\d\d/);
  expect(text).toContain('each day from its own');
  expect(rows(text).every((row) => /^\| day [12], \d/.test(row))).toBe(true);
});
test('under pressure the sheet shows the gauge, in metric measure as well', () => {
  const text = clockBlock(feasible(exampleDay('day-metric.json'))).join('\n\n');
  expect(text).toMatch(
    /Can tomatoes, crushed, in quarts \(\d\): \*\*process \d+ min at \d+ psi \(\d+ kPa\) on the gauge\*\*/,
  );
});
test('where nothing is made, the sheet shows no steps', () => {
  const plan = feasible({
    lots: [{ food: 'apple', raw: '20 lb' }],
    kitchen: { elevation: '500 m', hours: '6 h' },
    products: [{ make: 'dried', from: 'apples' }],
  });
  expect(clockBlock(plan)).toEqual([]);
});
