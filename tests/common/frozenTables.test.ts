import { expect, test } from 'vitest';
import jars from '../../data/words/jar-sizes.json';

test('the tables are frozen here, so that a function that writes into one fails its test', () => {
  const table = jars as { rows: { name: string }[] };
  expect(Object.isFrozen(table)).toBe(true);
  expect(() => table.rows.push({ name: 'bucket' })).toThrow(TypeError);
  expect(() => Object.assign(table.rows[0] as object, { name: 'bucket' })).toThrow(TypeError);
});
