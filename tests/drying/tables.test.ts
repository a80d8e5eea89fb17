import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { DRIED_FOODS } from '../../src/drying/guide/foodNames';
import {
  dryingGuide,
  dryingStudy,
  freezeDryCollapse,
  glassTransition,
  moistureRatio,
  pretreatmentDip,
} from '../../src/drying/index';
import { source } from '../../src/sources/index';
import { sourced } from '../helpers/tables';

const ends = z.tuple([z.number(), z.number()]).refine(([low, high]) => low <= high, 'low to high');
const figure = z.union([z.number(), z.array(z.number()).min(2)]);
const figureOrText = z.union([figure, z.string()]);
const minutes = ends.nullable();

/** The columns of each table beside source, locator, obtained and notes. */
const TABLES: Record<string, z.ZodRawShape> = {
  guide: {
    food: z.string(),
    printed: z.string(),
    kind: z.enum(['fruit', 'vegetable']),
    forms: z.array(z.string()).min(1).optional(),
    thickness_in: ends.optional(),
    preparation: z.string().nullable(),
    steamBlanch_minutes: minutes,
    waterBlanch_minutes: minutes,
    syrupBlanch_minutes: z.number().nullable(),
    checkSkins_seconds: z.object({ sweet: z.number(), sour: z.number() }).optional(),
    sulfur_minutes: z.number().optional(),
    hours: ends.nullable(),
    drynessTest: z.string().nullable(),
  },
  settings: {
    item: z.string(),
    value: z.union([figureOrText, z.record(z.string(), z.number())]),
    unit: z.string(),
  },
  pretreatments: {
    name: z.string(),
    synonyms: z.array(z.string()),
    ingredients: z.array(z.strictObject({ name: z.string(), amount: ends, unit: z.enum(['tsp', 'tbsp', 'cup']) })),
    water: z.strictObject({ value: z.number(), unit: z.enum(['cup', 'quart', 'gallon']) }).nullable(),
    soak_minutes: minutes,
    simmer_minutes: z.number().optional(),
    fruit_lb: z.number().optional(),
    sulfite: z.boolean(),
  },
  yields: {
    food: z.string(),
    printed: z.string(),
    fresh_lb: z.number().optional(),
    dried_lb: ends.optional(),
    dried_pints: ends.optional(),
    ratio: ends.optional(),
    overallRatio: ends.optional(),
    freshMoisture_percent: z.number().optional(),
    endMoisture_percent: ends.optional(),
    afterRehydration_percent: ends.optional(),
  },
  leather: {
    item: z.string(),
    value: z.union([figureOrText, z.record(z.string(), z.number())]),
    unit: z.string(),
  },
  fat: {
    food: z.string(),
    synonyms: z.array(z.string()),
    fat_percent: z.number().positive().max(100),
  },
  'leather-hours': {
    where: z.enum(['dryer', 'oven']),
    thickness_in: z.number().positive().max(0.25),
    mean_in: z.number().positive().optional(),
    food: z.string().optional(),
    hours: z.tuple([z.number().nullable(), z.number()]),
  },
  pasteurizing: {
    method: z.string(),
    temperature_degF: z.number().nullable(),
    hours_min: z.number().optional(),
    minutes: z.number().optional(),
    maxDepth_in: z.number().optional(),
    maxTrays: z.number().optional(),
  },
  jerky: {
    id: z.string(),
    step: z.string(),
    temperature_degF: z.tuple([z.number(), z.number().nullable()]).nullable(),
    atLeast: z.strictObject({ value: z.number().positive(), unit: z.enum(['h', 'min']) }).optional(),
    thickest_in: z.number().positive().optional(),
    keeps: z.string().optional(),
    offered: z.boolean(),
  },
  'storage-months': {
    food: z.string(),
    printed: z.string(),
    kind: z.enum(['fruit', 'vegetable']),
    months_70degF: ends,
    months_60degF: ends.nullable(),
  },
  'storage-general': {
    item: z.string(),
    value: figureOrText,
    unit: z.string(),
    moisture_percent: ends.optional(),
  },
  oxygen: { item: z.string(), value: figureOrText, unit: z.string() },
  rehydration: {
    food: z.string(),
    printed: z.string(),
    water_cups_per_cup_dried: z.number().positive(),
    soak_hours_min: z.number().positive(),
  },
  'rehydration-general': { item: z.string(), value: figure, soak_hours: z.number().optional() },
  'glass-transition-sugars': { sugar: z.string(), Tg_degC: z.number(), k_GordonTaylor: z.number().nullable() },
  'glass-transition-fruit': {
    name: z.string(),
    synonyms: z.array(z.string()),
    printed: z.string(),
    Tgs_degC: z.number().nullable().optional(),
    k: z.number().nullable().optional(),
    TgPrime_degC: z.number().nullable().optional(),
    TmPrime_degC: z.number().optional(),
    unfrozenWater_g_per_g: z.number().optional(),
    Tg_degC: z.number().optional(),
    TgRise_degC: ends.optional(),
    uncertainty_degC: z.number().optional(),
  },
  'gordon-taylor': { item: z.string(), value: z.union([z.number(), z.string()]), unit: z.string().optional() },
  collapse: { name: z.string(), synonyms: z.array(z.string()), printed: z.string(), Tc_degC: ends },
  'freeze-drying': {
    food: z.string(),
    item: z.string().optional(),
    thickness_mm: z.number().positive().optional(),
    formula: z.string().optional(),
    hours_to_4_percent: z.number().optional(),
    hours_total: figure.optional(),
    hours_low: z.number().optional(),
    hours_high: z.number().optional(),
    degF_low: z.number().optional(),
    degF_high: z.number().optional(),
    frozenAt_degC: z.number().optional(),
    shelf_degC: figure.optional(),
    primaryPressure_Pa: z.number().optional(),
    secondaryPressure_Pa: ends.optional(),
    pressure_Pa: figure.optional(),
    exposureHumidity_percent: z.number().optional(),
    order_m2_per_s: z.number().optional(),
  },
  diffusivity: {
    name: z.string(),
    synonyms: z.array(z.string()),
    printed: z.string(),
    D_m2_per_s: ends.optional(),
    D_formula: z.string().optional(),
    D0_m2_per_s: ends.optional(),
    temperature_degC: figure.nullable().optional(),
    thickness_mm: figureOrText.nullable().optional(),
    airVelocity_m_per_s: figureOrText.optional(),
    Ea_kJ_per_mol: figure.optional(),
    Ea_kJ_per_kg: z.number().optional(),
    bestModel: z.string().optional(),
    method: z.string().optional(),
    relativeHumidity_percent: ends.optional(),
    timeSaving_percent: ends.optional(),
    bestQualityAt: z.string().optional(),
    osmoticFall_percent: ends.optional(),
  },
  'thin-layer': {
    food: z.string(),
    model: z.string(),
    formula: z.string(),
    a: z.number().optional(),
    b: z.number().optional(),
    c: z.number().optional(),
    k: z.number().optional(),
    n: z.number().optional(),
    SSE: z.number(),
    r: z.number(),
    RMSE: z.number(),
  },
  'kinetics-models': { model: z.string(), formula: z.string() },
};

