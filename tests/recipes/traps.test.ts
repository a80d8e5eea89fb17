import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/StillroomError';
import { readFood } from '../../src/foods/fields';
import { testedProcess } from '../../src/process/testedProcess';
import { mixture } from '../../src/recipes/mixture';
import { type OwnProcessInput, ownProcess } from '../../src/recipes/ownProcess';
import { recipe } from '../../src/recipes/recipe';
import { RECIPES } from '../../src/recipes/rows/rows';
import { waysToKeep } from '../../src/recipes/waysToKeep';

const errorOf = (run: () => unknown): StillroomError => {
  try {
    run();
  } catch (error) {
    if (error instanceof StillroomError) return error;
    throw error;
  }
  throw new Error('it answered');
};

describe('two recipes of one name', () => {
  const byName = new Map<string, string[]>();
  for (const { id, name, names = [] } of RECIPES)
    for (const each of new Set([name, ...names])) byName.set(each, [...(byName.get(each) ?? []), id]);
  const twice = [...byName].filter(([name, ids]) => ids.length > 1 && !RECIPES.some(({ id }) => id === name));

  test('are in the tables', () => {
    expect(twice.length).toBeGreaterThan(0);
    expect(byName.get('freezer jam')?.length).toBe(2);
  });

  test.each(twice)('%s is asked back with both ids', (name, ids) => {
    const error = errorOf(() => recipe({ recipe: name }));
    expect(error).toMatchObject({ code: 'UNKNOWN_NAME', path: 'recipe', options: ids });
    for (const id of ids) {
      expect(error.message).toContain(id);
      expect(recipe({ recipe: id })).toMatchObject({ recipe: id });
    }
  });

  test('are not taken for one in capitals or with spaces', () => {
    expect(errorOf(() => recipe({ recipe: ' Freezer  Jam ' })).options).toEqual(byName.get('freezer jam'));
  });
});

describe("minutes of the cook's book below those of the tables", () => {
  const peaches: OwnProcessInput = {
    name: 'peach halves',
    citation: 'A county cookbook, 1998, page 41',
    foods: ['peach'],
    form: 'halves',
    pack: 'hot',
    jar: 'pint',
    method: 'boiling-water',
    minutes: 1,
    headspace: '1/2 in',
    elevation: '500 ft',
  };
  // USDA Complete Guide to Home Canning, Guide 2, p. 2-19: hot pints 20 to 35 minutes; quarts, and raw pints, 5 more
  test.each([
    ['hot', 'pint', '500 ft', 20],
    ['hot', 'pint', '2,000 ft', 25],
    ['hot', 'pint', '4200 ft', 30],
    ['hot', 'pint', '7000 ft', 35],
    ['hot', 'quart', '500 ft', 25],
    ['hot', 'quart', '7000 ft', 40],
    ['raw', 'pint', '500 ft', 25],
    ['raw', 'quart', '7000 ft', 45],
  ] as const)('are not served: %s, %s at %s takes %d', (pack, jar, elevation, minutes) => {
    const found = ownProcess({ ...peaches, pack, jar, elevation });
    expect(found).toMatchObject({ whoseMinutes: 'these tables', minutes, byTables: { minutes } });
    expect(found.tested && found.byYourBook).toBeLessThan(minutes);
  });

  test.each([
    [19, 'these tables', 20],
    [20, 'your book', 20],
    [21, 'your book', 21],
  ])('%d minutes: %s are served, %d', (own, whoseMinutes, minutes) => {
    expect(ownProcess({ ...peaches, minutes: own })).toMatchObject({ whoseMinutes, minutes });
  });

  test('are never the shorter of the two, at any elevation', () => {
    for (const minutes of [1, 15, 20, 30, 60])
      for (const feet of [0, 1000, 1001, 3001, 6001, 9000]) {
        const found = ownProcess({ ...peaches, minutes, elevation: `${feet} ft` });
        if (!found.tested) throw new Error(found.reason.text);
        expect(found.minutes).toBe(Math.max(found.byYourBook, found.byTables?.minutes ?? 0));
      }
  });
});

