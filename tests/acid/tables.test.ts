import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { LIMITS, limitRow, pHLimit } from '../../src/acid/phLimits';
import { closestReading, READINGS } from '../../src/acid/phReading';
import {
  acidCaution,
  FERMENT_SALT,
  FOOD_PH,
  pickleRule,
  printed,
  RECALLED_PH,
  RECIPES,
  SALT_MEASURES,
} from '../../src/acid/tables';
import { nameKey } from '../../src/common/names';
import { rowsOf } from '../../src/process/tables';
import { sourced } from '../helpers/tables';

const positive = z.number().positive();
const pH = z.number().min(0).max(14);
const measure = z.strictObject({ value: positive, unit: z.enum(['tsp', 'tbsp', 'cup', 'quart', 'gallon']) });
const ascending = <L extends string, H extends string>(low: L, high: H) =>
  ((row: Record<string, unknown>) => row[low] === undefined || Number(row[low]) <= Number(row[high])) as (
    row: unknown,
  ) => boolean;

const foodPh = z
  .strictObject({
    food: z.string(),
    base: z.string(),
    pHLow: pH,
    pHHigh: pH,
    prepared: z.literal(true).optional(),
    ...sourced,
  })
  .refine(ascending('pHLow', 'pHHigh'));
const TABLES = {
  'food-ph': { rows: 221, row: foodPh },
  'food-ph-recalled': { rows: 48, row: foodPh.refine((row) => row.obtained === 'memory') },
  'ph-limits': {
    rows: 9,
    row: z.strictObject({
      id: z.string().regex(/^[a-z-]+$/),
      limit: z.string(),
      pH: pH.optional(),
      relation: z.enum(['>', '<=', '<']).optional(),
      process: z.string().optional(),
      waterActivityAbove: z.literal(0.85).optional(),
      food: z.literal('tomato').optional(),
      foods: z.array(z.string()).optional(),
      ...sourced,
    }),
  },
  'ph-readings': {
    rows: 3,
    row: z.strictObject({
      instrument: z.string(),
      within: positive,
      assumed: z.literal(true).optional(),
      ...sourced,
    }),
  },
  'pickle-recipes': {
    rows: 25,
    row: z.strictObject({
      recipe: z.string(),
      names: z.array(z.string().min(1)),
      makes: z.enum(['pickle', 'relish', 'ferment']),
      process: z.string().optional(),
      produce: z.string(),
      vinegarCups: positive,
      waterCups: z.number().min(0),
      lemonJuiceCups: positive.optional(),
      oilCups: positive.optional(),
      salt: measure.optional(),
      saltEachJar: z.strictObject({ salt: measure, jar: z.literal('half-pint') }).optional(),
      sugar: measure.optional(),
      drained: z
        .array(
          z.strictObject({
            what: z.string().min(1),
            salt: measure.optional(),
            water: measure.optional(),
            ice: measure.optional(),
            vinegar: measure.optional(),
            sugar: measure.optional(),
            rounds: z.number().int().min(2).optional(),
            time: z.strictObject({ low: positive, high: positive, unit: z.enum(['h', 'min']) }).optional(),
            each: z.literal('gallon').optional(),
          }),
        )
        .min(1)
        .optional(),
      also: z.array(z.string().min(1)).min(1).optional(),
      yields: z
        .strictObject({ low: positive, high: positive, jar: z.enum(['pint', 'half-pint', '12-oz']) })
        .refine(ascending('low', 'high'))
        .optional(),
      batches: z.strictObject({ most: positive.int(), whole: z.boolean() }),
      ...sourced,
    }),
  },
  'pickle-rules': {
    rows: 14,
    row: z.strictObject({
      rule: z.string(),
      about: z.string(),
      value: positive.optional(),
      range: z.tuple([positive, positive]).optional(),
      unit: z.string(),
      lowest: positive.optional(),
      highest: positive.optional(),
      ...sourced,
    }),
  },
  'ferment-salt': {
    rows: 8,
    row: z.strictObject({
      food: z.string(),
      use: z.string(),
      saltTbsp: positive.optional(),
      saltLb: positive.optional(),
      produceLb: positive.optional(),
      saltTbspPerQuartWater: positive.optional(),
      saltCups: positive.optional(),
      waterCups: positive.optional(),
      vinegarCups: positive.optional(),
      percentLow: positive.optional(),
      percentHigh: positive.optional(),
      lacticPercentAtLeast: positive.optional(),
      leastOf: z
        .array(z.enum(['water', 'water and produce']))
        .min(1)
        .optional(),
      ...sourced,
    }),
  },
  'ferment-time': {
    rows: 10,
    row: z
      .strictObject({
        food: z.string(),
        what: z.string(),
        degFLow: positive.optional(),
        degFHigh: positive.optional(),
        weeksLow: positive.optional(),
        weeksHigh: positive.optional(),
        degF: positive.optional(),
        outcome: z.string().optional(),
        monthsLow: positive.optional(),
        monthsHigh: positive.optional(),
        inchesLow: positive.optional(),
        inchesHigh: positive.optional(),
        ...sourced,
      })
      .refine(ascending('degFLow', 'degFHigh'))
      .refine(ascending('weeksLow', 'weeksHigh')),
  },
  'salt-measures': {
    rows: 5,
    row: z
      .strictObject({
        crystal: z.string(),
        gramsLow: positive,
        gramsHigh: positive,
        measure: z.enum(['tsp', 'tbsp', 'cup']),
        ...sourced,
      })
      .refine(ascending('gramsLow', 'gramsHigh')),
  },
} as const;