const folder = new URL('../../data/drying/', import.meta.url);
type Row = Record<string, unknown> & { source: string };
const load = (name: string) =>
  JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8')) as { table: string; title: string; rows: Row[] };
const rowsOf = <T>(name: string): T[] => load(name).rows as unknown as T[];

describe('tables', () => {
  it('are all described here', () => {
    const files = readdirSync(folder).map((file) => file.replace('.json', ''));
    expect(files.filter((name) => name !== 'cautions').sort()).toEqual(Object.keys(TABLES).sort());
  });
  it.each(Object.keys(TABLES))('%s fits its schema, row by row', (name) => {
    const row = z.strictObject({
      ...TABLES[name],
      ...sourced,
      source: z.string().refine((id) => source(id) !== undefined),
    });
    const { table, title, rows } = load(name);
    expect(table).toBe(name);
    expect(title).not.toBe('');
    for (const entry of rows) expect(row.parse(entry)).toEqual(entry);
  });
  it('name only foods of the register, each once', () => {
    const names: string[] = DRIED_FOODS.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of ['guide', 'yields', 'storage-months', 'rehydration']) {
      for (const { food } of rowsOf<{ food: string }>(name)) expect(names).toContain(food);
    }
  });
});

describe('hours belong to a cut', () => {
  const hours = (food: string, form?: string) => {
    const guide = dryingGuide({ food, ...(form === undefined ? {} : { form }) });
    return [guide.hours.low.value, guide.hours.high.value, guide.hoursAreGeneral];
  };
  it('strawberry slices have their own, not those of whole berries', () => {
    expect(hours('strawberry', 'slices')).toEqual([7, 15, false]);
    expect(hours('strawberry', 'whole')).toEqual([24, 36, false]);
    // without a cut: of the first one, never two together
    expect(hours('strawberry')).toEqual([24, 36, false]);
    expect(dryingGuide({ food: 'strawberry' }).forms).toEqual(['whole']);
  });
  it('every row of a food names its cuts, so that no other cut gets its hours', () => {
    for (const { food, kind, forms } of rowsOf<{ food: string; kind: string; forms?: string[] }>('guide')) {
      if (food !== kind) expect(forms, food).toBeDefined();
    }
    for (const [food, form] of [
      ['blueberry', 'halves'],
      ['boysenberry', 'slices'],
      ['broccoli', 'slices'],
      ['garlic', 'slices'],
    ] as const) {
      expect(hours(food, form)[2], food).toBe(true);
    }
  });
});

