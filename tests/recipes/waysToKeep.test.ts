import { describe, expect, test } from 'vitest';
import { foods } from '../../src/foods/foods';
import { testedProcess } from '../../src/process/testedProcess';
import { recipe } from '../../src/recipes/recipe';
import { RECIPES } from '../../src/recipes/rows/rows';
import { type WaysToKeep, type WaysToKeepInput, waysToKeep } from '../../src/recipes/waysToKeep';

const found = (input: WaysToKeepInput): WaysToKeep => {
  const answer = waysToKeep(input);
  if (!('ways' in answer)) throw new Error(answer.reason.text);
  return answer;
};
const kitchen = {
  elevation: '4200 ft',
  canners: [{ method: 'boiling-water' }],
  jars: [{ jar: 'pint' }, { jar: 'half-pint' }],
  pots: [{ volume: '16 quarts' }],
} as const;
const wayOf = ({ ways }: WaysToKeep, recipe: string) => ways.find((way) => way.recipe === recipe);

describe('the ways to keep a food', () => {
  // USDA Complete Guide to Home Canning, Guide 2, pp. 2-10 and 2-11: five fruits, half-pints or pints, 10/15/20 min
  test.each(['strawberry', 'cherry', 'grape', 'raspberry', 'blueberry'])('of %s hold the printed syrup', (food) => {
    const way = wayOf(found({ food, kitchen }), 'berry-syrup');
    expect(way?.processes.map(({ jar, minutes }) => [jar, minutes])).toEqual([
      ['pint', 15],
      ['half-pint', 15],
    ]);
    expect(way?.processes[0]?.headspace).toEqual({ value: 0.5, unit: 'in' });
  });
  test.each(['blackberry', 'mulberry', 'currant', 'gooseberry', 'elderberry'])('of %s do not', (food) => {
    const answer = waysToKeep({ food, kitchen });
    if ('ways' in answer) expect(wayOf(answer, 'berry-syrup')).toBeUndefined();
  });

  test('are asked for every food of the pantry, and never throw', () => {
    const asked = foods().map(({ food }) => waysToKeep({ food }));
    expect(asked.filter((answer) => 'ways' in answer && answer.ways.length > 0).length).toBeGreaterThan(200);
  });

  test('begin with what lacks nothing', () => {
    const { ways } = found({ food: 'green bean', kitchen });
    const lacking = ways.map((way) => way.lacking.length > 0);
    expect(lacking).toEqual([...lacking].sort());
    expect(wayOf(found({ food: 'green bean', kitchen }), 'green-bean-whole-or-pieces')?.lacking[0]?.what).toBe(
      'canner',
    );
  });

  test.each([
    ['white peach', 'peach'],
    ['white nectarine', 'nectarine'],
    ['savoy cabbage', 'cabbage'],
  ])('of a %s are freezing and drying by the page of a %s, and no jar', (kind, wider) => {
    const { ways, basis } = found({ food: kind, kitchen });
    const makes = (wanted: string) => ways.filter((way) => way.makes === wanted).map((way) => way.recipe);
    expect(makes('frozen').length).toBeGreaterThan(0);
    expect(makes('frozen').some((id) => id.startsWith(`frozen-${wider}`))).toBe(true);
    expect(
      ways.filter(({ keeps, processes }) => processes.length > 0 || keeps.some((keep) => keep.processRecipe)),
    ).toEqual([]);
    expect(basis.some(({ of, food }) => of === 'ways[].needs' && food === wider)).toBe(true);
    expect(recipe({ recipe: makes('frozen')[0] as string, food: kind })).toHaveProperty('ingredients');
  });

  test('of a kind with a page are by that page, not by the wider one', () => {
    const recipes = (food: string) => found({ food, kitchen }).ways.map((way) => way.recipe);
    expect(recipes('spinach')).toContain('dried-spinach');
    expect(recipes('spinach')).not.toContain('dried-greens');
    expect(recipes('kale')).toContain('dried-greens');
  });

  test('of peaches begin with halves or slices, hot or raw', () => {
    const [first] = found({ food: 'peach', kitchen }).ways;
    expect(first).toMatchObject({ recipe: 'peach-halves-or-slices', makes: 'fruit in jars' });
  });

  test('name what is closed, and why', () => {
    const { left } = found({ food: 'strawberry', kitchen });
    expect(left.map(({ name }) => name)).toContain('strawberry as whole');
    for (const { reason } of left) expect(reason.text.length).toBeGreaterThan(10);
  });

  test('give minutes only beside their recipe, its acid and what must be kept', () => {
    const way = wayOf(found({ food: 'tomato', kitchen }), 'tomato-crushed');
    expect(way?.processes[0]?.acid).toMatchObject({ required: true });
    expect(way?.mustKeep.length).toBeGreaterThan(0);
  });

  test('are those of each lot, with its batches', () => {
    const { ways } = found({
      lots: [
        { food: 'apple', raw: '40 lb' },
        { food: 'peach', raw: '10 lb' },
      ],
      kitchen,
    });
    expect(ways.find(({ recipe }) => recipe === 'apple-butter')).toMatchObject({ batches: 5, foods: ['apple'] });
  });

  // USDA Complete Guide to Home Canning, Guide 2, p. 2-10: raspberries are packed raw only
  test.each([[['blueberry', 'raspberry']], [['raspberry', 'blueberry']]])(
    'of %j give each food its own packs, in any order of the lots',
    (foods) => {
      const whole = found({ lots: foods.map((food) => ({ food })), kitchen }).ways.filter(
        ({ recipe }) => recipe === 'berry-whole',
      );
      const packs = Object.fromEntries(
        whole.map((way) => [way.foods.join(), [...new Set(way.processes.map(({ pack }) => pack))]]),
      );
      expect(packs).toEqual({ blueberry: ['hot', 'raw'], raspberry: ['raw'] });
    },
  );

  test('take all lots of a food together', () => {
    const batches = (...raws: readonly ('4 lb' | '20 lb' | '40 lb' | '10 lb')[]) =>
      found({ lots: raws.map((raw) => ({ food: 'apple', raw })), kitchen }).ways.find(
        ({ recipe }) => recipe === 'apple-butter',
      );
    expect(batches('20 lb', '20 lb')).toMatchObject({ batches: 5, foods: ['apple'] });
    expect(batches('4 lb', '40 lb')?.batches).toBe(batches('40 lb', '4 lb')?.batches);
  });

  test('without a kitchen give no minutes', () => {
    for (const { processes } of found({ food: 'peach' }).ways) expect(processes).toEqual([]);
  });

  test('need a food or lots', () => {
    expect(() => waysToKeep({})).toThrow(/food/);
    expect(() => waysToKeep({ food: 'peach', lots: [{ food: 'plum' }] })).toThrow(/food/);
  });

  test('hold no process that testedProcess does not serve', () => {
    for (const food of ['peach', 'tomato', 'cucumber', 'green bean', 'apple']) {
      for (const { processes, foods } of found({ food, kitchen: { elevation: '2,000 ft' } }).ways) {
        expect(foods).toEqual([food]);
        for (const { minutes } of processes) expect(minutes).toBeGreaterThan(0);
      }
    }
    expect(
      testedProcess({
        food: 'peach',
        form: 'halves',
        pack: 'hot',
        jar: 'pint',
        method: 'boiling-water',
        elevation: '2,000 ft',
      }),
    ).toMatchObject({ minutes: 25 });
  });

  test('every canned recipe is a way for each of its foods somewhere', () => {
    const lost = RECIPES.filter(({ keeps }) => keeps.some((keep) => 'process' in keep)).flatMap(({ id, foods }) =>
      foods
        .filter((food) => {
          const answer = waysToKeep({ food, kitchen: { elevation: '500 ft' } });
          return !('ways' in answer) || !answer.ways.some(({ recipe }) => recipe === id);
        })
        .map((food) => `${id}: ${food}`),
    );
    expect(lost).toEqual([]);
  });
});
