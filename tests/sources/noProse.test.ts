/** No code reads prose: what the code must know is a column of a table or a field, never the wording of a note. */
import { expect, test } from 'vitest';
import { expectListed } from '../helpers/shrinking';
import { proseReaders, readsProse } from './prose';

test('no source file looks into a text that is for people', () => {
  const found = new Map<string, string>();
  for (const [file, places] of proseReaders())
    for (const { line, code } of places) found.set(`${file}: ${code}`, `line ${line}`);
  expectListed({
    file: 'tests/sources/readsProse.json',
    found,
    mend: 'Put what the code needs into a column or field; where the text is what a caller typed, list it with that reason.',
  });
});

test.each([
  ['a pattern on a field', 'const a = /x/.test(row.note)', 1],
  ['a field searched', "row.basis[0].of.includes('x')", 1],
  ['a field that may be absent', "row.note?.startsWith('x')", 1],
  ['an alternative', "(row.note ?? '').match(/x/)", 1],
  ['taken out of a row', "const f = ({ of }) => of.includes('x')", 1],
  ['taken out under another name', "function f(row) { const { note: said } = row; return said.startsWith('x') }", 1],
  ['a field of data', "row.food.includes('x')", 0],
  ['a name of the same spelling that no field gave', "const f = (text) => text.includes('x')", 0],
] as const)('%s', (_, code, count) => {
  expect(readsProse('x.ts', code)).toHaveLength(count);
});
