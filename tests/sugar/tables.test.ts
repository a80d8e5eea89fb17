import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { sugarCaution } from '../../src/sugar/cautions';
import { legalJam } from '../../src/sugar/index';

const sourced = {
  source: z.string().min(1),
  locator: z.string().min(1),
  obtained: z.enum(['read', 'read-secondary', 'memory', 'computed', 'derived']),
  seen: z.enum(['original', 'reproduction', 'citation']).optional(),
  notes: z.string().optional(),
};
const named = { name: z.string().min(3), synonyms: z.array(z.string()) };
const ends = z.tuple([z.number().min(0), z.number()]).refine(([low, high]) => low <= high);
const percent = z.number().min(0).max(100);
const kind = z.enum(['none', 'powdered', 'liquid']);
const rows = {
  'canning-syrups': z.strictObject({
    strength: z.enum(['very light', 'light', 'medium', 'heavy', 'very heavy']),
    percent,
    water9Pints: z.number(),
    sugar9Pints: z.number(),
    water7Quarts: z.number(),
    sugar7Quarts: z.number(),
    packedIn: z.string(),
    ...sourced,
  }),
  sweeteners: z.strictObject({
    ...named,
    solids: percent,
    sugars: percent,
    gramsPerCup: z.number().min(100).max(400),
    ...sourced,
  }),
  'gel-point': z.strictObject({ elevation: z.number(), temperature: z.number(), ...sourced }),
  'gel-point-rules': z.strictObject({
    rule: z.string(),
    formula: z.string(),
    value: z.number(),
    unit: z.string(),
    ...sourced,
  }),
  'pectin-classes': z.strictObject({
    ...named,
    group: z.literal([1, 2, 3]),
    secondCopyOnly: z.literal(true).optional(),
    ...sourced,
  }),
  'pectin-content': z.strictObject({
    ...named,
    dryMatter: percent.nullable(),
    sugar: percent.nullable(),
    acid: percent.nullable(),
    pectin: percent.nullable(),
    pectinRange: ends.optional(),
    pH: z.number().nullable(),
    ...sourced,
  }),
  'jelly-juice': z.strictObject({
    ...named,
    waterPerPound: ends,
    simmer: ends,
    sugarPerJuice: ends,
    lemonPerJuice: z.number(),
    lemonOptional: z.literal(true).optional(),
    ...sourced,
  }),
  recipes: z.strictObject({
    product: z.enum(['jam', 'jelly', 'preserves']),
    ...named,
    pectin: kind,
    fruit: ends,
    measure: z.string(),
    sugar: ends,
    lemonJuice: z.number(),
    lemonOptional: z.literal(true).optional(),
    water: z.number().optional(),
    rawPounds: z.number().optional(),
    pectinAmount: z.string().optional(),
    packages: z.int().optional(),
    halfPints: ends.optional(),
    foods: z.array(z.string()).min(1).optional(),
    measuredAs: z.enum(['crushed', 'chopped', 'whole']).optional(),
    lemonKind: z.enum(['lemon juice', 'bottled lemon juice']).optional(),
    vinegar: z.number().optional(),
    juice: z.number().optional(),
    spice: z.string().optional(),
    spiceTsp: z.number().optional(),
    quantitiesDisagree: z.literal(true).optional(),
    ...sourced,
  }),
  'sugar-for-juice': z.strictObject({
    result: z.string(),
    sugar: z.number(),
    atMost: z.literal(true).optional(),
    ...sourced,
  }),
  'us-jam-fruit': z.strictObject({ ...named, group: z.literal([1, 2]), ...sourced }),
  'composition-law': z.strictObject({
    rule: z.string(),
    place: z.string(),
    products: z.array(z.string()).min(1),
    fruits: z.union([z.enum(['any', 'other', 'group 1', 'group 2']), z.array(z.string()).min(1)]),
    fruitParts: z.number().optional(),
    sweetenerParts: z.number().optional(),
    solidsLeast: percent.optional(),
    solidsMost: percent.optional(),
    fruitLeast: z.number().optional(),
    ...sourced,
  }),
  'fruit-factors': z.strictObject({ name: z.string(), factor: z.number().min(6).max(9), ...sourced }),
  'gel-chemistry': z.strictObject({
    pectin: z.string(),
    quantity: z.string(),
    low: z.number(),
    high: z.number(),
    unit: z.string(),
    ...sourced,
  }),
  'pectin-packages': z.strictObject({
    name: z.string(),
    grams: z.number().optional(),
    millilitres: z.number().optional(),
    ...sourced,
  }),
  'remake-jelly': z.strictObject({
    pectin: kind,
    sugar: z.number(),
    water: z.number(),
    lemonJuice: z.number(),
    pectinTsp: z.number().optional(),
    pectinTbsp: z.number().optional(),
    boilSeconds: ends,
    ...sourced,
  }),
  'sugar-stages': z.strictObject({
    stage: z.string(),
    low: z.number(),
    high: z.number(),
    use: z.string().optional(),
    ...sourced,
  }),
};
const data = new URL('../../data/sugar/', import.meta.url);
const read = (name: string) => JSON.parse(readFileSync(new URL(`${name}.json`, data), 'utf8'));

