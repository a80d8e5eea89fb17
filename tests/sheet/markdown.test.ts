import { expect, test } from 'vitest';
import { boxesOf, tableOf, wrapped } from '../../src/sheet/markdown';
import { MARK } from '../../src/sheet/words';

test('a table is padded, so that it reads as plain text', () => {
  expect(tableOf(['a', 'long head'], [['1', '2']])).toBe(
    '| a   | long head |\n|-----|-----------|\n| 1   | 2         |',
  );
});
test('a list is wrapped at the margin', () => {
  const lines = wrapped(`- ${'word '.repeat(40).trim()}`, 50);
  expect(lines.length).toBeGreaterThan(3);
  expect(lines.every((line) => line.length <= 50)).toBe(true);
  expect(lines.slice(1).every((line) => line.startsWith('  w'))).toBe(true);
  expect(lines.join(' ').replace(/ +/g, ' ')).toBe(`- ${'word '.repeat(40).trim()}`);
});
test('a box to tick for each time', () => {
  const row = { kind: 'work', times: ['8:00', '9:00'] } as never;
  expect(boxesOf(row)).toEqual([`${MARK.box} 8:00`, `${MARK.box} 9:00`]);
  expect(boxesOf({ kind: 'caution', times: [] } as never)).toEqual([]);
});
