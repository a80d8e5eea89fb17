import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { sources } from '../../src/sources/index';

const sourced = {
  source: z.string(),
  locator: z.string().min(1),
  obtained: z.enum(['read', 'read-secondary', 'memory', 'computed', 'derived']),
  notes: z.string().optional(),
};
const rows = {
  'standard-atmosphere': z.strictObject({
    symbol: z.string(),
    value: z.number(),
    unit: z.string(),
    meaning: z.string(),
    ...sourced,
  }),
  'if97-region4': z.strictObject({ i: z.number().int().min(1).max(10), n: z.number(), ...sourced }),
  'liquid-water': z.strictObject({
    i: z.number().int().min(5).max(10),
    a: z.number(),
    n: z.number().int().positive().nullable(),
    b: z.number(),
    m: z.number().int().positive(),
    ...sourced,
  }),
  'saturated-water': z.strictObject({
    equation: z.enum(['vapour pressure', 'liquid density', 'vapour density']),
    coefficient: z.number(),
    sixths: z.number().int().positive(),
    ...sourced,
  }),
  'moist-air': z.strictObject({ term: z.string(), overIce: z.number(), overLiquid: z.number(), ...sourced }),
} as const;
const folder = new URL('../../data/steam/', import.meta.url);
const read = (name: string) => JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8'));
const known = new Set(sources().map(({ id }) => id));

describe.each(Object.entries(rows))('table %s', (name, row) => {
  const table = read(name);

  test('every row has its shape, and a source of the register', () => {
    z.strictObject({
      table: z.literal(name),
      title: z.string(),
      columns: z.record(z.string(), z.string()),
      notes: z.string().optional(),
      rows: z.array(row).min(1),
    }).parse(table);
    for (const { source } of table.rows) expect(known).toContain(source);
  });

  test('every column is explained', () => {
    const common = ['source', 'locator', 'obtained', 'notes'];
    const used = new Set(table.rows.flatMap((entry: object) => Object.keys(entry)));
    expect([...used].filter((key) => !common.includes(key as string)).sort()).toEqual(
      Object.keys(table.columns).sort(),
    );
  });
});

test('the folder holds no other table', () => {
  expect(readdirSync(folder).sort()).toEqual([...Object.keys(rows), 'cautions'].map((name) => `${name}.json`).sort());
});

test('the rounded constants follow from the defining ones', () => {
  const value = (symbol: string): number =>
    read('standard-atmosphere').rows.find((row: { symbol: string }) => row.symbol === symbol).value;
  const exponent = (value('g0') * value('M0')) / 1000 / (value('Rstar') * -value('L'));
  expect(exponent).toBeCloseTo(value('exponent'), 6);
  const top = value('P0') * (1 + (value('L') * value('Htop')) / value('T0')) ** exponent;
  expect(Math.abs(top - value('Ptop'))).toBeLessThan(0.5);
});

test('cautions have an id and a text each, and known sources', () => {
  const cautions = z
    .array(
      z.strictObject({ id: z.string().regex(/^[a-z-]+$/), text: z.string().min(40), source: z.string().optional() }),
    )
    .parse(read('cautions'));
  expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
  for (const { source } of cautions) if (source !== undefined) expect(known).toContain(source);
});
