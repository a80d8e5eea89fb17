import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { foodRows, formName, formRows, nameOf } from '../../src/foods/tables';
import { acidOf } from '../../src/process/acid';
import { bandsOf } from '../../src/process/bands';
import { canningRuleRow } from '../../src/process/canningRules';
import { processCaution } from '../../src/process/cautions';
import { elevationRuleRow } from '../../src/process/elevationMinutes';
import { knowledgeOf, matchForm } from '../../src/process/food';
import { gaugePressureRow } from '../../src/process/gaugePressure';
import { holdingSolutionRow } from '../../src/process/holdingSolutions';
import { canningRules, gaugePressure, testedProcess } from '../../src/process/index';
import { loadFigureRow } from '../../src/process/loadFigures';
import { foodsOf } from '../../src/process/scope';
import {
  acidRow,
  acidRows,
  bandRow,
  formNameRow,
  formNameRows,
  nearFormRow,
  nearFormRows,
  notRecommendedRow,
  notRecommendedRows,
  type ProcessRow,
  processRecipeRow,
  processRecipeRows,
  processRow,
  processRows,
  recipes,
  rowsOf,
} from '../../src/process/tables';
import { parseQuantity } from '../../src/quantity/index';
import { exactIn } from '../../src/quantity/scale';
import { checkTables, dataFolder, expectFolder, knownSources, readTable, sourced } from '../helpers/tables';
import { indexOfRecipes } from '../recipes/processIndex';

const rows = {
  fruit: processRow(),
  'tomato-low-acid': processRow(),
  pickle: processRow(),
  jam: processRow(),
  acid: acidRow(),
  'elevation-bands': bandRow(),
  'form-names': formNameRow(),
  'near-forms': nearFormRow(),
  recipes: processRecipeRow(),
  'not-recommended': notRecommendedRow(),
  'canning-rules': canningRuleRow(),
  'elevation-minutes': elevationRuleRow(),
  'gauge-pressure': gaugePressureRow(),
  'load-figures': loadFigureRow(),
  'older-gauge-pressure': z.strictObject({
    id: z.string(),
    elevationFt: z.number(),
    dialPsi: z.number(),
    weightedPsi: z.number(),
    ...sourced,
  }),
  'anti-darkening': holdingSolutionRow(),
} as const;

const read = (name: string) => readTable('process', name);

checkTables('process', rows);

test('no table of the folder is left out, and each id is there once', () => {
  expectFolder('process', Object.keys(rows));
  for (const name of Object.keys(rows)) {
    const ids = read(name).rows.map(({ id }: { id: string }) => id);
    expect(new Set(ids).size, name).toBe(ids.length);
  }
  expect(new Set(processRows.map(({ id }) => id)).size).toBe(processRows.length);
});

test('every food and form is one of the pantry', () => {
  const foodIds = new Set(foodRows.map(({ id }) => id));
  const formIds = new Set(formRows.map(({ id }) => id));
  for (const { food } of processRows) expect(foodIds).toContain(food);
  for (const { form } of processRows) expect(formIds).toContain(form);
  for (const { foods, packFoods = {}, askedBy = [], excludes = [] } of processRecipeRows)
    for (const food of [...foods, ...Object.values(packFoods).flat(), ...askedBy, ...excludes])
      expect(foodIds).toContain(food);
  for (const { foods, forms = [], covers } of notRecommendedRows) {
    for (const food of foods) expect(foodIds).toContain(food);
    for (const form of forms) expect(formIds).toContain(form);
    expect(forms.length > 0).toBe(covers === 'these forms');
  }
  for (const { recipe, forms = [], products = [] } of formNameRows) {
    expect(rowsOf(recipe).length, recipe).toBeGreaterThan(0);
    for (const food of products) expect(foodIds).toContain(food);
    for (const form of forms) expect(formIds).toContain(form);
  }
});

