import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { processRows } from '../../src/process/tables';
import { PAGE, resting, seenPage } from './seen';

test('docs/sources-seen.md shows what was seen as it is (npx tsx tests/docs/seen.ts writes it)', () => {
  expect(readFileSync(new URL(`../../${PAGE}`, import.meta.url), 'utf8')).toBe(seenPage());
});

test('it counts every process row once, and a row more shows', () => {
  const all = resting();
  expect(all.reduce((sum, { rows }) => sum + rows, 0)).toBe(processRows.length);
  const [first, ...rest] = all as [(typeof all)[0], ...typeof all];
  expect(seenPage([{ ...first, rows: first.rows + 1 }, ...rest])).not.toBe(seenPage(all));
});
