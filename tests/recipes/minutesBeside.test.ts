/** Process minutes never stand in an answer without their recipe, its acid and its batch. */
import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/StillroomError';
import { foodRows, formName } from '../../src/foods/tables';
import { knowledgeOf } from '../../src/process/food';
import { loadTimeline } from '../../src/process/loadTimeline';
import { processesFor } from '../../src/process/processesFor';
import { processRecipeRows, processRows } from '../../src/process/tables';
import { testedProcess } from '../../src/process/testedProcess';
import { ownProcess } from '../../src/recipes/ownProcess';
import { recipe } from '../../src/recipes/recipe';
import { RECIPES } from '../../src/recipes/rows/rows';
import { waysToKeep } from '../../src/recipes/waysToKeep';

type Data = Readonly<Record<string, unknown>>;
const METHODS = ['boiling-water', 'dial-gauge', 'weighted-gauge'] as const;

/** The foods of the tables' processes, and one that they refuse. */
const FOODS = foodRows.filter(({ id, name }) => knowledgeOf(id).choices.length > 0 || name === 'pumpkin');

/** The recipes that print acid which is never left out; and the processes whose rows ask for acid. */
const withAcid = new Set(
  RECIPES.filter(({ ingredients }) => ingredients.some(({ role, keep }) => role === 'acid' && keep === true)).map(
    ({ id }) => id,
  ),
);
const acidic = new Set(processRows.filter(({ acid }) => acid !== undefined).map(({ recipe: process }) => process));

/** What is missing beside minutes that are given with the recipes that end in them. */
function missingOfRecipes({ recipes, acid, acidByJar, acidToAdd }: Data): string[] {
  const named = recipes as readonly Data[];
  const known = named.filter(({ recipe: id }) => processRecipeRows.some((row) => row.id === id));
  const ids = new Set(named.map(({ recipe: id }) => id));
  const asksAcid = processRecipeRows.some(({ id, process }) => ids.has(id) && acidic.has(process));
  return [
    ...(named.length === 0 || known.length < named.length ? ['the recipe'] : []),
    ...(named.every(({ scale }) => typeof scale === 'string' && scale !== '') ? [] : ['the batch']),
    ...(named.every((each) => Array.isArray(each.acids)) ? [] : ['the acid of the recipe']),
    ...(named.every((each) => withAcid.has(String(each.recipe)) === (each.acids as unknown[])?.length > 0)
      ? []
      : ['the acid of the recipe, or that it needs none']),
    ...(asksAcid && (acid ?? acidByJar ?? acidToAdd) === undefined ? ['the acid of the process'] : []),
  ];
}

/** What is missing beside minutes of a way. */
function missingOfWay({ recipe: id, scale, mustKeep, needs }: Data): string[] {
  const kept = (needs as readonly Data[]).filter(({ neverLess }) => neverLess === true);
  return [
    ...(RECIPES.some((row) => row.id === id) ? [] : ['the recipe']),
    ...(typeof scale === 'string' && scale !== '' && Array.isArray(mustKeep) ? [] : ['the batch']),
    ...(withAcid.has(String(id)) && kept.length === 0 ? ['the acid of the recipe'] : []),
  ];
}

/** Whatever holds process minutes in an answer, with the nearest thing around it that names a recipe or a book. */
function* minutesIn(value: unknown, beside: Data | undefined, path: string): Generator<[string, Data | undefined]> {
  if (typeof value !== 'object' || value === null) return;
  if (Array.isArray(value)) {
    for (const [index, each] of value.entries()) yield* minutesIn(each, beside, `${path}[${index}]`);
    return;
  }
  const data = value as Data;
  const says = Array.isArray(data.recipes) || Array.isArray(data.needs) || typeof data.citation === 'string';
  const nearest = says ? data : beside;
  if (typeof data.minutes === 'number') yield [path, nearest];
  for (const [key, each] of Object.entries(data)) yield* minutesIn(each, nearest, path === '' ? key : `${path}.${key}`);
}

/** Every place of an answer where minutes lack what belongs to them; `count` counts the places. */
function lacks(answer: unknown, name: string, count: { n: number }): string[] {
  return [...minutesIn(answer, undefined, '')].flatMap(([path, beside]) => {
    count.n += 1;
    if (beside === undefined) return [`${name} ${path}: the recipe`];
    if (Array.isArray(beside.recipes)) return missingOfRecipes(beside).map((what) => `${name} ${path}: ${what}`);
    if (Array.isArray(beside.needs)) return missingOfWay(beside).map((what) => `${name} ${path}: ${what}`);
    return [];
  });
}

