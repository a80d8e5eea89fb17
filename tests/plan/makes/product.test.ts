import { describe, expect, test } from 'vitest';
import { isMain, isPulp, othersOf, pantryLacking, scopeLine } from '../../../src/plan/makes/product';
import { recipeOfId } from '../../../src/recipes/rows/rows';
import type { RecipeRow } from '../../../src/recipes/rows/tables';
import { planOf, productOf } from '../fullKitchen';

const row = (id: string) => recipeOfId(id) as RecipeRow;

describe('the lines of a recipe', () => {
  test('its own food is part of it, whatever part that plays', () => {
    expect(isMain({ food: '@scope', role: 'liquid' })).toBe(true);
    expect(isMain({ food: 'onion', role: 'vegetable' })).toBe(true);
    expect(isMain({ food: 'sugar', role: 'sugar' })).toBe(false);
    expect(scopeLine(row('refrigerator-jelly-granular-sweetener'), 'fruit-juice')?.amount).toBe('4 1/4 cups');
  });
  test('others are what is cut up besides', () => {
    const others = othersOf(row('chile-salsa'), ['tomato']).map(({ food }) => food);
    expect(others).toEqual(expect.arrayContaining(['chile-pepper', 'onion']));
    expect(othersOf(row('peach-jam-no-added-pectin'), ['peach'])).toEqual([]);
  });
  test('pulps mix, pieces do not', () => {
    expect(isPulp(row('fruit-leather'))).toBe(true);
    expect(isPulp(row('frozen-green-beans'))).toBe(false);
  });
  test('what the pantry lacks of what sets or keeps it', () => {
    const day = (items: readonly string[] | undefined) =>
      ({ request: { kitchen: items === undefined ? {} : { pantry: items.map((item) => ({ item })) } } }) as never;
    expect(pantryLacking(day(undefined), row('peach-jam-powdered-pectin'))).toBe(0);
    expect(pantryLacking(day(['sugar']), row('peach-jam-powdered-pectin'))).toBeGreaterThan(0);
    expect(pantryLacking(day(['sugar', 'pectin']), row('blackberry-jam-powdered-pectin'))).toBe(0);
  });
});

describe('which page', () => {
  test.each([
    ['plum', { make: 'frozen', form: 'slices' }, 'frozen-plum-unsweetened'],
    ['plum', { make: 'frozen', form: 'puree' }, 'frozen-plum-puree'],
    ['apple', { make: 'sauce' }, 'apple-sauce'],
    ['strawberry', { make: 'jam', pectin: 'powdered' }, 'strawberry-jam-powdered-pectin'],
    ['strawberry', { make: 'jam', pectin: false }, 'berry-jam-no-added-pectin'],
    ['cabbage', { make: 'kraut' }, 'sauerkraut'],
  ] as const)('%s %o: %s', (food, asked, recipe) => {
    expect(productOf(food, asked, {}, '40 lb').recipe).toBe(recipe);
  });
  test('a share of sugar of your own is no printed recipe, with pectin or without', () => {
    for (const pectin of [true, false]) {
      const [out] = planOf('peach', { make: 'jam', pectin, sugarToFruit: 0.4 }).leftOut;
      expect(out?.reason.code).toBe('recipe-changed');
    }
  });
  test('a form that no page is for names the forms that there are', () => {
    const [out] = planOf('broccoli', { make: 'frozen', form: 'puree' }).leftOut;
    expect(out?.instead[0]?.text).toBe('ask for large florets');
  });
});
