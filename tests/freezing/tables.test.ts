import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { foodRows, formRows } from '../../src/foods/tables';
import { propertiesFromWater } from '../../src/freezing/index';
import {
  COMPONENTS,
  CONSTANTS,
  CORRELATIONS,
  correlation,
  freezingCaution,
  rule,
  SHAPES,
  THERMAL_TEXTBOOK,
} from '../../src/freezing/tables';
import { sourced } from '../helpers/tables';

const positive = z.number().positive();
const percent = z.number().min(0).max(100);
const ends = z.tuple([positive, positive]).refine(([low, high]) => low <= high);
const point = z.number().min(-5).max(0);
const heats = { specificHeatAbove: positive, specificHeatBelow: positive, latentHeat: positive.max(335) };
const ids = z.array(z.enum(formRows.map(({ id }) => id))).min(1);
const food = z.enum(foodRows.map(({ id }) => id));
/** The food by its id, with the words of the page. */
const named = { food, printed: z.string().min(1) };
const pack = z.strictObject({
  foods: z.array(food).min(1),
  pack: z.enum(['syrup', 'sugar', 'dry', 'puree', 'unsweetened', 'water', 'juice', 'sauce']),
  syrupPercent: ends.optional(),
  sugarCups: ends.optional(),
  perCups: positive.optional(),
  quartLb: positive.optional(),
  partsFruitToSugar: positive.optional(),
  lemonJuiceTspPerQuart: positive.optional(),
  ascorbicTsp: positive.optional(),
  ascorbicPerQuartOf: z.enum(['syrup', 'fruit', 'water']).optional(),
  ascorbicInTbspWater: positive.optional(),
  steamInsteadMinutes: ends.optional(),
  preheatMinutes: ends.optional(),
  preheatIn: z.string().optional(),
  ...sourced,
});
const blanching = z.strictObject({
  ...named,
  forms: ids.optional(),
  waterMinutes: ends.nullable(),
  steamMinutes: ends.nullable(),
  coolingTimes: z.literal(2).optional(),
  leafy: z.literal(true).optional(),
  whenNamed: z.literal(true).optional(),
  ...sourced,
});

const TABLES: Record<string, { rows: number; row: z.ZodType }> = {
  rules: {
    rows: 19,
    row: z.strictObject({
      rule: z.string(),
      about: z.string(),
      low: z.number(),
      high: z.number(),
      unit: z.string(),
      ...sourced,
    }),
  },
  headspace: {
    rows: 12,
    row: z.strictObject({
      pack: z.enum(['liquid', 'dry', 'juice']),
      opening: z.enum(['wide', 'narrow']),
      size: z.enum(['pint', 'quart']),
      inches: positive.max(1.5),
      ...sourced,
    }),
  },
  'fruit-packs': { rows: 36, row: pack },
  'fruit-packs-recalled': { rows: 14, row: pack.refine((row) => row.obtained === 'memory') },
  blanching: { rows: 40, row: blanching },
  'blanching-recalled': { rows: 14, row: blanching.refine((row) => row.obtained === 'memory') },
  'before-freezing': {
    rows: 9,
    row: z.strictObject({
      ...named,
      forms: ids.optional(),
      treatment: z.enum(['cook', 'raw']),
      minutes: ends.optional(),
      size: z.string().optional(),
      ...sourced,
    }),
  },
  'blanching-water': {
    rows: 7,
    row: z.strictObject({
      ...named,
      forms: ids.optional(),
      amount: z.string().nullable(),
      waterQuarts: positive.nullable(),
      waterMinutes: ends,
      ...sourced,
    }),
  },
  'thermal-vegetables': {
    rows: 19,
    row: z
      .strictObject({
        ...named,
        initialFreezing: point,
        water: percent,
        protein: percent,
        fat: percent,
        carbohydrate: percent,
        fibre: percent,
        ash: percent,
        ...heats,
        ...sourced,
      })
      // fibre is part of the carbohydrate: the other parts make up the whole
      .refine((row) => Math.abs(row.water + row.protein + row.fat + row.carbohydrate + row.ash - 100) < 0.7),
  },
  'thermal-us-units': {
    rows: 18,
    row: z.strictObject({
      ...named,
      initialFreezingF: z.number().min(25).max(32),
      specificHeatAboveBtu: positive,
      specificHeatBelowBtu: positive,
      latentHeatBtu: positive.max(144),
      ...sourced,
    }),
  },
  'thermal-textbook': {
    rows: 15,
    row: z.strictObject({ ...named, initialFreezing: point, water: percent, ...heats, ...sourced }),
  },
  'freezing-points-recalled': {
    rows: 38,
    row: z.strictObject({ ...named, initialFreezing: point, ...sourced }),
  },
  'component-polynomials': {
    rows: 22,
    row: z.strictObject({
      component: z.string(),
      property: z.enum(['density', 'specificHeat', 'conductivity']),
      unit: z.string(),
      a0: positive,
      a1: z.number(),
      a2: z.number(),
      ...sourced,
    }),
  },
  correlations: {
    rows: 16,
    row: z.strictObject({ id: z.string(), formula: z.string(), units: z.string(), ...sourced }),
  },
  'plank-shapes': {
    rows: 3,
    row: z.strictObject({
      shape: z.enum(['slab', 'cylinder', 'sphere']),
      P: positive,
      R: positive,
      length: z.string(),
      ...sourced,
    }),
  },
  constants: { rows: 8, row: z.strictObject({ quantity: z.string(), value: positive, unit: z.string(), ...sourced }) },
};

