import { describe, expect, test } from 'vitest';
import { foodRows, KINDS } from '../../../src/foods/tables';
import { recipeOfId } from '../../../src/recipes/rows/rows';
import { MAKES, type Makes } from '../../../src/recipes/rows/tables';
import type { Lack } from '../../../src/recipes/ways/lacking';
import { placeOf, usualOrder } from '../../../src/recipes/ways/order';
import { type WaysToKeep, type WaysToKeepInput, waysToKeep } from '../../../src/recipes/waysToKeep';
import { readTable } from '../../helpers/tables';

const plain: WaysToKeepInput['kitchen'] = {
  elevation: '500 ft',
  canners: [{ method: 'boiling-water' }, { method: 'dial-gauge' }],
  dryer: { trays: 8, trayArea: '2 ft2' },
  freezer: { room: '100 L' },
};
const onePot: WaysToKeepInput['kitchen'] = { elevation: '500 ft', canners: [], pots: [{ volume: '8 quarts' }] };
const ways = (food: string, kitchen = plain): WaysToKeep['ways'] => {
  const found = waysToKeep({ food, kitchen });
  if (!('ways' in found)) throw new Error(found.reason.text);
  return found.ways;
};

describe('the usual order', () => {
  test.each([
    ['peach', 'fruit in jars', 'jam'],
    ['peach', 'jam', 'leather'],
    ['apple', 'sauce', 'fruit in jars'],
    ['blueberry', 'frozen', 'fruit in jars'],
    ['tomato', 'tomatoes in jars', 'sauce'],
    ['green-bean', 'vegetables in jars', 'frozen'],
    ['cabbage', 'ferment', 'frozen'],
    ['basil', 'dried', 'frozen'],
    ['venison', 'frozen', 'meat in jars'],
    ['chicken', 'stock', 'jerky'],
    ['salmon', 'frozen', 'fish in jars'],
  ] as const)('of %s has %s before %s', (food, first, then) => {
    expect(placeOf(food, first)).toBeLessThan(placeOf(food, then));
  });

  test('has a first place for one recipe, and a last for all others of its kind', () => {
    expect(placeOf('peach', 'jam', 0)).toBeLessThan(placeOf('peach', 'dried', 0));
    expect(placeOf('peach', 'jam', 1)).toBeGreaterThan(placeOf('peach', 'pie filling', 0));
    expect(placeOf('peach', 'jam', 7)).toBe(placeOf('peach', 'jam', 1));
  });

  test('puts what it does not name last', () => {
    const last = Math.max(...MAKES.map((makes) => placeOf('peach', makes)));
    expect(placeOf('peach', 'fish in jars')).toBe(last);
    expect(placeOf('peach', 'fruit in jars')).toBe(0);
  });

  test('is there for every kind of food, and names no food twice', () => {
    const rows: readonly { kinds?: string[]; foods?: string[]; first?: string[] }[] = readTable(
      'recipes',
      'usual-order',
    ).rows;
    const kinds = rows.flatMap((row) => row.kinds ?? []);
    expect([...kinds].sort()).toEqual([...KINDS].sort());
    const foods = rows.flatMap((row) => row.foods ?? []);
    expect(new Set(foods).size).toBe(foods.length);
    const known = new Set(foodRows.map(({ id }) => id));
    expect(foods.filter((food) => !known.has(food))).toEqual([]);
    expect(rows.flatMap((row) => row.first ?? []).filter((id) => recipeOfId(id) === undefined)).toEqual([]);
    for (const row of rows) expect((row.kinds === undefined) !== (row.foods === undefined)).toBe(true);
  });
});

describe('what is lacking', () => {
  const lack = (kind: Lack['kind'], what = kind as string): Lack => ({ kind, what, text: what });
  const way = (recipe: string, makes: Makes, ...lacking: Lack[]) => ({
    way: { recipe, makes, lacking },
    row: { foods: ['peach'] },
    food: 'peach',
  });
  test('goes before what is made: the pantry first, then other food, jars, equipment', () => {
    const given = [
      way('e', 'fruit in jars', lack('equipment')),
      way('d', 'fruit in jars', lack('jars')),
      way('c', 'fruit in jars', lack('food')),
      way('b2', 'jam', lack('pantry'), lack('pantry', 'other')),
      way('b', 'jam', lack('pantry')),
      way('f', 'fruit in jars', lack('pantry'), lack('equipment')),
      way('a', 'powder'),
    ];
    expect(usualOrder(given).map((each) => each.way.recipe)).toEqual(['a', 'b', 'b2', 'c', 'd', 'e', 'f']);
  });

  test.each([
    ['pear', 'pear-apple-jam-liquid-pectin', ['apple']],
    ['apple', 'pear-apple-jam-liquid-pectin', ['pear']],
    ['peach', 'fruit-cocktail', ['pear', 'grape', 'maraschino cherries']],
    ['carrot', 'mixed-vegetables', ['sweet corn', 'green bean', 'lima bean', 'tomato', 'zucchini']],
    ['tomato', 'spaghetti-sauce-with-meat', ['beef or sausage']],
    ['zucchini', 'tomatoes-with-okra-or-zucchini', ['tomato']],
    ['jalapeno', 'cayenne-pepper-sauce', ['tomato']],
    ['tomato', 'tomato-sauce', []],
    ['cucumber', 'bread-and-butter-pickles', []],
  ])('of %s for %s is %j', (food, recipe, lacking) => {
    const found = ways(food).find((each) => each.recipe === recipe);
    expect(found?.lacking.map(({ what }) => what)).toEqual(lacking);
    for (const { kind } of found?.lacking ?? []) expect(kind).toBe('food');
  });

  test('is nothing where the cook has brought the other fruit too, and it is no need then', () => {
    const found = waysToKeep({ lots: [{ food: 'pear' }, { food: 'apple' }], kitchen: plain });
    const jam = 'ways' in found && found.ways.find(({ recipe }) => recipe === 'pear-apple-jam-liquid-pectin');
    expect(jam).toMatchObject({ foods: ['pear', 'apple'], lacking: [] });
    expect(jam ? jam.needs.map(({ what }) => what) : []).not.toContain('apple');
    expect(
      ways('pear')
        .find(({ recipe }) => recipe === 'pear-apple-jam-liquid-pectin')
        ?.needs.map(({ what }) => what),
    ).toContain('apple');
  });
});

