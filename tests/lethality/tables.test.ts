import { expect, test } from 'vitest';
import * as z from 'zod';
import { publishedHeat } from '../../src/lethality/index';
import { publishedRow, resistanceRow } from '../../src/lethality/tables';
import { checkTables, expectFolder, knownSources, readTable } from '../helpers/tables';

const rows = { 'heat-resistance': resistanceRow(), 'published-lethality': publishedRow() } as const;
const read = (name: string) => readTable('lethality', name);

checkTables('lethality', rows);

test('the folder holds no other table', () => {
  expectFolder('lethality', Object.keys(rows));
});

test('each row has its own id', () => {
  for (const name of Object.keys(rows)) {
    const ids = read(name).rows.map((row: { id: string }) => row.id);
    expect(new Set(ids).size).toBe(ids.length);
  }
});

test('every row of heat resistance is served as it stands', () => {
  const { resistance: entries, basis } = publishedHeat();
  const table = read('heat-resistance').rows;
  expect(entries).toHaveLength(table.length);
  for (const [index, row] of table.entries()) {
    const entry = entries[index];
    expect(entry).toMatchObject({ organism: row.organism });
    const line = { of: 'resistance[]', source: row.source, locator: row.locator };
    expect(basis[index]).toMatchObject({ ...line, kind: row.obtained === 'memory' ? 'recalled' : 'published' });
    expect(entry?.heatedIn ?? '').toBe(row.medium);
    expect(entry?.reference?.value ?? null).toBe(row.reference);
    expect([entry?.dValue?.low.value ?? null, entry?.dValue?.high.value ?? null]).toEqual([row.dLow, row.dHigh]);
    expect([entry?.z?.low.value ?? null, entry?.z?.high.value ?? null]).toEqual([row.zLow, row.zHigh]);
    if (entry?.z !== undefined) expect(entry.z.low.unit).toBe(`delta ${row.unit}`);
  }
});

test('every published figure is served as it stands', () => {
  const { enough: entries, resistance, basis } = publishedHeat();
  const table = read('published-lethality').rows;
  expect(entries).toHaveLength(table.length);
  for (const [index, row] of table.entries()) {
    expect(entries[index]).toMatchObject({
      about: row.about,
      what: row.what,
      time: { low: { value: row.low, unit: row.time }, high: { value: row.high, unit: row.time } },
      reference: { value: row.reference, unit: row.unit },
    });
    expect(basis[resistance.length + index]).toMatchObject({
      of: 'enough[]',
      source: row.source,
      locator: row.locator,
    });
    expect(entries[index]?.z?.value ?? null).toBe(row.z);
  }
});

// FDA draft guidance 2010 Table 7 and handbook Table 10.10 print overlapping ranges: z in degF is 1.8 times z in degC
test('two sources for one organism overlap', () => {
  const [fda, handbook] = publishedHeat({ organism: 'botulinum' }).resistance;
  expect((fda?.z?.low.value as number) / 1.8).toBeCloseTo(handbook?.z?.low.value as number, 1);
  expect((fda?.z?.high.value as number) / 1.8).toBeCloseTo(handbook?.z?.high.value as number, 1);
  expect(fda?.dValue?.low.value).toBe(handbook?.dValue?.low.value);
});

test('cautions have an id and a text each, and known sources', () => {
  const cautions = z
    .array(
      z.strictObject({
        id: z.string().regex(/^[a-z-]+$/),
        severity: z.enum(['danger', 'quality', 'note']),
        text: z.string().min(40),
        source: z.string().optional(),
      }),
    )
    .parse(read('cautions'));
  expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
  for (const { source } of cautions) if (source !== undefined) expect(knownSources).toContain(source);
  // Food Protection Trends 35(3):150-160, abstract
  expect(cautions.find(({ id }) => id === 'cooling-counts')?.text).toMatch(/48 % to 95 %/);
});
