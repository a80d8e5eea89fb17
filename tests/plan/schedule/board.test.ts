import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Block, emptyBoard } from '../../../src/plan/schedule/board';

const rows = [
  { name: 'hands', capacity: 2, open: 'in hours' as const },
  { name: 'dryer', capacity: 3, open: 'always' as const },
];
const windows = [
  { day: 0, startMinute: 0, endMinute: 60 },
  { day: 1, startMinute: 100, endMinute: 160 },
];
const board = () => emptyBoard(rows, windows, 300);
const hands = (amount: number, minutes: number): Block => ({
  minutes,
  parts: [{ row: 0, amount, at: 0, minutes }],
});

test('attended work stands inside a window, other work anywhere', () => {
  expect(board().earliest(hands(1, 60), 0)).toBe(0);
  expect(board().earliest(hands(1, 60), 1)).toBe(100);
  expect(board().earliest(hands(1, 61), 0)).toBeUndefined();
  const dry: Block = { minutes: 200, parts: [{ row: 1, amount: 3, at: 0, minutes: 200 }] };
  expect(board().earliest(dry, 40)).toBe(40);
  expect(board().earliest(dry, 101)).toBeUndefined();
});
test('as late as can be, not before a minute', () => {
  expect(board().latest(hands(1, 20), 130, 0)).toBe(110);
  expect(board().latest(hands(1, 40), 130, 0)).toBe(20);
  expect(board().latest(hands(1, 40), 130, 21)).toBeUndefined();
});
test('what is taken is not free, and is again when it is given back', () => {
  const day = board();
  day.take(hands(2, 30), 10);
  expect(day.earliest(hands(1, 10), 5)).toBe(40);
  expect(day.earliest(hands(1, 10), 0)).toBe(0);
  expect(day.latest(hands(1, 10), 39, 0)).toBe(0);
  day.giveBack(hands(2, 30), 10);
  expect(day.earliest(hands(1, 10), 5)).toBe(5);
});
test('a block of several parts fits only where all of them do', () => {
  const day = board();
  day.take(hands(2, 10), 20);
  const block: Block = {
    minutes: 15,
    parts: [
      { row: 1, amount: 1, at: 0, minutes: 15 },
      { row: 0, amount: 1, at: 10, minutes: 5 },
    ],
  };
  expect(day.earliest(block, 8)).toBe(20);
});
describe('loose work', () => {
  const cutting = (work: number, least = 5) => ({ row: 0, work, least });
  test('is put down where something else takes the hands, and taken up as late as can be', () => {
    const day = board();
    day.take(hands(2, 10), 20);
    day.take(hands(1, 10), 40);
    // by 60: both for 10 min, one for 10, both for 10 before that; 8 min of work are left, for which both take 5 min
    expect(day.stretches(cutting(58), 60, 0, 0)).toEqual([
      { start: 15, minutes: 5, amount: 2 },
      { start: 30, minutes: 10, amount: 2 },
      { start: 40, minutes: 10, amount: 1 },
      { start: 50, minutes: 10, amount: 2 },
    ]);
  });
  test('not for less than the least, unless all of it is less', () => {
    const day = board();
    day.take(hands(2, 10), 46);
    expect(day.stretches(cutting(20), 60, 0, 0)).toEqual([{ start: 36, minutes: 10, amount: 2 }]);
    expect(day.stretches(cutting(3), 60, 0, 0)).toEqual([{ start: 58, minutes: 2, amount: 2 }]);
  });
  test('tells what finds no place between two minutes', () => {
    expect(board().stretches(cutting(50), 60, 40, 40)).toBe(10);
    // none of it ends before 45, so that none of it waits too long
    const day = board();
    day.take(hands(2, 15), 45);
    expect(day.stretches(cutting(10), 60, 45, 0)).toBe(10);
  });
  test('makes up the work, overlaps nothing, and is done no sooner than told (property)', () => {
    const busy = fc.array(
      fc.record({
        amount: fc.integer({ min: 1, max: 2 }),
        minutes: fc.integer({ min: 1, max: 30 }),
        from: fc.nat(160),
      }),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(busy, fc.integer({ min: 1, max: 90 }), fc.nat(160), fc.nat(60), (taken, work, by, from) => {
        const day = board();
        const free: number[] = Array.from({ length: 300 }, (_, minute) =>
          windows.some(({ startMinute, endMinute }) => startMinute <= minute && minute < endMinute) ? 2 : 0,
        );
        const take = (block: Block, amount: number, start: number | undefined) => {
          if (start === undefined) return;
          day.take(block, start);
          for (let minute = start; minute < start + block.minutes; minute++)
            free[minute] = (free[minute] ?? 0) - amount;
        };
        for (const each of taken) {
          const block = hands(each.amount, each.minutes);
          take(block, each.amount, day.earliest(block, each.from));
        }
        const found = day.stretches(cutting(work), by, 0, from);
        if (typeof found === 'number') {
          expect(found).toBeGreaterThan(0);
          expect(found).toBeLessThanOrEqual(work);
          return;
        }
        const done = found.reduce((sum, { minutes, amount }) => sum + minutes * amount, 0);
        expect(done).toBeGreaterThanOrEqual(work);
        expect(done).toBeLessThan(work + 2 * 5);
        const shortest = Math.min(...found.map(({ minutes }) => minutes));
        expect(shortest).toBeGreaterThanOrEqual(Math.min(5, Math.ceil(work / 2)));
        for (const { start, minutes, amount } of found) take(hands(amount, minutes), amount, start);
        expect(Math.min(...free)).toBeGreaterThanOrEqual(0);
        expect(Math.min(...found.map(({ start }) => start))).toBeGreaterThanOrEqual(from);
        const ends = Math.max(...found.map(({ start, minutes }) => start + minutes));
        expect(ends).toBeLessThanOrEqual(by);
      }),
    );
  });
  test('done by: both hands on it whenever they are free, into the next hours where it must be', () => {
    const day = board();
    day.take(hands(2, 10), 20);
    expect(day.doneBy(cutting(60), 0)).toBe(40);
    expect(day.doneBy(cutting(100), 0)).toBe(60);
    expect(day.doneBy(cutting(110), 0)).toBe(105);
    expect(day.doneBy(cutting(500), 0)).toBeUndefined();
  });
});

test('never more than there is, whatever is placed (property)', () => {
  const piece = fc.record({
    amount: fc.integer({ min: 1, max: 2 }),
    minutes: fc.integer({ min: 1, max: 40 }),
    from: fc.integer({ min: 0, max: 160 }),
    early: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 20 }), (pieces) => {
      const day = board();
      const busy = new Array<number>(300).fill(0);
      for (const { amount, minutes, from, early } of pieces) {
        const block = hands(amount, minutes);
        const start = early ? day.earliest(block, from) : day.latest(block, from, 0);
        if (start === undefined) continue;
        day.take(block, start);
        for (let minute = start; minute < start + minutes; minute++) busy[minute] = (busy[minute] ?? 0) + amount;
        expect(windows.some((window) => window.startMinute <= start && start + minutes <= window.endMinute)).toBe(true);
      }
      expect(Math.max(...busy)).toBeLessThanOrEqual(2);
    }),
  );
});