describe('tables of the module', () => {
  test.each(Object.entries(TABLES))('%s fits its schema, row by row', (name, { rows, row }) => {
    const table = JSON.parse(readFileSync(new URL(`../../data/acid/${name}.json`, import.meta.url), 'utf8'));
    expect(table.rows).toHaveLength(rows);
    for (const entry of table.rows) expect(row.safeParse(entry).error?.issues, JSON.stringify(entry)).toBeUndefined();
  });
});

test('the limit is 4.6 on every line but the one for tomatoes', () => {
  expect(limitRow('home-acid').pH).toBe(4.6);
  expect(limitRow('home-low-acid').pH).toBe(4.6);
  expect(limitRow('law-tomato').pH).toBe(4.7);
  // the pickle rules repeat it
  for (const rule of ['acid-food', 'acidified-food', 'low-acid-food']) expect(pickleRule(rule).value).toBe(4.6);
  expect(pickleRule('water-activity').value).toBe(0.85);
  expect(limitRow('named-low-acid').foods).toContain('milk');
});

// 21 CFR 114.3 and 113.3(n), USDA Guide 1: every line that is written more than once
test('each line of the limit table holds its own figures', () => {
  expect(LIMITS.map(({ pH, relation, waterActivityAbove }) => [pH, relation, waterActivityAbove])).toEqual([
    [4.6, '>', undefined],
    [4.6, '<=', undefined],
    [4.6, '<=', undefined],
    [4.6, '<=', 0.85],
    [4.6, '>', 0.85],
    [4.7, '<', undefined],
    [4.6, '>', 0.85],
    [undefined, undefined, undefined],
    [undefined, undefined, undefined],
  ]);
  const { value, lowest, highest } = pickleRule('pasteurization-hold');
  expect([value, lowest, highest]).toEqual([30, 180, 185]);
});

test('one instrument is assumed, and not the closest', () => {
  expect(READINGS.filter((row) => row.assumed === true).map(({ within }) => within)).toEqual([0.1]);
  expect(READINGS.map(({ within }) => within)).toEqual([0.05, 0.1, 0.5]);
  expect(closestReading().within).toBe(0.05);
});

test('recalled pH agrees with the published copy of the same list where both have a row', () => {
  // FDA list 2003, quoted or read, against what was recalled of it
  const published = new Map(
    FOOD_PH.filter((row) => row.source === 'fda-ph-foods').map((row) => [row.food.toLowerCase(), row]),
  );
  const both = RECALLED_PH.filter((row) => published.has(row.food.toLowerCase()));
  expect(both.length).toBeGreaterThan(2);
  for (const row of both) {
    const read = published.get(row.food.toLowerCase());
    expect([row.food, row.pHLow, row.pHHigh]).toEqual([row.food, read?.pHLow, read?.pHHigh]);
  }
});

test('salt for sauerkraut: every line of the table, as a share of the cabbage', () => {
  const tbsp = SALT_MEASURES.find((row) => row.measure === 'tbsp' && row.obtained === 'read')?.gramsLow ?? 0;
  const shares = FERMENT_SALT.filter((row) => row.food === 'sauerkraut' && row.produceLb !== undefined).map((row) => {
    const grams = (row.saltTbsp ?? 0) * tbsp + (row.saltLb ?? 0) * 453.59237;
    return [row.obtained, Number((grams / ((row.produceLb ?? 1) * 453.59237)).toFixed(4))];
  });
  expect(shares).toEqual([
    ['read', 0.0238],
    ['read', 0.019],
    ['memory', 0.02],
  ]);
  const recalled = FERMENT_SALT.find((row) => row.use === 'share of the cabbage' && row.obtained === 'memory');
  expect([recalled?.percentLow, recalled?.percentHigh]).toEqual([2.25, 2.5]);
  // finished sauerkraut of the standard: acid as lactic
  expect(FERMENT_SALT.flatMap(({ lacticPercentAtLeast: least = 0 }) => (least > 0 ? [least] : []))).toEqual([1.5]);
});

test('a recipe is named once, by its own name and by its others', () => {
  const names = RECIPES.flatMap(({ recipe, names: others }) => [recipe, ...others]).map(nameKey);
  // `bread and butter pickles` and the name with hyphens are one key of one recipe
  const owners = new Map<string, Set<string>>();
  for (const { recipe, names: others } of RECIPES)
    for (const key of [recipe, ...others].map(nameKey)) owners.set(key, (owners.get(key) ?? new Set()).add(recipe));
  expect(names.length).toBeGreaterThan(RECIPES.length);
  expect([...owners].filter(([, recipes]) => recipes.size > 1)).toEqual([]);
});

test('the process that a recipe names is in the process tables', () => {
  for (const { recipe, process } of RECIPES) {
    if (process === undefined) continue;
    expect(rowsOf(process).length, recipe).toBeGreaterThan(0);
  }
});

test('a name that is in no table is our own mistake', () => {
  expect(() => pickleRule('nothing')).toThrow('no pickle rule');
  expect(() => limitRow('nothing')).toThrow('no limit');
  expect(() => acidCaution('nothing')).toThrow('no caution');
  expect(() => pHLimit('named-low-acid')).toThrow('no pH in the limit');
  expect(() => printed(limitRow('named-low-acid'), 'pH')).toThrow('no pH in the row');
});