describe('a fruit mix with a part that is low in acid', () => {
  const mix = ['peach', 'banana'] as const;
  const canners = [{ method: 'boiling-water' }, { method: 'dial-gauge' }] as const;

  test('is low in acid, however little of it goes in', () => {
    for (const mass of ['1 g', '100 g', '5 kg'] as const)
      expect(
        mixture({
          parts: [
            { food: 'peach', mass: '5 kg' },
            { food: 'banana', mass },
          ],
        }),
      ).toMatchObject({ acidity: 'low-acid', decidedBy: ['banana'] });
  });

  test('goes into no jar together: only leather and what is dried or frozen takes both', () => {
    const found = waysToKeep({ lots: mix.map((food) => ({ food })), kitchen: { elevation: '500 ft', canners } });
    if (!('ways' in found)) throw new Error(found.reason.text);
    const both = found.ways.filter(({ foods }) => mix.every((food) => foods.includes(food)));
    expect(both.map(({ recipe: id }) => id)).toContain('fruit-leather');
    for (const { processes, keeps } of both) {
      expect(processes).toEqual([]);
      for (const { processRecipe } of keeps) expect(processRecipe).toBeUndefined();
    }
  });

  test("of the cook's own book is refused in boiling water, in any order of its parts", () => {
    const book = { citation: 'A county cookbook, 1998, page 41', jar: 'pint', headspace: '1/2 in' } as const;
    const own = { ...book, name: 'fruit spread', minutes: 30, method: 'boiling-water', elevation: '500 ft' } as const;
    for (const foods of [
      ['peach', 'carrot'],
      ['carrot', 'peach'],
    ])
      expect(ownProcess({ ...own, foods })).toMatchObject({ tested: false, reason: { code: 'low in acid' } });
    for (const foods of [[...mix], [...mix].reverse()])
      expect(ownProcess({ ...own, foods })).toMatchObject({ tested: false, reason: { code: 'not canned' } });
    expect(ownProcess({ ...own, foods: ['peach', 'plum'] })).toMatchObject({ tested: true });
  });
});

describe('a citation that cannot be followed up', () => {
  test.each(['', ' ', '\t\n', 'my aunt', '???'])('(%j) is refused at its field', (citation) => {
    const asked: OwnProcessInput = {
      name: 'plum sauce',
      citation,
      foods: ['plum'],
      form: 'sauce',
      jar: 'pint',
      method: 'boiling-water',
      minutes: 10,
      headspace: '1/2 in',
      elevation: '500 ft',
    };
    expect(errorOf(() => ownProcess(asked))).toMatchObject({ path: 'citation' });
  });
});

describe('a food just outside the scope of a page', () => {
  // recipe, food outside, the name of the food that is inside, form
  const OUTSIDE = [
    ['berry-syrup', 'elderberry', 'blueberry', 'syrup'],
    ['peach-halves-or-slices', 'white peach', 'peach', 'halves'],
    ['fruit-puree', 'banana', 'plum', 'puree'],
    ['fruit-puree', 'fig', 'plum', 'puree'],
    ['apple-butter', 'pumpkin', 'apple', 'butter'],
  ] as const;
  const place = { jar: 'pint', method: 'boiling-water', elevation: '500 ft' } as const;
  const canners = (['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam'] as const).map((method) => ({
    method,
  }));

  test.each(OUTSIDE)('%s: %s has no process by this recipe, %s has one', (id, food, inside) => {
    const ask = (name: string) => testedProcess({ ...place, food: name, recipe: id, pack: 'hot' });
    expect(ask(inside)).toMatchObject({ tested: true, recipe: id });
    const found = ask(food);
    expect(found).toMatchObject({ tested: false, reason: { code: 'not on the page' } });
    expect(found).not.toHaveProperty('minutes');
    expect(found.tested === false && found.instead.length).toBeGreaterThan(0);
  });

  test.each(OUTSIDE)('%s: %s in any canner and jar has none either', (id, food) => {
    for (const { method } of canners)
      for (const jar of ['half-pint', 'pint', 'quart'] as const)
        for (const pack of ['hot', 'raw'] as const)
          expect(testedProcess({ food, recipe: id, pack, jar, method, elevation: '0 ft' })).toMatchObject({
            tested: false,
          });
  });

  test.each(OUTSIDE)('%s: %s is a contradiction for recipe, with the foods of the page', (id, food, inside) => {
    const error = errorOf(() => recipe({ recipe: id, food }));
    expect(error).toMatchObject({ code: 'CONTRADICTION', path: 'food' });
    expect(error.options).toContain(inside);
    expect(error.options).not.toContain(food);
  });

  test.each(OUTSIDE)('%s is no way for %s, and is one for %s', (id, food, inside) => {
    const ways = (name: string): string[] => {
      const found = waysToKeep({ food: name, kitchen: { elevation: '500 ft', canners } });
      return 'ways' in found ? found.ways.map((way) => way.recipe) : [];
    };
    expect(ways(inside)).toContain(id);
    expect(ways(food)).not.toContain(id);
  });

  test.each(OUTSIDE)('(%s) %s as what it would be has no minutes by its form', (_, food, __, form) => {
    for (const { method } of canners) {
      const found = testedProcess({ ...place, food, form, pack: 'hot', method });
      expect(found).toMatchObject({ tested: false });
      expect(found).not.toHaveProperty('minutes');
    }
  });

  test('is no way among lots that are inside', () => {
    const found = waysToKeep({ lots: [{ food: 'peach' }, { food: 'white peach' }], kitchen: { elevation: '500 ft' } });
    if (!('ways' in found)) throw new Error(found.reason.text);
    const canned = found.ways.filter(({ processes }) => processes.length > 0);
    expect(canned.length).toBeGreaterThan(3);
    for (const { foods } of canned) expect(foods).toEqual(['peach']);
  });

  test('is a food that the pantry of names has: nothing is refused for its spelling', () => {
    for (const [, food] of OUTSIDE) expect(readFood(food).name).toBe(food);
  });
});