describe('the first ways', () => {
  // what experienced cooks put up first: common practice, to be read by a cook
  test.each([
    ['peach', ['peach-halves-or-slices', 'peach-jam-no-added-pectin', 'frozen-peach-syrup-pack', 'dried-peach-halves']],
    ['apple', ['apple-sauce', 'apple-butter', 'apple-slices', 'apple-pie-filling', 'dried-apple-slices']],
    ['tomato', ['tomato-whole-or-halves-in-water', 'tomato-sauce', 'tomato-juice', 'tomato-crushed']],
    ['strawberry', ['frozen-strawberry-sugar-pack', 'strawberry-jam-powdered-pectin', 'berry-syrup']],
    ['green bean', ['green-bean-whole-or-pieces', 'frozen-green-beans', 'pickled-dilly-beans', 'dried-green-beans']],
    ['sweet corn', ['sweet-corn-kernels', 'frozen-corn-kernels', 'dried-corn-kernels']],
    ['carrot', ['carrot-slices-or-dice', 'frozen-carrot-slices', 'pickled-baby-carrots', 'dried-carrot-slices']],
    ['cucumber', ['quick-fresh-pack-dill-pickles', 'bread-and-butter-pickles', 'fermented-dill-pickles']],
    ['cabbage', ['sauerkraut', 'frozen-cabbage-shredded']],
    ['plum', ['plum-halves-or-whole', 'jam-packaged-pectin', 'frozen-plum-puree', 'dried-plum-halves']],
    ['venison', ['frozen-meat', 'meat-strips-cubes-or-chunks']],
    ['chicken', ['frozen-poultry', 'chicken-or-rabbit-without-bones']],
    ['salmon', ['frozen-fish']],
    ['blueberry', ['frozen-blueberry-unsweetened', 'blueberry-spice-jam-powdered-pectin', 'blueberry-pie-filling']],
    ['pear', ['pear-halves', 'pear-butter', 'dried-pear-halves']],
  ])('of %s in a plain kitchen', (food, first) => {
    expect(
      ways(food)
        .slice(0, first.length)
        .map(({ recipe }) => recipe),
    ).toEqual(first);
  });

  test.each(['peach', 'apple', 'tomato', 'strawberry', 'pear', 'plum', 'blueberry', 'carrot', 'green bean', 'cabbage'])(
    'of %s never need another food before the last that needs none',
    (food) => {
      for (const kitchen of [plain, onePot]) {
        const other = ways(food, kitchen).map(({ lacking }) => {
          const kinds = lacking.map(({ kind }) => kind);
          return kinds.includes('jars') || kinds.includes('equipment') ? 2 : kinds.includes('food') ? 1 : 0;
        });
        expect(other).toEqual([...other].sort());
      }
    },
  );

  test('in a kitchen with one pot are those that need no canner', () => {
    expect(ways('cucumber', onePot)[0]?.recipe).toBe('refrigerator-pickles');
    expect(ways('cabbage', onePot)[0]?.recipe).toBe('sauerkraut');
    expect(ways('salmon', onePot)[0]?.lacking.map(({ what }) => what)).toEqual(['freezer']);
  });

  test('in a kitchen without jars lack jars, and give no minutes', () => {
    const found = waysToKeep({ food: 'peach', kitchen: { ...plain, elevation: '500 ft', jars: [] } });
    if (!('ways' in found)) throw new Error(found.reason.text);
    const canned = found.ways.find(({ recipe }) => recipe === 'peach-halves-or-slices');
    expect(canned).toMatchObject({ processes: [], lacking: [{ kind: 'jars', what: 'jars' }] });
    expect(found.ways[0]?.lacking).toEqual([]);
  });
});
