import { expect, test } from 'vitest';
import { jamRecipe } from '../../src/sugar/index';
import { foodsOfJams, printedJams, recipes } from '../../src/sugar/jamRecipes';
import { codeText as errorOf } from '../helpers/errors';

type Batch = Extract<ReturnType<typeof jamRecipe>, { sugar: unknown }>;
const recipe = (input: Parameters<typeof jamRecipe>[0]): Batch => {
  const answer = jamRecipe(input);
  if ('known' in answer) throw new Error(answer.reason.text);
  return answer;
};

test('apricot jam without added pectin (Guide 7)', () => {
  const { fruit, sugar, lemonJuice, halfPints, cautions } = recipe({
    food: 'apricots',
    product: 'jam',
    pectin: 'none',
  });
  expect([fruit.low.value, fruit.high.value, sugar.low.value, lemonJuice?.value]).toEqual([4, 4.5, 4, 2]);
  expect(halfPints).toEqual({ low: 5, high: 6 });
  expect(cautions.map(({ id }) => id)).toContain('acid-for-set');
});

test('a berry finds the row of the berries; packages are weighed', () => {
  const berry = recipe({ food: 'raspberries', product: 'jam', pectin: 'none' });
  expect(berry.name).toBe('berry');
  expect(berry.foods).toContain('strawberry');
  expect(recipe({ food: 'berries', product: 'jam', pectin: 'none' }).name).toBe('berry');
  expect(recipe({ food: 'strawberry', product: 'jam', pectin: 'powdered' }).pectinMass).toEqual({
    value: 49.6,
    unit: 'g',
  });
  const two = recipe({ foods: ['apple', 'pear'], product: 'jam', pectin: 'liquid' });
  expect(two).toMatchObject({ together: true, foods: ['pear', 'apple'] });
  expect(two.pectinVolume?.value).toBeCloseTo(177.4, 9);
  expect(recipe({ food: 'apple', product: 'jelly', pectin: 'none' })).toMatchObject({
    lemonOptional: true,
    raw: { value: 3, unit: 'lb' },
  });
});

test('a recalled row says so', () => {
  expect(recipe({ food: 'mayhaw', product: 'jelly', pectin: 'none' }).cautions.map(({ id }) => id)).toContain(
    'recalled',
  );
});

test('what is not printed is not invented, and what is printed is offered', () => {
  expect(jamRecipe({ food: 'mango', product: 'jam', pectin: 'none' })).toMatchObject({ known: false });
  expect(jamRecipe({ food: 'strawberry', product: 'preserves', pectin: 'none' })).toMatchObject({
    known: false,
    reason: { code: 'no-printed-recipe' },
    instead: expect.arrayContaining([expect.objectContaining({ recipe: 'strawberry-jam-powdered-pectin' })]),
  });
  const grape = jamRecipe({ food: 'grape', product: 'jelly', pectin: 'none' });
  expect('instead' in grape && grape.instead.map(({ recipe: id }) => id)).toContain(
    'concord-grape-jelly-no-added-pectin',
  );
  expect(jamRecipe({ foods: ['peach', 'plum'], product: 'jam', pectin: 'none' })).toMatchObject({ known: false });
});

test('a wider fruit may lend its recipe, and the basis says so', () => {
  const damson = jamRecipe({ food: 'damson', product: 'jelly', pectin: 'none' });
  if ('sugar' in damson) expect(damson.basis[0]?.food).toBe('plum');
});

test('the plan reads jams that name the food, none of several fruits in one pot, none lent', () => {
  expect(printedJams('pear')).toEqual([]);
  expect(printedJams('berry')).toEqual([]);
  expect(printedJams('raspberry').map(({ id }) => id)).toEqual(['berry-jam-no-added-pectin']);
  for (const food of foodsOfJams()) {
    for (const row of printedJams(food)) expect(recipes).toContainEqual(expect.objectContaining({ id: row.id }));
  }
  expect(foodsOfJams().sort()).toEqual([
    'apricot',
    'blackberry',
    'blueberry',
    'boysenberry',
    'dewberry',
    'fig',
    'gooseberry',
    'loganberry',
    'peach',
    'raspberry',
    'sour cherry',
    'strawberry',
  ]);
});

test('bad input', () => {
  expect(errorOf(() => jamRecipe({ product: 'jam', pectin: 'none' }))).toBe('MISSING food');
  expect(errorOf(() => jamRecipe({ food: 'plum', foods: ['plum', 'pear'], product: 'jam', pectin: 'none' }))).toBe(
    'CONTRADICTION foods',
  );
  expect(errorOf(() => jamRecipe({ food: 'granite', product: 'jam', pectin: 'none' }))).toBe('UNKNOWN_NAME food');
});