describe('tables of the module', () => {
  test.each(Object.entries(TABLES))('%s fits its schema, row by row', (name, { rows, row }) => {
    const table = JSON.parse(readFileSync(new URL(`../../data/freezing/${name}.json`, import.meta.url), 'utf8'));
    expect(table.rows).toHaveLength(rows);
    for (const entry of table.rows) expect(row.safeParse(entry).error?.issues, JSON.stringify(entry)).toBeUndefined();
  });
});

test('every shape: R is a quarter of P, since slab, cylinder and sphere share the ratio', () => {
  for (const { P, R } of SHAPES) expect(R).toBeCloseTo(P / 4, 12);
});

test('the constants of the sources agree with the equations that use them', () => {
  const value = (source: string, words: string) =>
    CONSTANTS.find((row) => row.source === source && row.quantity.includes(words))?.value ?? 0;
  expect(value('earle', 'fusion')).toBe(propertiesFromWater({ water: 1 }).latentHeat.earle);
  expect(value('earle', 'liquid water')).toBe(propertiesFromWater({ water: 1 }).specificHeatAbove.earle);
  expect(value('ashrae-r-ch9', 'fusion')).toBe(propertiesFromWater({ water: 1 }).latentHeat.siebel);
  const ice = COMPONENTS.find((row) => row.component === 'ice' && row.property === 'density');
  expect(value('choi-okos-1986', 'density of ice')).toBe(ice?.a0);
  // the 9 % by which freezing water grows, from the same polynomials at 0 degC
  const water = COMPONENTS.find((row) => row.component === 'water' && row.property === 'density');
  expect((100 * ((water?.a0 ?? 0) - (ice?.a0 ?? 1))) / (ice?.a0 ?? 1)).toBeCloseTo(
    value('choi-okos-1986', 'volume increase'),
    0,
  );
  for (const [source, heat] of [
    ['singh-heldman', 333.2],
    ['chen-1985', 333.6],
  ] as const) {
    expect(value(source, 'fusion')).toBe(heat);
  }
  expect(value('earle', 'specific heat of ice')).toBe(2.05);
});

test('the textbook prints latent heats near 335 x water, but for fish (an oddity of the source)', () => {
  for (const row of THERMAL_TEXTBOOK) {
    const off = Math.abs(row.latentHeat - 3.35 * row.water);
    if (row.food === 'fish') expect(off).toBeGreaterThan(40);
    else expect(off, row.food).toBeLessThan(10);
  }
});

test('every formula of the table is named once', () => {
  expect(new Set(CORRELATIONS.map(({ id }) => id)).size).toBe(16);
});

test('a name that is in no table is our own mistake', () => {
  expect(() => rule('nothing')).toThrow('no freezing rule');
  expect(() => correlation('nothing')).toThrow('no correlation');
  expect(() => freezingCaution('nothing')).toThrow('no caution');
});
