import { describe, expect, test } from 'vitest';
import { coveringLiquid, vinegarLines } from '../../src/recipes/coveringLiquid';
import { recipeOfId } from '../../src/recipes/rows/rows';
import type { IngredientRow, RecipeRow } from '../../src/recipes/rows/tables';

const base = recipeOfId('apple-butter') as RecipeRow;
const liquid = (...ingredients: Partial<IngredientRow>[]) =>
  coveringLiquid({ ...base, ingredients: ingredients.map((line) => ({ role: 'liquid', ...line }) as IngredientRow) });
const vinegar = { food: 'vinegar', role: 'acid', amount: '4 cups', acetic: 0.05 } as const;

describe('the covering liquid', () => {
  test('sums what stays in the jars, in cups', () => {
    expect(
      liquid(
        vinegar,
        { food: 'water', amount: '1 quart' },
        { food: 'bottled-lemon-juice', role: 'acid', amount: '8 tbsp' },
      ),
    ).toEqual({ vinegar: 4, acetic: 0.05, water: 4, lemonJuice: 0.5 });
  });
  test('counts two vinegars together', () => {
    expect(liquid(vinegar, { food: 'cider-vinegar', role: 'acid', amount: '2 cups' })).toMatchObject({ vinegar: 6 });
  });
  test('leaves out what is drained or optional', () => {
    expect(
      liquid(
        vinegar,
        { food: 'water', amount: '2 gallons', drained: true },
        { food: 'water', amount: '1 cup', optional: true },
      ),
    ).toMatchObject({ water: 0 });
    expect(liquid({ ...vinegar, drained: true })).toBeUndefined();
  });
  test('takes the first vinegar of a choice, and vinegar before another acid', () => {
    expect(
      liquid({ ...vinegar, choose: 'acid' }, { ...vinegar, food: 'cider-vinegar', amount: '9 cups', choose: 'acid' }),
    ).toMatchObject({ vinegar: 4 });
    expect(
      liquid(
        { food: 'bottled-lemon-juice', role: 'acid', amount: '1 cup', choose: 'acid' },
        { ...vinegar, choose: 'acid' },
      ),
    ).toMatchObject({ vinegar: 4, lemonJuice: 0 });
  });
  test('is none without an amount of vinegar', () => {
    expect(liquid({ food: 'water', amount: '1 cup' })).toBeUndefined();
    expect(liquid({ food: 'vinegar', role: 'acid' })).toBeUndefined();
  });
  // USDA Complete Guide to Home Canning, Guide 6, p. 6-21: both acids in marinated peppers
  test('of marinated peppers has vinegar and lemon juice', () => {
    const found = coveringLiquid(recipeOfId('marinated-peppers') as RecipeRow);
    expect(found).toMatchObject({ vinegar: 2, lemonJuice: 1, acetic: 0.05 });
    expect(vinegarLines(recipeOfId('marinated-peppers') as RecipeRow)).toHaveLength(1);
  });
});
