import { describe, expect, test } from 'vitest';
import { busyMinutes, checkBreaks, startOf, windowsOf } from '../../../src/plan/kitchen/hours';
import { thrownBy } from '../../helpers/errors';

const h = (value: number) => ({ value, unit: 'h' as const });
const min = (value: number) => ({ value, unit: 'min' as const });
const NOON = 12 * 60;

describe('the hours of work', () => {
  test('are one window a day, the next day 24 h later', () => {
    expect(windowsOf({ hours: [h(8), h(2.5)] })).toEqual([
      { day: 0, startMinute: 0, endMinute: 480 },
      { day: 1, startMinute: 1440, endMinute: 1590 },
    ]);
  });
  test('are parted by breaks of every day, from the start', () => {
    const breaks = [
      { at: NOON, for: min(45) },
      { at: 10 * 60, for: min(15) },
    ];
    expect(windowsOf({ hours: [h(8), h(3)], start: 9 * 60, breaks })).toEqual([
      { day: 0, startMinute: 0, endMinute: 60 },
      { day: 0, startMinute: 75, endMinute: 180 },
      { day: 0, startMinute: 225, endMinute: 480 },
      { day: 1, startMinute: 1440, endMinute: 1500 },
      { day: 1, startMinute: 1515, endMinute: 1620 },
    ]);
  });
  test('start at eight where nothing is said', () => {
    expect(startOf({})).toBe(480);
    expect(windowsOf({ hours: [h(6)], breaks: [{ at: NOON, for: h(1) }] })).toEqual([
      { day: 0, startMinute: 0, endMinute: 240 },
      { day: 0, startMinute: 300, endMinute: 360 },
    ]);
  });
  test('over midnight have each break of each day; breaks that meet are one', () => {
    const breaks = [
      { at: NOON, for: h(1) },
      { at: NOON + 30, for: h(1) },
    ];
    expect(windowsOf({ hours: [h(32)], start: 10 * 60, breaks })).toEqual([
      { day: 0, startMinute: 0, endMinute: 120 },
      { day: 0, startMinute: 210, endMinute: 1560 },
      { day: 0, startMinute: 1650, endMinute: 1920 },
    ]);
  });
  test('of a week have many breaks', () => {
    const breaks = Array.from({ length: 8 }, (_, each) => ({ at: (9 + each) * 60, for: min(10) }));
    const windows = windowsOf({ hours: Array(7).fill(h(12)), breaks });
    expect(windows).toHaveLength(7 * 9);
    expect(windows.reduce((sum, { startMinute: from, endMinute: to }) => sum + to - from, 0)).toBe(7 * (12 * 60 - 80));
  });
  test('a break may begin them or end them', () => {
    expect(windowsOf({ hours: [h(2)], start: NOON, breaks: [{ at: NOON, for: h(1) }] })).toEqual([
      { day: 0, startMinute: 60, endMinute: 120 },
    ]);
  });
});

describe('breaks that are no breaks are refused', () => {
  const error = (at: number, length: { value: number; unit: 'h' | 'min' }, hours = [h(8)]) =>
    thrownBy(() => checkBreaks({ hours, start: 8 * 60, breaks: [{ at, for: length }] }));
  test('outside the hours, which the error shows', () => {
    const found = error(18 * 60, h(1));
    expect(found).toMatchObject({ code: 'CONTRADICTION', path: 'kitchen.breaks[0].at', given: '18:00' });
    expect(found.expected).toBe('a time within the hours of work, 8:00 to 16:00');
    expect(error(7 * 60, h(1), [h(8), h(4)]).expected).toContain('8:00 to 16:00 or 8:00 to 12:00');
  });
  test('longer than the hours go on', () => {
    expect(error(15 * 60, h(2))).toMatchObject({ path: 'kitchen.breaks[0].for', given: '2 h' });
  });
  test('and all of the hours', () => {
    expect(error(8 * 60, h(8))).toMatchObject({ code: 'CONTRADICTION', path: 'kitchen.breaks' });
  });
  test('what lies inside is taken', () => {
    expect(() => checkBreaks({ hours: [h(8)], breaks: [{ at: NOON, for: h(1) }] })).not.toThrow();
    expect(() => checkBreaks({ hours: [h(8)] })).not.toThrow();
  });
});

describe('a machine that still runs', () => {
  test('until a time of day, the first after the start', () => {
    expect(busyMinutes({ start: 8 * 60 }, { clock: 14 * 60 })).toBe(360);
    expect(busyMinutes({ start: 8 * 60 }, { clock: 6 * 60 })).toBe(22 * 60);
  });
  test('or for a time', () => {
    expect(busyMinutes({}, { after: 90.2 })).toBe(91);
  });
  test('or not at all', () => {
    expect(busyMinutes({ start: 8 * 60 }, { clock: 8 * 60 })).toBeUndefined();
    expect(busyMinutes({}, undefined)).toBeUndefined();
  });
});
