import { describe, expect, test } from 'vitest';
import { minutesBefore } from '../../../src/plan/schedule/hours';

describe('minutes of work but for those in the last ones of each day', () => {
  const day = (number: number, startMinute: number, endMinute: number) => ({ day: number, startMinute, endMinute });
  test.each([
    ['a whole day', 0, [day(0, 0, 600)], 600],
    ['a day without its last two hours', 120, [day(0, 0, 600)], 480],
    ['each of two days', 120, [day(0, 0, 600), day(1, 1440, 1740)], 480 + 180],
    ['a break within the last hours counts as clock time', 120, [day(0, 0, 300), day(0, 540, 600)], 300],
    ['a break at their edge', 120, [day(0, 0, 500), day(0, 530, 600)], 480],
    ['more than the day has', 700, [day(0, 0, 600)], 0],
    ['one day is too short for it, the other is not', 200, [day(0, 0, 150), day(1, 1440, 1740)], 100],
  ])('%s', (_, minutes, windows, expected) => expect(minutesBefore(minutes, windows)).toBe(expected));
});
