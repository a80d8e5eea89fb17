import fc from 'fast-check';
import { expect, test } from 'vitest';
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
