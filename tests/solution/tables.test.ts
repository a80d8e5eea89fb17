import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';

const sourced = {
  source: z.string().min(1),
  locator: z.string().min(1),
  obtained: z.enum(['read', 'read-secondary', 'memory', 'computed', 'derived']),
  seen: z.enum(['original', 'reproduction', 'citation']).optional(),
  notes: z.string().optional(),
};
const points = z.array(z.tuple([z.number(), z.number()])).min(2);
const constants = z.record(z.string(), z.number());
const rows = {
  'sucrose-density-polynomial': z.strictObject({
    power: z.int(),
    coefficients: z.array(z.number()).min(2),
    ...sourced,
  }),
  'water-density-kell': z.strictObject({
    numerator: z.array(z.number()).length(6),
    denominator: z.array(z.number()).length(2),
    ...sourced,
  }),
  'sucrose-refractive-index': z.strictObject({ brix: z.number(), nD20: z.number().min(1.33).max(1.54), ...sourced }),
  'refractometer-correction-newer': z.strictObject({ temperature: z.number(), corrections: points, ...sourced }),
  'refractometer-correction-older': z.strictObject({ temperature: z.number(), corrections: points, ...sourced }),
  'sucrose-solubility': z.strictObject({
    temperature: z.number(),
    perSolution: z.number(),
    perWater: z.number(),
    ...sourced,
  }),
  'sucrose-solubility-equations': z.strictObject({
    equation: z.string(),
    coefficients: z.array(z.number()).length(5),
    ...sourced,
  }),
  'boiling-rise-browne': z.strictObject({ brix: z.number(), rise: z.number().positive(), ...sourced }),
  'boiling-rise-equations': z.strictObject({ equation: z.string(), constants, range: z.string(), ...sourced }),
  'solute-properties': z.strictObject({
    solute: z.string(),
    percent: z.number().min(0).max(100),
    molality: z.number().nullable().optional(),
    molarity: z.number().nullable().optional(),
    density: z.number().min(0.78).max(1.5),
    nD20: z.number().min(1.32).max(1.54),
    freezingDepression: z.number().nullable().optional(),
    viscosity: z.number().nullable().optional(),
    ...sourced,
  }),
} as const;
const data = new URL('../../data/solution/', import.meta.url);
const read = (name: string) => JSON.parse(readFileSync(new URL(`${name}.json`, data), 'utf8'));

describe('tables of the module', () => {
  test('each file has its schema here', () => {
    expect(readdirSync(data).sort()).toEqual(
      Object.keys(rows)
        .map((name) => `${name}.json`)
        .sort(),
    );
  });
  test.each(Object.entries(rows))('%s: every row', (name, row) => {
    const table = read(name);
    expect(table.table).toBe(name);
    const parsed = z.array(row).min(1).safeParse(table.rows);
    expect(parsed.success ? [] : parsed.error.issues.slice(0, 3)).toEqual([]);
  });
});

const rising = (values: number[]) => values.every((value, i) => i === 0 || value > (values[i - 1] as number));

test('what is read along a column rises along it', () => {
  expect(rising(read('sucrose-refractive-index').rows.map((row: { brix: number }) => row.brix))).toBe(true);
  expect(rising(read('sucrose-refractive-index').rows.map((row: { nD20: number }) => row.nD20))).toBe(true);
  expect(rising(read('boiling-rise-browne').rows.map((row: { brix: number }) => row.brix))).toBe(true);
  for (const name of ['refractometer-correction-newer', 'refractometer-correction-older']) {
    for (const row of read(name).rows)
      expect(rising((row.corrections as [number, number][]).map(([x]) => x))).toBe(true);
  }
  const solutes = read('solute-properties').rows as { solute: string; percent: number }[];
  for (const solute of new Set(solutes.map((row) => row.solute))) {
    expect(rising(solutes.filter((row) => row.solute === solute).map((row) => row.percent)), solute).toBe(true);
  }
});

test('the two columns of the solubility table say the same, within its rounding', () => {
  for (const { perSolution, perWater } of read('sucrose-solubility').rows as {
    perSolution: number;
    perWater: number;
  }[]) {
    expect(Math.abs((100 * perSolution) / (100 - perSolution) - perWater) / perWater).toBeLessThan(0.003);
  }
});
