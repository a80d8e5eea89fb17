import { expect, test } from 'vitest';
import { processRows } from '../../src/process/tables';
import { sizeRows } from '../../src/words/jar';

test('the tables are frozen here, so that a function that writes into one fails its test', () => {
  const rows = sizeRows as unknown as { name: string }[];
  expect(Object.isFrozen(rows)).toBe(true);
  expect(() => rows.push({ name: 'bucket' })).toThrow(TypeError);
  expect(() => Object.assign(rows[0] as object, { name: 'bucket' })).toThrow(TypeError);
});

test('and without their columns for readers, as the built package has them', () => {
  const have = (column: string): boolean => processRows.some((row) => column in row);
  expect([have('recipe'), have('printed'), have('notes')]).toEqual([true, false, false]);
});
