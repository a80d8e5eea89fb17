import { describe, expect, test } from 'vitest';
import { windowsOf } from '../../../src/plan/kitchen/hours';
import { loadsOf, machineLoads } from '../../../src/plan/kitchen/loadsOf';

const h = (value: number) => ({ value, unit: 'h' as const });
const windows = (...hours: number[]) => windowsOf({ hours: hours.map(h) });

describe('loads of a tray one after the other', () => {
  test.each([
    ['a long load once a day, overnight', 12, [10], 1],
    ['and again each morning', 12, [10, 10, 10], 3],
    ['longer than a day and a night: every other day', 36, [10, 10, 10, 10], 2],
    ['done in the morning, loaded again later that day', 26, [10, 10], 2],
    ['a short load twice in a long day', 6, [10], 2],
    ['and a third overnight', 6, [14], 3],
    ['never twice in a short day', 6, [5], 1],
    ['a day shorter than the first cut is still one load', 6, [0.5], 1],
  ])('%s', (_, hours, days, loads) => {
    expect(loadsOf(hours, windows(...days))).toBe(loads);
  });
  test('the first goes in when a stretch of work has cut it', () => {
    // 45 min of work, then 6 h: free at 6 h 45 min
    expect([6.75, 6.8].map((day) => loadsOf(6, windows(day)))).toEqual([1, 2]);
  });
  test('a busy machine takes its first when it is free', () => {
    expect(loadsOf(6, windows(10), 240)).toBe(1);
    expect(loadsOf(6, windows(10), 200)).toBe(2);
    expect(loadsOf(6, windows(10), 600)).toBe(0);
    expect(loadsOf(6, windows(10, 10), 600)).toBe(2);
  });
  test('what comes dry in a break waits for its end', () => {
    const rest = windowsOf({ hours: [h(8)], breaks: [{ at: 14 * 60, for: h(1.5) }] });
    expect(rest).toHaveLength(2);
    expect(loadsOf(6, rest)).toBe(2);
    expect(loadsOf(6, rest.slice(0, 1))).toBe(1);
  });
});

describe('loads of a kitchen', () => {
  const kitchen = (more: object) => ({ elevation: { value: 0, unit: 'm' }, hours: [h(10), h(10)], ...more }) as never;
  const area = { value: 1, unit: 'ft2' };
  test('by its hours and until when it is busy', () => {
    const dryer = { trays: 3, trayArea: area };
    expect(machineLoads(kitchen({ dryer }), 'dryer', 12)).toBe(2);
    expect(machineLoads(kitchen({ dryer: { ...dryer, busyUntil: { after: 700 } } }), 'dryer', 12)).toBe(1);
    expect(machineLoads(kitchen({}), 'dryer', 12)).toBe(0);
  });
  test('a freeze-dryer as often as the cook says, unless it is busy for all of the hours', () => {
    const machine = { trays: 4, trayArea: area, ice: { value: 2, unit: 'kg' } };
    expect(machineLoads(kitchen({ freezeDryer: machine }), 'freezeDryer', 36)).toBe(1);
    expect(machineLoads(kitchen({ freezeDryer: { ...machine, loads: 3 } }), 'freezeDryer', 30)).toBe(3);
    const busy = { ...machine, loads: 3, busyUntil: { after: 48 * 60 } };
    expect(machineLoads(kitchen({ freezeDryer: busy }), 'freezeDryer', 30)).toBe(0);
  });
});
