import { expect, test } from 'vitest';
import * as z from 'zod';
import { checkTables, expectFolder, knownSources, readTable, sourced } from '../helpers/tables';

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
const read = (name: string) => readTable('steam', name);

checkTables('steam', rows);

test('the folder holds no other table', () => {
  expectFolder('steam', Object.keys(rows));
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
  for (const { source } of cautions) if (source !== undefined) expect(knownSources).toContain(source);
});
