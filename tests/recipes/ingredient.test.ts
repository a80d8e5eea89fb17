import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { valueIn } from '../../src/quantity/scale';
import type { Quantity } from '../../src/quantity/types';
import { ingredientOf } from '../../src/recipes/ingredient';
import { recipeOfId } from '../../src/recipes/rows/rows';
import type { IngredientRow, RecipeRow } from '../../src/recipes/rows/tables';

const row = recipeOfId('apple-butter') as RecipeRow;
const line = (given: Partial<IngredientRow>, times = 1, of: RecipeRow = row) =>
  ingredientOf(of, { role: 'other', ...given } as IngredientRow, 'apple', times);
const tsp = (amount: unknown): number => valueIn(amount as Quantity<'volume'>, 'tsp');

describe('one ingredient', () => {
  test('of the scope is called as the food of the recipe', () => {
    expect(line({ food: '@scope', role: 'fruit', amount: '8 lb', printed: 'cored' })).toMatchObject({
      what: 'apple, cored',
      food: 'apple',
      amount: { value: 8, unit: 'lb' },
    });
  });

  test('says its form', () => {
    expect(line({ food: '@scope', role: 'fruit', form: 'juice', printed: 'bottled' })).toMatchObject({
      what: 'apple juice, bottled',
      food: 'apple',
      form: 'juice',
    });
    expect(line({ food: 'onion', role: 'vegetable', form: 'chopped' }).what).toBe('chopped onions');
    const wide = ingredientOf(row, { role: 'fruit', food: '@scope', form: 'crushed' }, 'the fruit', 1);
    expect(wide.what).toBe('the fruit, crushed');
  });

  test('that the pantry does not have goes by its printed name', () => {
    const found = line({ item: 'whole cloves', role: 'spice', amount: '2 tsp' });
    expect(found.what).toBe('whole cloves');
    expect(found).not.toHaveProperty('food');
  });

  test('in cups is weighed too, and in pounds is not', () => {
    expect(line({ food: 'sugar', role: 'sugar', amount: '1 cup' }).or).toMatchObject({ unit: 'g' });
    expect(line({ food: 'sugar', role: 'sugar', amount: '1 lb' })).not.toHaveProperty('or');
  });

  test('counted is rounded up to halves', () => {
    const cloves = { item: 'garlic', role: 'spice', count: 3, countMost: 5, counted: 'cloves' } as const;
    expect(line(cloves)).toMatchObject({ pieces: 3, piecesMost: 5, counted: 'cloves' });
    expect(line(cloves, 0.4)).toMatchObject({ pieces: 1.5, piecesMost: 2 });
  });

  test('for each jar, or for so much of something, stays as printed in any size', () => {
    const jar = { food: 'bottled-lemon-juice', role: 'acid', keep: true, perJar: { pint: '1 tbsp' } } as const;
    expect(line(jar, 7)).toMatchObject({ eachJar: { pint: { value: 1, unit: 'tbsp' } }, neverLess: true });
    const dip = {
      item: 'ascorbic acid',
      role: 'acid',
      amount: '1 tsp',
      per: { amount: '1 gallon', of: 'water' },
    } as const;
    expect(line(dip, 5)).toMatchObject({ amount: { value: 1, unit: 'tsp' }, amountFor: { of: 'water' } });
  });

  test('says what may be left out and what is poured off', () => {
    expect(line({ role: 'salt', item: 'salt' })).toMatchObject({ optional: false, drained: false, neverLess: false });
    expect(line({ role: 'salt', item: 'salt', optional: true, drained: true, choose: 'salt' })).toMatchObject({
      optional: true,
      drained: true,
      oneOf: 'salt',
    });
  });

  test('that is acid is never rounded below its proportion, the water beside it never above', () => {
    const vinegar = { food: 'vinegar', role: 'acid', keep: true, amount: '2 cups' } as IngredientRow;
    const water = { food: 'water', role: 'liquid', amount: '2 cups' } as IngredientRow;
    const sour = { ...row, ingredients: [vinegar, water] };
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 20, noNaN: true }), (times) => {
        expect(tsp(ingredientOf(sour, vinegar, '', times).amount)).toBeGreaterThanOrEqual(96 * times * (1 - 1e-12));
        expect(tsp(ingredientOf(sour, water, '', times).amount)).toBeLessThanOrEqual(96 * times * (1 + 1e-12));
      }),
    );
  });
});