test('a recipe is one food in one form, and its rows say so in their ids', () => {
  for (const [recipe, [first, ...others]] of recipes()) {
    for (const row of others) expect([row.food, row.form]).toEqual([first?.food, first?.form]);
    for (const { id, pack, jars, method, alternative } of recipes().get(recipe) ?? []) {
      expect(id).toBe([recipe, pack, ...jars, method, alternative].filter((part) => part).join('-'));
    }
  }
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
    const disagreeing = processRows.filter(({ copies }) => copies !== undefined);
    expect(disagreeing.length).toBeGreaterThanOrEqual(8);
    for (const row of disagreeing) {
      for (const copy of row.copies ?? []) {
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
      const prints = (row.copies ?? []).filter((copy) => copy.notServed === undefined);
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
      const food = knowledgeOf(row.food);
      if (foodsOf(row).includes(row.food)) {
        expect(matchForm(food, formName(row.form))).toMatchObject([{ food: row.food, form: row.form }]);
      }
      for (const id of row.cautions ?? []) expect(processCaution(id).text.length).toBeGreaterThan(10);
      for (const size of row.jars) {
        if (row.acid !== undefined) {
          expect(acidRows.some(({ acid, jar }) => acid === row.acid && (jar ?? size) === size)).toBe(true);
        }
        const [named] = foodsOf(row);
        const answer = testedProcess({
          food: nameOf(foodsOf(row).includes(row.food) ? row.food : (named as string)),
          form: formName(row.form),
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
    for (const row of processRows.filter(({ food }) =>
      ['green-bean', 'sweet-corn', 'meat', 'tuna', 'soup'].includes(food),
    )) {
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
    const salsas = processRows.filter(({ food, form }) => [food, form].some((name) => /salsa|taco-sauce/.test(name)));
    expect(salsas.length).toBeGreaterThanOrEqual(12);
    for (const row of salsas) {
      const acids = acidRows.filter(({ acid }) => acid === row.acid);
      expect(acids).toHaveLength(1);
      const [acid] = acids as [(typeof acids)[number]];
      expect([row.form, acid.bottledLemonJuice ?? acid.vinegar]).toEqual([row.form, expect.any(String)]);
      if (acid.bottledLemonJuice === undefined) continue;
      expect(acid.vinegar).toBeUndefined();
      expect(acid.noStandIn).toEqual(['vinegar']);
      expect(acidOf(acid).text).toContain('never vinegar in its place');
    }
  });

  test('where copies disagree the largest amount is served', () => {
    const disagreeing = acidRows.filter(({ copies }) => copies !== undefined);
    expect(disagreeing.map(({ id }) => id)).toEqual(['blueberry-pie-filling']);
    for (const row of disagreeing) {
      const tsp = (amount: string) => exactIn(parseQuantity(amount, 'volume'), 'tsp').toNumber();
      const amounts = (row.copies ?? []).map(({ bottledLemonJuice }) => tsp(bottledLemonJuice));
      expect(tsp(row.bottledLemonJuice as string)).toBe(Math.max(...amounts));
    }
  });

  test('an amount in thirds is said in thirds', () => {
    const [ketchup] = acidRows.filter(({ id }) => id === 'country-western-ketchup');
    expect(acidOf(ketchup as (typeof acidRows)[number]).text).toContain('2 2/3 cups');
  });
});

describe('foods', () => {
  test('every not-recommended row is refused when asked', () => {
    for (const row of notRecommendedRows) {
      for (const id of row.foods) {
        const { choices, notCanned } = knowledgeOf(id);
        const [own] = choices;
        const forms =
          row.covers === 'these forms'
            ? (row.forms ?? [])
            : row.covers === 'every form' && own !== undefined && (row.pack ?? row.jar) !== undefined
              ? [own.form]
              : [undefined, 'leather'];
        for (const form of forms) {
          const line = processRows.find((each) => each.food === id && each.form === (form ?? own?.form));
          const answer = testedProcess({
            food: nameOf(id),
            ...(form === undefined ? {} : { form: formName(form) }),
            pack: row.pack ?? (line === undefined ? 'hot' : (line.pack ?? 'not stated')),
            jar: row.jar ?? 'pint',
            method: line?.method ?? 'dial-gauge',
            elevation: '0 ft',
          });
          const reasons = notCanned.map(({ reason }) => reason);
          // a kind without rows of its own has none to refuse a pack or a jar of
          if (own === undefined && (row.pack ?? row.jar) !== undefined) expect(answer.tested).toBe(false);
          else expect(reasons, `${row.id}: ${id}, ${form}`).toContain(answer.tested ? 'tested' : answer.reason.text);
        }
      }
    }
  });
});

test('every rule of the canning table is listed', () => {
  const ids = (rows: readonly { id: string }[]) => rows.map(({ id }) => id);
  expect(canningRules().rules.map(({ id: rule }) => rule)).toEqual([
    ...ids(read('canning-rules').rows),
    ...ids(readTable('acid', 'pickle-rules').rows),
    ...ids(read('anti-darkening').rows),
  ]);
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

test('every caution has its own text and a source of the register', () => {
  const cautions = read('cautions') as { id: string; text: string; source?: string }[];
  expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
  for (const { source } of cautions) if (source !== undefined) expect(knownSources).toContain(source);
  expect(() => processCaution('no such caution')).toThrow();
});

test('a near form leads from known forms to forms that are tested', () => {
  const tested = new Set(processRows.map(({ form }) => form));
  for (const { asked, to } of nearFormRows) {
    for (const form of asked) expect(formName(form)).toBeTruthy();
    expect(tested).toContain(to);
  }
});

test('the recipes of a process are as data/recipes has them', () => {
  expect(indexOfRecipes()).toBe(readFileSync(new URL('recipes.json', dataFolder('process')), 'utf8'));
  for (const { process } of processRecipeRows) expect(rowsOf(process).length).toBeGreaterThan(0);
});

test('every process belongs to a printed recipe', () => {
  const ending = new Set(processRecipeRows.map(({ process }) => process));
  expect([...recipes().keys()].filter((process) => !ending.has(process))).toEqual([]);
});
