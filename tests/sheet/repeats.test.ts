import { expect, test } from 'vitest';
import { clockOf } from '../../src/sheet/clock';
import { withRepeats } from '../../src/sheet/repeats';
import type { Row } from '../../src/sheet/sheet';

const clock = clockOf({ startClock: 8 * 60 });
const DAY = 24 * 60;
/** Rows an hour apart, each day's from 8:00 on. */
const rows = (...days: string[]): Row[] =>
  days.flatMap((keys, day) =>
    [...keys].map((key, hour): Row => {
      const at = day * DAY + hour * 60;
      return {
        at,
        letters: 'A',
        starts: [at],
        time: clock.time(at),
        boxes: [''],
        kind: 'work',
        hands: key,
        stove: [{ times: [`${at}`], text: `pot ${key}` }],
        canner: [],
        trays: [],
        loads: [],
        tasks: [at],
        key,
      };
    }),
  );
const short = (found: readonly Row[]) => found.map(({ key, boxes }) => `${key}${boxes.length}`).join(' ');

test.each([
  ['abc', 'a1 b1 c1'],
  ['aaa', 'a3'],
  ['abab', 'a1 b1 a1 b1'],
  ['aabba', 'a2 b2 a1'],
])('%s: only what is done again at once shares a row', (keys, found) =>
  expect(short(withRepeats(rows(keys), clock))).toBe(found),
);
test('times run down the page', () => {
  const found = withRepeats(rows('abababcc', 'abab'), clock);
  const starts = found.map(({ at }) => at);
  expect(starts).toEqual([...starts].sort((one, other) => one - other));
});
test('days of the same work at the same hours share their rows, one box a day', () => {
  const found = withRepeats(rows('abc', 'abc', 'ab'), clock);
  expect(short(found)).toBe('a2 b2 c2 a1 b1');
  expect(found[0]).toMatchObject({ time: '8:00', boxes: ['Day 1', 'Day 2'] });
  expect(found[3]).toMatchObject({ time: '8:00', boxes: [''] });
});
test('work of one day never shares a row with that of the next', () => {
  expect(short(withRepeats(rows('a', 'ab'), clock))).toBe('a1 a1 b1');
});
test('several times on several days have both at their boxes', () => {
  const [found] = withRepeats(rows('aa', 'aa'), clock);
  expect(found?.boxes).toEqual(['Day 1 8:00', 'Day 1 9:00', 'Day 2 8:00', 'Day 2 9:00']);
});
test('nothing is lost: every time, task and cell', () => {
  const [found] = withRepeats(rows('aaa'), clock);
  expect(found).toMatchObject({
    boxes: ['8:00', '9:00', '10:00'],
    starts: [0, 60, 120],
    tasks: [0, 60, 120],
    stove: [{ times: ['0', '60', '120'], text: 'pot a' }],
  });
});