describe('every row', () => {
  it('of the guide is printed by its food and cut, with its figures', () => {
    for (const row of rowsOf<{
      food: string;
      forms?: string[];
      hours: number[] | null;
      obtained: string;
      source: string;
    }>('guide')) {
      const { printed, hours } = dryingGuide({
        food: row.food,
        ...(row.forms ? { form: row.forms[0] as string } : {}),
      });
      const mine = printed.filter(
        (line) =>
          line.source === row.source && line.obtained === row.obtained && line.hours?.low.value === row.hours?.[0],
      );
      expect(mine.length, row.food).toBeGreaterThan(0);
      if (row.hours) {
        expect(hours.low.value).toBeLessThanOrEqual(row.hours[0] as number);
        expect(hours.high.value).toBeGreaterThanOrEqual(row.hours[1] as number);
      }
    }
  });
  it('of the yields has a ratio that its moistures allow', () => {
    // a dried pound keeps the solids of the fresh: more than 1.5 lb and less than 40 lb fresh in every table
    for (const { fresh_lb = 0, dried_lb = [1, 1], ratio } of rowsOf<{
      fresh_lb?: number;
      dried_lb?: number[];
      ratio?: number[];
    }>('yields')) {
      const [low = 0, high = 0] = ratio ?? [fresh_lb / (dried_lb[1] ?? 1), fresh_lb / (dried_lb[0] ?? 1)];
      expect(low).toBeGreaterThan(1.5);
      expect(high).toBeLessThan(40);
    }
  });
  it('of the dips, studies and collapse temperatures is found', () => {
    for (const { name, sulfite } of rowsOf<{ name: string; sulfite: boolean }>('pretreatments')) {
      const ids = pretreatmentDip({ treatment: name }).cautions.map(({ id }) => id);
      expect(ids.includes('sulfite-sensitive')).toBe(sulfite);
    }
    for (const { name, printed } of rowsOf<{ name: string; printed: string }>('diffusivity')) {
      expect(dryingStudy({ food: name }).basis[0]?.of).toContain(printed);
    }
    for (const { name } of rowsOf<{ name: string }>('collapse')) {
      expect(freezeDryCollapse({ food: name, iceTemperature: '-60.1 degC' }).collapses).toBe('no');
    }
  });
  it('of the glass transitions with a k is served, and the rejected fructose is not', () => {
    const served = [
      ...rowsOf<{ sugar: string; Tg_degC: number; k_GordonTaylor: number | null }>('glass-transition-sugars')
        .filter((row) => row.k_GordonTaylor !== null)
        .map((row) => ({ food: row.sugar, Tg: row.Tg_degC, k: row.k_GordonTaylor as number })),
      ...rowsOf<{ name: string; Tgs_degC?: number | null; k?: number | null }>('glass-transition-fruit').flatMap(
        (row) =>
          typeof row.Tgs_degC === 'number' && typeof row.k === 'number'
            ? [{ food: row.name, Tg: row.Tgs_degC, k: row.k }]
            : [],
      ),
    ];
    expect(served).toHaveLength(12);
    for (const { food, Tg, k } of served) {
      expect(glassTransition({ food, moisture: 0 }).temperature.value).toBe(Tg);
      const expected = (0.9 * Tg - k * 0.1 * 135) / (0.9 + k * 0.1);
      expect(glassTransition({ food, moisture: 0.1 }).temperature.value).toBeCloseTo(expected, 9);
    }
    expect(glassTransition({ food: 'fructose', moisture: 0 }).temperature.value).toBeLessThan(20);
    // the recalled k follow their correlation k = 0.0293 Tg + 3.61 within 0.05
    for (const { Tg, k, food } of served.slice(0, 9))
      expect(Math.abs(k - (0.0293 * Tg + 3.61)), food).toBeLessThan(0.05);
  });
  it('of the other glass transitions lies between water and the printed extremes', () => {
    for (const row of rowsOf<{ Tg_degC: number }>('glass-transition-sugars')) {
      expect(row.Tg_degC).toBeGreaterThan(-20);
      expect(row.Tg_degC).toBeLessThan(110);
    }
  });
  it('of the thin-layer constants starts at a moisture ratio of about one and falls', () => {
    const model = {
      Newton: 'lewis',
      Page: 'page',
      Henderson: 'henderson-pabis',
      Logarithmic: 'logarithmic',
      Midilli: 'midilli',
      Wang: 'wang-singh',
    } as const;
    for (const row of rowsOf<{ model: string; a?: number; b?: number; c?: number; k?: number; n?: number }>(
      'thin-layer',
    )) {
      const name = model[row.model.split(' ')[0] as keyof typeof model];
      const { a, b, c, k, n } = row;
      const given = Object.fromEntries(Object.entries({ a, b, c, k, n }).filter(([, value]) => value !== undefined));
      const at = (minute: number) =>
        moistureRatio({ model: name, time: { value: minute, unit: 'min' }, ...given }).moistureRatio;
      expect(at(0)).toBeGreaterThan(0.95);
      expect(at(0)).toBeLessThan(1.05);
      expect(at(60)).toBeLessThan(at(30));
    }
  });
  it('of the unsafe jerky direction is marked', () => {
    const kept = rowsOf<{ id: string; offered: boolean }>('jerky').filter(({ offered }) => !offered);
    expect(kept.map(({ id }) => id)).toEqual(['preheat', 'unsafe-1997']);
  });
});
