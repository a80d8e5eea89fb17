import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { valueIn } from '../../src/quantity/scale';
import type { Quantity } from '../../src/quantity/types';
import { type Recipe, recipe } from '../../src/recipes/recipe';
import { RECIPES } from '../../src/recipes/rows/rows';

const made = (input: Parameters<typeof recipe>[0]): Recipe => {
  const found = recipe(input);
  if (!('ingredients' in found)) throw new Error(found.reason.text);
  return found;
};
const lineOf = ({ ingredients }: Recipe, food: string) => ingredients.find((line) => line.food === food);
const ml = (amount: unknown): number => valueIn(amount as Quantity<'volume'>, 'mL');

describe('a recipe', () => {
  test.each(RECIPES.map(({ id }) => [id]))('%s is answered whole by its id', (id) => {
    const found = made({ recipe: id });
    expect(found.recipe).toBe(id);
    expect(found.scope.length).toBeGreaterThan(0);
    expect(found.keeps.length).toBeGreaterThan(0);
    for (const { text } of found.steps) expect(text).toMatch(/^[A-Z].*\.$/);
  });

  // USDA Complete Guide to Home Canning, Guide 2, p. 2-6: 8 lb apples, 2 cups vinegar, 8 to 9 pints
  test('is scaled by what there is', () => {
    const butter = made({ recipe: 'apple butter', raw: '40 lb' });
    expect(butter.batches).toBe(5);
    expect(lineOf(butter, 'vinegar')?.amount).toEqual({ value: 10, unit: 'cup' });
    expect(butter.yields).toEqual([{ jar: 'pint', low: 40, high: 45 }]);
  });

  test('says spoons and grams together', () => {
    expect(lineOf(made({ recipe: 'apple butter' }), 'sugar')).toMatchObject({
      amount: { unit: 'cup' },
      or: { unit: 'g' },
    });
  });

  test('of jam is made in whole batches, pot by pot', () => {
    const jam = made({ recipe: 'peach-jam-powdered-pectin', batches: 3 });
    expect(jam).toMatchObject({ batches: 3, pots: 3 });
    const one = made({ recipe: 'peach-jam-powdered-pectin' });
    expect(jam.ingredients).toEqual(one.ingredients);
    expect(() => recipe({ recipe: 'peach-jam-powdered-pectin', batches: 0.5 })).toThrow(/whole batches/);
  });

  test('is refused for a food that its page does not name', () => {
    expect(() => recipe({ recipe: 'apple butter', food: 'pear' })).toThrow(/apple butter/);
  });

  test('has one amount at a time', () => {
    expect(() => recipe({ recipe: 'apple butter', batches: 2, raw: '8 lb' })).toThrow(/one of/);
  });

  test('of a name that is none says the nearest', () => {
    expect(() => recipe({ recipe: 'aple butter' })).toThrow(/apple/);
  });

  const acid = RECIPES.filter(
    ({ batch, ingredients }) =>
      ['any size', 'not printed', 'by the container'].includes(batch.scale) &&
      ingredients.some(({ role, amount }) => role === 'acid' && amount !== undefined),
  );
  test('scaled in any way it never has less acid, nor more water beside it, than printed', () => {
    expect(acid.length).toBeGreaterThan(20);
    fc.assert(
      fc.property(fc.constantFrom(...acid), fc.double({ min: 0.3, max: 12, noNaN: true }), ({ id }, batches) => {
        const one = made({ recipe: id });
        const many = made({ recipe: id, batches });
        one.ingredients.forEach((line, index) => {
          const scaled = many.ingredients[index];
          if (line.role === 'acid' && line.amount !== undefined && line.per === undefined)
            expect(ml(scaled?.amount)).toBeGreaterThanOrEqual(ml(line.amount) * batches * (1 - 1e-8));
        });
      }),
      { numRuns: 200 },
    );
  });
});
