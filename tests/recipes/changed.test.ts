import { describe, expect, test } from 'vitest';
import { readFood } from '../../src/foods/fields';
import { changed, isLeftOut, isStrong } from '../../src/recipes/changed';
import { recipeOfId } from '../../src/recipes/rows/rows';
import type { IngredientRow, RecipeRow } from '../../src/recipes/rows/tables';

const butter = recipeOfId('apple-butter') as RecipeRow;
const foods = (...names: string[]) => names.map((name) => readFood(name));

describe('a recipe that a cook means to change', () => {
  test('is as printed where nothing changes', () => {
    expect(changed(butter, {})).toBeUndefined();
    expect(changed(butter, { without: [] })).toBeUndefined();
  });

  test('takes vinegar of five percent and no weaker', () => {
    expect(changed(butter, { acetic: 0.05 })).toBeUndefined();
    expect(changed(butter, { acetic: 0.0499 })).toMatchObject({ known: false, reason: { code: 'weak-vinegar' } });
    expect(changed(butter, { acetic: 0.04 })?.reason.text).toContain('4 %');
    expect(changed(butter, { acetic: 0.04 })?.cautions[0]).toMatchObject({ severity: 'danger' });
  });

  test('asks the strength that its page prints where that is more', () => {
    const strong = butter.ingredients.map((line) => (line.role === 'acid' ? { ...line, acetic: 0.06 } : line));
    expect(changed({ ...butter, ingredients: strong }, { acetic: 0.05 })).toMatchObject({ known: false });
    expect(changed({ ...butter, ingredients: strong }, { acetic: 0.06 })).toBeUndefined();
  });

  test('has no strength where it has no vinegar', () => {
    expect(() => changed(recipeOfId('peach-jam-no-added-pectin') as RecipeRow, { acetic: 0.05 })).toThrow(/no vinegar/);
  });

  test('may do without its sugar where that is for taste, not without its acid', () => {
    expect(changed(butter, { without: foods('sugar', 'brown sugar') })).toBeUndefined();
    expect(changed(butter, { without: foods('sugar', 'vinegar') })).toMatchObject({
      known: false,
      reason: { code: 'kept-ingredient' },
    });
    expect(changed(butter, { without: foods('vinegar') })?.instead.length).toBeGreaterThan(0);
  });

  test('cannot do without what it does not hold', () => {
    expect(() => changed(butter, { without: foods('sugar', 'butter') })).toThrow(/without\[1\]/);
  });

  test('says the weak vinegar first', () => {
    expect(changed(butter, { acetic: 0.04, without: foods('vinegar') })?.reason.code).toBe('weak-vinegar');
  });
});

test('a line is left out by its food, not by the words of its page', () => {
  expect(isLeftOut({ food: 'sugar', role: 'sugar' } as IngredientRow, foods('sugar'))).toBe(true);
  expect(isLeftOut({ item: 'sugar', role: 'sugar' } as IngredientRow, foods('sugar'))).toBe(false);
  expect(isLeftOut({ food: 'sugar', role: 'sugar' } as IngredientRow)).toBe(false);
});

test.each([
  [undefined, false],
  [0.05, false],
  [0.0505, false],
  [0.06, true],
])('vinegar of %s is strong: %s', (acetic, strong) => {
  expect(isStrong(acetic)).toBe(strong);
});
