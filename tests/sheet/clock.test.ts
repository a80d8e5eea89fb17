import { describe, expect, test } from 'vitest';
import { clockOf, letter } from '../../src/sheet/clock';

describe('minutes of the plan as the clock on the wall shows them', () => {
  const clock = clockOf({ startClock: 480 }, '2026-08-15');
  test('time of day, from the start of the plan', () => {
    expect([0, 65, 959, 960, 1500].map(clock.time)).toEqual(['8:00', '9:05', '23:59', '0:00', '9:00']);
  });
  test('a day is a day of the calendar, whatever the hours of work are', () => {
    expect([0, 959, 960, 1440, 2400].map(clock.day)).toEqual([0, 0, 1, 1, 2]);
    // a day that starts in the evening goes on past midnight
    expect(clockOf({ startClock: 1200 }).day(300)).toBe(1);
  });
  test('the day is named where it is another one', () => {
    expect(clock.when(600, 0)).toBe('18:00');
    expect(clock.when(1500, 0)).toBe('Sun 9:00');
    expect(clock.when(28 * 1440, 0)).toBe('Sat 12 September');
    const undated = clockOf({ startClock: 480 });
    expect(undated.when(1500, 0)).toBe('next day 9:00');
    expect(undated.when(3000, 0)).toBe('day 3 10:00');
    expect(undated.when(21 * 1440, 0)).toBe('Day 22');
  });
  test('days by their date, or by their number', () => {
    expect([0, 1, 17].map(clock.dayName)).toEqual(['Sat 15 August', 'Sun 16 August', 'Tue 1 September']);
    expect(clockOf({ startClock: 480 }).dayName(1)).toBe('Day 2');
    expect(clock.shortDay(1)).toBe('Sun');
    expect(clockOf({ startClock: 480 }).shortDay(1)).toBe('Day 2');
  });
});
test.each(['2026-02-30', '15.8.2026', '2026-8-15', ''])('%s is no date', (date) => {
  expect(() => clockOf({ startClock: 480 }, date)).toThrow(expect.objectContaining({ path: 'date' }));
});
test('letters of products', () => {
  expect([0, 1, 25, 26, 27, 52].map(letter)).toEqual(['A', 'B', 'Z', 'AA', 'AB', 'BA']);
});
