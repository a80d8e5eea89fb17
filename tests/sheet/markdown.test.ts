import { expect, test } from 'vitest';
import { boxesOf, loadsOf, tableOf, wrapped } from '../../src/sheet/markdown';
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
  const row = { kind: 'work', boxes: ['8:00', '9:00'] } as never;
  expect(boxesOf(row)).toEqual([`${MARK.box} 8:00`, `${MARK.box} 9:00`]);
  expect(boxesOf({ kind: 'caution', boxes: [] } as never)).toEqual([]);
});
test('each load of a row done several times has its own box, time and clock faces', () => {
  const row = { kind: 'timer', boxes: ['8:00', '9:00'], loads: ['7 jars', '5 jars'] } as never;
  expect(loadsOf(row)).toEqual([
    { box: `${MARK.box} 8:00`, load: '7 jars' },
    { box: `${MARK.box} 9:00`, load: '5 jars' },
  ]);
});
