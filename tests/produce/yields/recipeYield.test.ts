import { describe, expect, test } from 'vitest';
import { formName, nameOf } from '../../../src/foods/tables';
import * as produce from '../../../src/produce/index';
import { recipeRows } from '../../../src/produce/yields/tables';
import { known, offered } from '../../helpers/known';

const recipeYield = (input: Parameters<typeof produce.recipeYield>[0]) => known(produce.recipeYield(input));
const pieFilling = (input: Parameters<typeof produce.pieFilling>[0]) => known(produce.pieFilling(input));

describe('recipe yield', () => {
  test('every printed batch is reached by its name', () => {
    for (const { food, form, printed } of recipeRows) {
      const asked = { food: nameOf(food as string), ...(form === undefined ? {} : { form: formName(form) }) };
      const { jars, name } = recipeYield(asked);
      expect(jars.low).toBeLessThanOrEqual(jars.high);
      expect(name).toBe(printed);
    }
    expect(recipeRows).toHaveLength(28);
  });

  test('copies that disagree about the jar name none', () => {
    const chutney = recipeYield({ food: 'mango chutney' });
    expect(chutney.jar).toBeUndefined();
    expect(chutney.cautions.map(({ id }) => id)).toContain('copies-disagree-on-yield');
    expect(recipeYield({ food: 'tomato ketchup' })).toMatchObject({ jar: 'pint', reduction: 'volume halved' });
  });

  test('several batches of one food are offered, and so are all where there is none', () => {
    const salsa = produce.recipeYield({ food: 'salsa' });
    expect(salsa).toMatchObject({ known: false, reason: { code: 'several batches' } });
    expect(offered(salsa)).toContain('chile salsa');
    expect(offered(produce.recipeYield({ food: 'pawpaw' }))).toHaveLength(28);
  });
});

describe('pie filling', () => {
  const amount = (food: string, quarts: number, ingredient: string) =>
    pieFilling({ food, quarts }).ingredients.find((one) => one.ingredient === ingredient)?.amount;

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
    expect(produce.pieFilling({ food: 'rhubarb', quarts: 1 }).known).toBe(false);
    expect(pieFilling({ food: 'sour cherries', quarts: 1 }).cautions.map(({ id }) => id)).toContain('tested-only');
  });
});
