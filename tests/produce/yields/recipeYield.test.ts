import { describe, expect, test } from 'vitest';
import { pieFilling, recipeYield, recipeYieldNames } from '../../../src/produce/index';
import { thrownBy as errorOf } from '../../helpers/errors';

describe('recipe yield', () => {
  test('every printed batch is reached by its name', () => {
    for (const product of recipeYieldNames()) {
      const { jars, basis } = recipeYield({ product });
      expect(jars.low).toBeLessThanOrEqual(jars.high);
      expect(basis).toHaveLength(1);
    }
    expect(recipeYieldNames()).toHaveLength(28);
  });

  test('copies that disagree about the jar name none', () => {
    const chutney = recipeYield({ product: 'mango chutney' });
    expect(chutney.jar).toBeUndefined();
    expect(chutney.cautions.map(({ id }) => id)).toContain('copies-disagree-on-yield');
    expect(recipeYield({ product: 'tomato ketchup' })).toMatchObject({ jar: 'pint', reduction: 'volume halved' });
  });

  test('an unknown product offers the nearest', () => {
    expect(errorOf(() => recipeYield({ product: 'appel butter' })).nearest).toContain('apple butter');
  });
});

describe('pie filling', () => {
  const amount = (fruit: string, quarts: number, ingredient: string) =>
    pieFilling({ fruit, quarts }).ingredients.find((one) => one.ingredient === ingredient)?.amount;

  test('full loads take the seven-quart column, which is not seven times the other', () => {
    expect(amount('apple', 7, 'fruit')).toEqual({ value: 6, unit: 'quart' }); // 24 cups, against 7 x 3 1/2 = 24 1/2
    expect(amount('apple', 14, 'fruit')).toEqual({ value: 12, unit: 'quart' });
    expect(amount('apple', 6, 'fruit')).toEqual({ value: 21, unit: 'cup' });
  });

  test('quarts left over a load are added in its units', () => {
    expect(amount('apple', 8, 'fruit')?.value).toBeCloseTo(6 + 3.5 / 4, 12);
    expect(amount('peach', 8, 'bottled lemon juice')?.value).toBeCloseTo(1.75 + 0.25, 12);
    // 3 tbsp for each quart, also in a load of seven, whose column prints less
    expect(amount('blueberry', 9, 'bottled lemon juice')).toEqual({ value: 27, unit: 'tbsp' });
  });

  test('only the fruits of the printed formulas', () => {
    expect(errorOf(() => pieFilling({ fruit: 'rhubarb', quarts: 1 })).path).toBe('fruit');
    expect(pieFilling({ fruit: 'sour cherries', quarts: 1 }).cautions.map(({ id }) => id)).toContain('tested-only');
  });
});
