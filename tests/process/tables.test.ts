import { readdirSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { nameKey } from '../../src/common/names';
import { acidOf } from '../../src/process/acid';
import { bandsOf } from '../../src/process/bands';
import { processCaution } from '../../src/process/cautions';
import { knowledgeOf, matchForm, readFood } from '../../src/process/food';
import { canningRules, gaugePressure, processFoods, testedProcess } from '../../src/process/index';
import { foodsOf } from '../../src/process/scope';
import { acidRows, foods, notRecommendedRows, type ProcessRow, processRows } from '../../src/process/tables';
import { parseQuantity } from '../../src/quantity/index';
import { toDecimalIn } from '../../src/quantity/scale';
import { checkTables, dataFolder, knownSources, readTable, sourced } from '../helpers/tables';

const jar = z.enum(['half-pint', 'pint', 'quart', 'half-gallon']);
const figure = z.union([z.number().positive(), z.array(z.number().positive()).min(3).max(4)]);
const process = z.strictObject({
  food: z.string(),
  form: z.string(),
  pack: z.enum(['hot', 'raw']).nullable(),
  jars: z.array(jar).min(1),
  method: z.enum(['boiling-water', 'dial-gauge', 'weighted-gauge']),
  alternative: z.enum(['a', 'b', 'c']).optional(),
  jarState: z.string().optional(),
  minutes: figure,
  psi: z.array(z.number().min(5).max(15).nullable()).optional(),
  headspace: z.number().min(0.125).max(1.5),
  acid: z.string().optional(),
  pasteurize: z.literal(true).optional(),
  refused: z.record(z.string(), z.enum(['not-recommended', 'recalled'])).optional(),
  printed: z
    .array(
      z.strictObject({
        minutes: figure.optional(),
        psi: z.array(z.number()).optional(),
        source: z.string().nullable(),
        notServed: z.enum(['older edition', 'copying fault']).optional(),
      }),
    )
    .min(2)
    .optional(),
  leastHeatUp: z.number().positive().optional(),
  cautions: z.array(z.string()).optional(),
  ...sourced,
});
const rows = {
  fruit: process,
  'tomato-low-acid': process,
  pickle: process,
  jam: process,
  acid: z.strictObject({
    id: z.string(),
    jar: jar.optional(),
    where: z.enum(['each jar', 'recipe']),
    choose: z.enum(['one', 'all']),
    bottledLemonJuice: z.string().optional(),
    citricAcid: z.string().optional(),
    vinegar: z.string().optional(),
    per: z.string().optional(),
    standIn: z.array(z.enum(['bottled lemon juice', 'bottled lime juice'])).optional(),
    never: z.array(z.enum(['vinegar'])).optional(),
    printed: z
      .array(z.strictObject({ bottledLemonJuice: z.string(), source: z.string() }))
      .min(2)
      .optional(),
    also: z.string().optional(),
    ...sourced,
  }),
  'elevation-bands': z.strictObject({
    method: z.enum(['boiling-water', 'dial-gauge', 'weighted-gauge']),
    upToFt: z.array(z.number().nullable()),
    thinAirFt: z.number().optional(),
    ...sourced,
  }),
  scopes: z.strictObject({
    food: z.string(),
    form: z.string().optional(),
    pack: z.enum(['hot', 'raw']).optional(),
    foods: z.array(z.string()),
    madeOf: z.array(z.string()).min(1).optional(),
    excludes: z.array(z.string()).min(1).optional(),
    cautions: z.array(z.string()).min(1).optional(),
    ...sourced,
  }),
  'not-recommended': z.strictObject({
    foods: z.array(z.string()).min(1),
    forms: z.array(z.string()).min(1),
    pack: z.enum(['hot', 'raw']).optional(),
    jar: jar.optional(),
    quality: z.literal(true).optional(),
    reason: z.string(),
    instead: z.string(),
    keeps: z.array(z.enum(['freeze', 'dry', 'refrigerate', 'ferment', 'eat fresh'])).min(1),
    cans: z.literal(true).optional(),
    ...sourced,
  }),
  'canning-rules': z.strictObject({
    topic: z.string(),
    rule: z.string(),
    text: z.string(),
    low: z.number().optional(),
    high: z.number().optional(),
    unit: z.string().optional(),
    minutes: z.number().optional(),
    older: z.number().optional(),
    ...sourced,
  }),
  'elevation-minutes': z.strictObject({
    rule: z.enum(['bands', 'per-1000-ft', 'sterilizing', 'before-tasting', 'ten-percent']),
    upToFt: z.number().optional(),
    add: z.number().optional(),
    addOver20: z.number().optional(),
    base: z.number().optional(),
    percent: z.number().optional(),
    stepFt: z.number().optional(),
    fromFt: z.number().optional(),
    ...sourced,
  }),
  'gauge-pressure': z.strictObject({
    method: z.enum(['dial-gauge', 'weighted-gauge']),
    upToFt: z.number().nullable(),
    lowAcidPsi: z.number(),
    acidPsi: z.number().nullable(),
    ...sourced,
  }),
  'older-gauge-pressure': z.strictObject({
    elevationFt: z.number(),
    dialPsi: z.number(),
    weightedPsi: z.number(),
    ...sourced,
  }),
  'anti-darkening': z.strictObject({
    solution: z.string(),
    amount: z.number().optional(),
    unit: z.string().optional(),
    water: z.string().optional(),
    grams: z.number().optional(),
    ...sourced,
  }),
} as const;

const read = (name: string) => readTable('process', name);

checkTables('process', rows);

test('no table of the folder is left out', () => {
  const files = readdirSync(dataFolder('process')).map((file) => file.replace('.json', ''));
  expect(files.sort()).toEqual([...Object.keys(rows), 'cautions', 'foods'].sort());
});

const cells = (row: ProcessRow) => row.psi ?? (row.minutes as number[]);

describe('process rows', () => {
  test('each has its bands, and figures that never fall as elevation rises', () => {
    for (const row of processRows) {
      const { upToFt } = bandsOf(row);
      expect(upToFt).toHaveLength(cells(row).length);
      const figures = cells(row).filter((value) => value !== null);
      expect(figures).toEqual([...figures].sort((a, b) => a - b));
      expect(Array.isArray(row.minutes)).toBe(row.method === 'boiling-water');
      expect(row.psi === undefined).toBe(row.method === 'boiling-water');
    }
  });

  test('a refused cell holds no pressure, and an empty cell is refused', () => {
    for (const row of processRows) {
      for (const [band, value] of cells(row).entries()) {
        if (value === null) expect(row.refused?.[String(band)]).toBeDefined();
        else if (row.psi !== undefined) expect(row.refused?.[String(band)]).toBeUndefined();
      }
    }
  });

  test('where copies disagree, no copy prints more than is served', () => {
    const disagreeing = processRows.filter(({ printed }) => printed !== undefined);
    expect(disagreeing.length).toBeGreaterThanOrEqual(8);
    for (const row of disagreeing) {
      for (const copy of row.printed ?? []) {
        if (copy.notServed !== undefined) continue;
        const most = (figures: number | readonly number[] | undefined) => [figures ?? 0].flat();
        for (const [band, minutes] of most(copy.minutes).entries()) {
          expect([row.minutes].flat()[band]).toBeGreaterThanOrEqual(minutes);
        }
        for (const [band, psi] of most(copy.psi).entries()) {
          const served = row.psi?.[band];
          if (typeof served === 'number') expect(served).toBeGreaterThanOrEqual(psi);
        }
        if (copy.source !== null) expect(knownSources).toContain(copy.source);
      }
      // the figure served is one that a copy prints
      const prints = (row.printed ?? []).filter((copy) => copy.notServed === undefined);
      expect(
        prints.some(({ minutes, psi }) => isDeepStrictEqual(psi ?? minutes, psi === undefined ? row.minutes : row.psi)),
      ).toBe(true);
    }
  });

  test('each says what was looked at, and none is read from memory', () => {
    for (const row of [...processRows, ...acidRows]) {
      if (row.source === 'from-memory') expect(row.obtained).toBe('memory');
      if (row.obtained === 'read')
        expect([row, row.seen]).toEqual([row, expect.stringMatching(/^(original|reproduction)$/)]);
    }
  });

  test('several rows for one question differ only as printed lines do', () => {
    const questions = new Map<string, ProcessRow[]>();
    for (const row of processRows) {
      for (const size of row.jars) {
        const key = [row.food, row.form, row.pack, size, row.method].join('|');
        questions.set(key, [...(questions.get(key) ?? []), row]);
      }
    }
    for (const same of questions.values()) {
      const lines = same.map(({ alternative }) => alternative);
      if (same.length > 1) expect(lines).toEqual([...new Set(lines)].sort());
      if (same.length > 1) expect(lines).not.toContain(undefined);
    }
  });

  test('every food with rows is known, every acid and caution exists, and each row is reached by its own names', () => {
    for (const row of processRows) {
      const food = knowledgeOf(foods.find(({ name }) => name === row.food) as (typeof foods)[number]);
      if (foodsOf(row).includes(row.food)) {
        expect(matchForm(food, row.form)).toMatchObject([{ food: row.food, form: row.form }]);
      }
      for (const id of row.cautions ?? []) expect(processCaution(id).text.length).toBeGreaterThan(10);
      for (const size of row.jars) {
        if (row.acid !== undefined) {
          expect(acidRows.some(({ id, jar }) => id === row.acid && (jar ?? size) === size)).toBe(true);
        }
        const [named] = foodsOf(row);
        const answer = testedProcess({
          food: foodsOf(row).includes(row.food) ? row.food : (named as string),
          form: row.form,
          pack: row.pack ?? 'not stated',
          jar: size,
          method: row.method,
          elevation: '900 ft',
          ...(row.alternative === undefined ? {} : { alternative: row.alternative as 'a' }),
        });
        const refused = row.obtained === 'memory' || row.refused?.['0'] !== undefined;
        expect(answer.tested).toBe(!refused);
        if (answer.tested) expect(answer.headspace).toEqual({ value: row.headspace, unit: 'in' });
      }
    }
  });

  test('low-acid pressure is never under 10 psi, and is the one of the gauge table', () => {
    for (const row of processRows.filter(({ food }) => ['snap bean', 'corn', 'meat', 'tuna', 'soup'].includes(food))) {
      for (const [band, psi] of (row.psi ?? []).entries()) {
        const upTo = bandsOf(row).upToFt[band] ?? 9000;
        const answer = gaugePressure({
          method: row.method as 'dial-gauge',
          acidity: 'low-acid',
          elevation: { value: upTo, unit: 'ft' },
        });
        expect(answer).toMatchObject({ pressure: { value: psi, unit: 'psi' } });
      }
    }
  });
});

describe('acid rows', () => {
  test('every amount is a volume, said in the text', () => {
    for (const row of acidRows) {
      const acid = acidOf(row);
      for (const field of ['bottledLemonJuice', 'citricAcid', 'vinegar'] as const) {
        const amount = row[field];
        if (amount !== undefined) expect(acid[field]).toEqual(parseQuantity(amount, 'volume'));
      }
      expect(acid.required).toBe(true);
      expect(acid.text.length).toBeGreaterThan(10);
    }
  });

  test('a salsa has its own acid; where that is lemon or lime juice, vinegar is no choice', () => {
    const salsas = processRows.filter(({ food, form }) => [food, form].some((name) => /salsa|taco sauce/.test(name)));
    expect(salsas.length).toBeGreaterThanOrEqual(12);
    for (const row of salsas) {
      const acids = acidRows.filter(({ id }) => id === row.acid);
      expect(acids).toHaveLength(1);
      const [acid] = acids as [(typeof acids)[number]];
      expect([row.form, acid.bottledLemonJuice ?? acid.vinegar]).toEqual([row.form, expect.any(String)]);
      if (acid.bottledLemonJuice === undefined) continue;
      expect(acid.vinegar).toBeUndefined();
      expect(acid.never).toEqual(['vinegar']);
      expect(acidOf(acid).text).toContain('never vinegar in its place');
    }
  });

  test('where copies disagree the largest amount is served', () => {
    const disagreeing = acidRows.filter(({ printed }) => printed !== undefined);
    expect(disagreeing.map(({ id }) => id)).toEqual(['blueberry pie filling']);
    for (const row of disagreeing) {
      const tsp = (amount: string) => toDecimalIn(parseQuantity(amount, 'volume'), 'tsp').toNumber();
      const amounts = (row.printed ?? []).map(({ bottledLemonJuice }) => tsp(bottledLemonJuice));
      expect(tsp(row.bottledLemonJuice as string)).toBe(Math.max(...amounts));
    }
  });

  test('an amount in thirds is said in thirds', () => {
    const [ketchup] = acidRows.filter(({ id }) => id === 'country western ketchup');
    expect(acidOf(ketchup as (typeof acidRows)[number]).text).toContain('2 2/3 cups');
  });
});

describe('foods', () => {
  test('names are there once, synonyms resolve to their food or to a listed choice', () => {
    const names = foods.map(({ name }) => nameKey(name));
    expect(new Set(names).size).toBe(names.length);
    for (const entry of foods) {
      expect(readFood(entry.name).food.entry).toBe(entry);
      for (const synonym of entry.synonyms ?? []) {
        const sharing = foods.filter((other) =>
          [other.name, ...(other.synonyms ?? [])].some((name) => nameKey(name) === nameKey(synonym)),
        );
        if (sharing.length === 1) expect(readFood(synonym).food.entry).toBe(entry);
        else if (!sharing.some((other) => nameKey(other.name) === nameKey(synonym))) {
          expect(() => readFood(synonym)).toThrow(/could be/);
        }
      }
    }
  });

  test('what a food is of exists; its forms have rows', () => {
    for (const entry of foods) {
      for (const name of entry.of ?? []) expect(foods.some((other) => other.name === name)).toBe(true);
      for (const form of Object.keys(entry.forms ?? {})) {
        expect(processRows.some((row) => row.food === entry.name && row.form === form)).toBe(true);
      }
    }
    expect(processFoods().length).toBe(foods.length);
  });

  test('every not-recommended row is refused when asked', () => {
    for (const row of notRecommendedRows) {
      for (const food of row.foods) {
        const entry = foods.find(({ name }) => name === food);
        expect(entry).toBeDefined();
        const [first] = row.forms;
        const form = first === 'any' ? undefined : first === 'plain' ? 'nowhere tested' : first;
        const choices = knowledgeOf(entry as (typeof foods)[number]).choices;
        const line = processRows.find((r) => r.food === food && r.form === (form ?? choices[0]?.form));
        const answer = testedProcess({
          food,
          ...(form === undefined && choices.length > 1 ? { form: choices[0]?.form } : { form }),
          pack: row.pack ?? (line === undefined ? 'hot' : (line.pack ?? 'not stated')),
          jar: row.jar ?? 'pint',
          method: line?.method ?? 'dial-gauge',
          elevation: '0 ft',
        });
        const reasons = notRecommendedRows.filter(({ foods }) => foods.includes(food)).map(({ reason }) => reason);
        expect(reasons).toContain(answer.tested ? 'tested' : answer.reason);
      }
    }
  });
});

test('every rule of the canning table is listed', () => {
  expect(canningRules().rules.map(({ rule }) => rule)).toEqual(
    read('canning-rules').rows.map(({ rule }: { rule: string }) => rule),
  );
});

test('the older half-pound series of gauge pressures is never above the printed bands', () => {
  for (const { elevationFt, dialPsi, weightedPsi } of read('older-gauge-pressure').rows) {
    const elevation = { value: elevationFt, unit: 'ft' } as const;
    const dial = gaugePressure({ method: 'dial-gauge', acidity: 'low-acid', elevation });
    if ('pressure' in dial) expect(dial.pressure.value).toBeGreaterThanOrEqual(dialPsi);
    else expect(elevationFt).toBeGreaterThan(8000);
    const weighted = gaugePressure({ method: 'weighted-gauge', acidity: 'low-acid', elevation });
    // the older series went to the 15 lb weight at 1,000 ft itself, the printed tables above it
    if ('pressure' in weighted && elevationFt !== 1000)
      expect(weighted.pressure.value).toBeGreaterThanOrEqual(weightedPsi);
  }
});

test('secondary charts above 8,000 ft are in the table and never served', () => {
  const secondary = read('gauge-pressure').rows.filter(({ obtained }: { obtained: string }) => obtained !== 'read');
  expect(secondary).toHaveLength(1);
  expect(gaugePressure({ method: 'dial-gauge', acidity: 'low-acid', elevation: '8001 ft' })).toMatchObject({
    tested: false,
  });
});

test('every caution has a text of its own and a source of the register', () => {
  const cautions = read('cautions') as { id: string; text: string; source?: string }[];
  expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
  for (const { source } of cautions) if (source !== undefined) expect(knownSources).toContain(source);
  expect(() => processCaution('no such caution')).toThrow();
});