function asked<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof StillroomError) return undefined;
    throw error;
  }
}

describe('the recipe, its acid and its batch stand beside the minutes', () => {
  test('of testedProcess, served and refused, for each food in each form', () => {
    const count = { n: 0 };
    const wrong = FOODS.flatMap(({ id, name }) => {
      const forms = [...new Set(knowledgeOf(id).choices.map(({ form }) => formName(form))), 'topping'];
      return forms.flatMap((form) =>
        METHODS.flatMap((method) => {
          const place = { food: name, form, method, jar: 'pint', elevation: '2000 ft' } as const;
          const found = (['hot', 'raw', undefined] as const).map((pack) =>
            asked(() => testedProcess(pack === undefined ? place : { ...place, pack })),
          );
          return found.flatMap((answer) => lacks(answer, `${name} ${form} ${method}`, count));
        }),
      );
    });
    expect([...new Set(wrong)].slice(0, 10)).toEqual([]);
    expect(count.n).toBeGreaterThan(2000);
  });

  test('of testedProcess by the recipe', () => {
    const count = { n: 0 };
    const wrong = processRecipeRows.flatMap(({ id, foods }) =>
      METHODS.flatMap((method) =>
        (['hot', 'raw', 'not stated'] as const).flatMap((pack) => {
          const place = { food: foods[0] as string, recipe: id, pack, method, elevation: '2000 ft' } as const;
          return (['half-pint', 'pint'] as const).flatMap((jar) =>
            lacks(
              asked(() => testedProcess({ ...place, jar })),
              `${id} ${method} ${pack} ${jar}`,
              count,
            ),
          );
        }),
      ),
    );
    expect(wrong.slice(0, 10)).toEqual([]);
    expect(count.n).toBeGreaterThan(500);
  });

  test('of processesFor', () => {
    const count = { n: 0 };
    const wrong = FOODS.flatMap(({ name }) =>
      lacks(
        asked(() => processesFor({ food: name })),
        name,
        count,
      ),
    );
    expect(wrong.slice(0, 10)).toEqual([]);
    expect(count.n).toBeGreaterThan(1000);
  });

  test('of waysToKeep', () => {
    const count = { n: 0 };
    const kitchen = { elevation: '2000 ft', canners: METHODS.map((method) => ({ method })) } as const;
    const wrong = FOODS.flatMap(({ name }) => lacks(waysToKeep({ food: name, kitchen }), name, count));
    expect(wrong.slice(0, 10)).toEqual([]);
    expect(count.n).toBeGreaterThan(1000);
  });

  test('of loadTimeline', () => {
    const count = { n: 0 };
    const load = {
      jar: 'pint',
      elevation: '2000 ft',
      jars: 7,
      waterVolume: '8 quarts',
      burnerPower: '2400 W',
    } as const;
    const wrong = [
      { food: 'tomato', form: 'crushed', method: 'boiling-water' },
      { food: 'green bean', form: 'whole', pack: 'hot', method: 'dial-gauge' },
      { food: 'green bean', form: 'whole', pack: 'hot', method: 'boiling-water' },
    ].flatMap((question) => lacks(loadTimeline({ ...load, ...question } as never), question.food, count));
    expect(wrong).toEqual([]);
    expect(count.n).toBeGreaterThan(3);
  });

  test('of ownProcess name the book, and the tables by their recipe', () => {
    const count = { n: 0 };
    const own = ownProcess({
      name: 'crushed tomatoes',
      citation: 'A county cookbook, 1998, page 41',
      foods: ['tomato'],
      form: 'crushed',
      pack: 'hot',
      jar: 'pint',
      method: 'boiling-water',
      minutes: 20,
      headspace: '1/2 in',
      acid: { bottledLemonJuice: '1 tbsp' },
      elevation: '500 ft',
    });
    expect(lacks(own, 'own', count)).toEqual([]);
    expect(count.n).toBe(2);
    expect(own).toMatchObject({
      acid: { bottledLemonJuice: { value: 1, unit: 'tbsp' } },
      byTables: { recipe: 'tomato-crushed', acidToAdd: expect.stringContaining('lemon juice') },
    });
  });

  test('and recipe gives none: it names the process that the minutes are asked by', () => {
    const count = { n: 0 };
    for (const row of RECIPES) {
      const found = asked(() => recipe({ recipe: row.id }));
      const canned = row.keeps.some((keep) => 'process' in keep);
      lacks(found, row.id, count);
      if (canned && found !== undefined && 'keeps' in found)
        expect(found.keeps.some(({ processRecipe }) => processRecipe !== undefined)).toBe(true);
    }
    expect(count.n).toBe(0);
  });
});
