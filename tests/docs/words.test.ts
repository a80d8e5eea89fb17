/** The pages that lead from everyday words and questions to functions name functions and fields that there are. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../src/catalogue/index';

const docs = new URL('../../docs/', import.meta.url).pathname;
const entries = new Map(catalogue().map((entry) => [entry.name, entry]));

/** The cells of a page's rows. */
const rowsOf = (page: string): string[][] =>
  readFileSync(docs + page, 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('| ') && !line.startsWith('| ---'))
    .slice(1)
    .map((line) => line.slice(2, -2).split(' | '));

/** What a cell names: functions, and the fields in front of `of` with their functions. */
function namedIn(cell: string): { functions: string[]; fields: (readonly [field: string, of: string])[] } {
  const names = [...cell.matchAll(/`(\w+)`(?: of `(\w+)`)?/g)];
  return {
    functions: names.map(([, name = '', of]) => of ?? name),
    fields: names.flatMap(([, name = '', of]) => (of === undefined ? [] : [[name, of] as const])),
  };
}

describe.each(['glossary.md', 'start.md'])('%s', (page) => {
  const rows = rowsOf(page);
  const cells = rows.map((row) => row.at(-1) as string);

  test('has three cells in a row, and a function in each', () => {
    expect(rows.length).toBeGreaterThan(10);
    expect(rows.filter((row) => row.length !== 3)).toEqual([]);
    expect(cells.filter((cell) => namedIn(cell).functions.length === 0)).toEqual([]);
  });

  test('names functions that there are, and fields that they take', () => {
    const stray = cells.flatMap((cell) => namedIn(cell).functions).filter((name) => !entries.has(name));
    expect(stray).toEqual([]);
    const taken = (field: string, of: string) => JSON.stringify(entries.get(of)?.input).includes(`"${field}":{`);
    expect(cells.flatMap((cell) => namedIn(cell).fields).filter(([field, of]) => !taken(field, of))).toEqual([]);
  });
});

test('the words are in the order of the alphabet', () => {
  const words = rowsOf('glossary.md').map(([word = '']) => word);
  expect(words).toEqual([...words].sort((a, b) => a.localeCompare(b)));
});