describe('tables of the module', () => {
  test('each file has its schema here', () => {
    expect(
      readdirSync(data)
        .filter((file) => file !== 'cautions.json')
        .sort(),
    ).toEqual(
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

test('the printed syrup percentages are sugar by volume of the printed cups, within 1.3', () => {
  for (const row of read('canning-syrups').rows) {
    expect(Math.abs((100 * row.sugar9Pints) / (row.sugar9Pints + row.water9Pints) - row.percent)).toBeLessThan(1.3);
    expect(Math.abs((100 * row.sugar7Quarts) / (row.sugar7Quarts + row.water7Quarts) - row.percent)).toBeLessThan(1.3);
  }
});

interface Law {
  rule: string;
  products: string[];
  fruits: string | string[];
  fruitParts?: number;
  sweetenerParts?: number;
  solidsLeast?: number;
  solidsMost?: number;
  fruitLeast?: number;
}
const FRUIT_OF: Record<string, string> = { any: 'plum', other: 'plum', 'group 1': 'strawberry', 'group 2': 'peach' };

test.each((read('composition-law').rows as Law[]).map((row) => [row.rule, row] as const))(
  '%s: met at its limit, missed below it',
  (rule, row) => {
    for (const fruitName of typeof row.fruits === 'string' ? [FRUIT_OF[row.fruits] as string] : row.fruits) {
      for (const product of row.products) {
        const of = (share: number) => {
          const fruit = (row.fruitParts ?? 50) * share;
          const jam = row.fruitLeast === undefined ? 100 : (50 * 1000) / row.fruitLeast;
          const answer = legalJam({
            product: product as never,
            fruitName,
            fruit: { value: fruit, unit: 'kg' },
            sugar: { value: row.sweetenerParts ?? 50, unit: 'kg' },
            jam: { value: jam, unit: 'kg' },
            finishSolids: ((row.solidsLeast ?? 65) / 100) * share,
          });
          return answer.checks.filter((check) => check.rule === rule);
        };
        expect(of(1).length).toBeGreaterThan(0);
        expect(of(1).every(({ meets }) => meets)).toBe(true);
        expect(of(0.99).some(({ meets }) => meets && row.solidsMost === undefined)).toBe(false);
      }
    }
  },
);

test('every caution can be found, and no other', () => {
  for (const { id } of read('cautions')) expect(sugarCaution(id).id).toBe(id);
  expect(() => sugarCaution('no-such')).toThrow('no caution');
});

test('yields that no mass balance allows are not in the tables', () => {
  // 4 cups of juice and 3 to 4 of sugar weigh at most some 1.8 kg: no more than 6 half-pints of jelly at 65 %
  for (const row of read('recipes').rows) {
    if (row.product !== 'jelly' || row.pectin !== 'none' || row.halfPints === undefined) continue;
    expect(row.halfPints[1]).toBeLessThanOrEqual(row.fruit[1] + row.sugar[1] - 2);
  }
});
