import { expect, test } from 'vitest';
import * as z from 'zod';
import { heatResistance, publishedLethality } from '../../src/lethality/index';
import { checkTables, expectFolder, knownSources, readTable, sourced } from '../helpers/tables';

const figure = z.number().positive().nullable();
const rows = {
  'heat-resistance': z
    .strictObject({
      organism: z.string().min(5),
      medium: z.string(),
      reference: figure,
      dLow: figure,
      dHigh: figure,
      zLow: figure,
      zHigh: figure,
      unit: z.enum(['degC', 'degF']),
      ...sourced,
    })
    .refine((row) => (row.dLow ?? 0) <= (row.dHigh ?? 0) && (row.zLow ?? 0) <= (row.zHigh ?? 0))
    // a D value means nothing without its temperature
    .refine((row) => (row.dLow === null) === (row.reference === null)),
  'published-lethality': z
    .strictObject({
      about: z.string().min(5),
      what: z.string().min(5),
      low: z.number().positive(),
      high: z.number().positive(),
      time: z.enum(['min', 's']),
      reference: z.number().positive(),
      z: figure,
      unit: z.enum(['degC', 'degF']),
      ...sourced,
    })
    .refine((row) => row.low <= row.high),
} as const;
const read = (name: string) => readTable('lethality', name);

checkTables('lethality', rows);

test('the folder holds no other table', () => {
  expectFolder('lethality', Object.keys(rows));
});

test('every row of heat resistance is served as it stands', () => {
  const { entries } = heatResistance({});
  const table = read('heat-resistance').rows;
  expect(entries).toHaveLength(table.length);
  for (const [index, row] of table.entries()) {
    const entry = entries[index];
    expect(entry).toMatchObject({ organism: row.organism, basis: { source: row.source, locator: row.locator } });
    expect(entry?.medium ?? '').toBe(row.medium);
    expect(entry?.reference?.value ?? null).toBe(row.reference);
    expect([entry?.dValue?.low.value ?? null, entry?.dValue?.high.value ?? null]).toEqual([row.dLow, row.dHigh]);
    expect([entry?.z?.low.value ?? null, entry?.z?.high.value ?? null]).toEqual([row.zLow, row.zHigh]);
    if (entry?.z !== undefined) expect(entry.z.low.unit).toBe(`delta ${row.unit}`);
    expect(entry?.basis.kind).toBe(row.obtained === 'memory' ? 'recalled' : 'published');
  }
});

test('every published figure is served as it stands', () => {
  const { entries } = publishedLethality({});
  const table = read('published-lethality').rows;
  expect(entries).toHaveLength(table.length);
  for (const [index, row] of table.entries()) {
    expect(entries[index]).toMatchObject({
      about: row.about,
      what: row.what,
      time: { low: { value: row.low, unit: row.time }, high: { value: row.high, unit: row.time } },
      reference: { value: row.reference, unit: row.unit },
      basis: { source: row.source },
    });
    expect(entries[index]?.z?.value ?? null).toBe(row.z);
  }
});

// FDA draft guidance 2010 Table 7 and handbook Table 10.10 print overlapping ranges: z in degF is 1.8 times z in degC
test('two sources for one organism overlap', () => {
  const [fda, handbook] = heatResistance({ organism: 'botulinum' }).entries;
  expect((fda?.z?.low.value as number) / 1.8).toBeCloseTo(handbook?.z?.low.value as number, 1);
  expect((fda?.z?.high.value as number) / 1.8).toBeCloseTo(handbook?.z?.high.value as number, 1);
  expect(fda?.dValue?.low.value).toBe(handbook?.dValue?.low.value);
});

test('cautions have an id and a text each, and known sources', () => {
  const cautions = z
    .array(
      z.strictObject({ id: z.string().regex(/^[a-z-]+$/), text: z.string().min(40), source: z.string().optional() }),
    )
    .parse(read('cautions'));
  expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
  for (const { source } of cautions) if (source !== undefined) expect(knownSources).toContain(source);
  // Food Protection Trends 35(3):150-160, abstract
  expect(cautions.find(({ id }) => id === 'cooling-counts')?.text).toMatch(/48 % to 95 %/);
});
