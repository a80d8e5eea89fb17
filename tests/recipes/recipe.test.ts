import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nameOf } from '../../src/foods/tables';
import { valueIn } from '../../src/quantity/scale';
import type { Quantity } from '../../src/quantity/types';
import { vinegarLines } from '../../src/recipes/coveringLiquid';
import { type Recipe, recipe } from '../../src/recipes/recipe';
import { RECIPES } from '../../src/recipes/rows/rows';
import { wholeOnly } from '../../src/recipes/scale';

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

  test('of jam is made for so many jars, and says what makes it set', () => {
    // 6 to 7 half-pints a batch
    const peach = made({ recipe: 'peach-jam-no-added-pectin', jars: 20 });
    expect(peach).toMatchObject({ batches: 4, pots: 4, yields: [{ jar: 'half-pint', low: 24, high: 28 }] });
    expect(peach.cautions.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['acid-for-set', 'one-batch', 'boiling-sugar-burns']),
    );
    expect(recipe({ recipe: 'blackberry jelly with powdered pectin', jars: 6 })).toMatchObject({ known: false });
    const pectin = made({ recipe: 'peach-jam-powdered-pectin' }).ingredients.find(({ role }) => role === 'pectin');
    expect(pectin).toMatchObject({ pieces: 1, or: { value: 49.6, unit: 'g' } });
  });

  test('is refused for a food that its page does not name', () => {
    expect(() => recipe({ recipe: 'apple butter', food: 'pear' })).toThrow(/apple butter/);
  });

  test('for a food that is packed raw only has no step of the hot pack', () => {
    const steps = (food: string) => made({ recipe: 'berry-whole', food }).steps;
    expect(steps('raspberry').some(({ pack }) => pack === 'hot')).toBe(false);
    expect(steps('blueberry').some(({ pack }) => pack === 'hot')).toBe(true);
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
      fc.property(fc.constantFrom(...acid), fc.double({ min: 0.3, max: 12, noNaN: true }), ({ id, batch }, any) => {
        const one = made({ recipe: id });
        const most = Math.min(any, batch.most ?? any);
        const batches = batch.whole === true ? Math.ceil(most) : most;
        const many = made({ recipe: id, batches });
        const inPot = batches / many.pots;
        one.ingredients.forEach((line, index) => {
          const scaled = many.ingredients[index];
          if (line.role === 'acid' && line.amount !== undefined && line.amountFor === undefined)
            expect(ml(scaled?.amount)).toBeGreaterThanOrEqual(ml(line.amount) * inPot * (1 - 1e-8));
          // water that thins an acid that must be kept; it is rounded down, and a trace of it stays a trace
          const thins =
            line.role === 'liquid' &&
            !line.neverLess &&
            one.ingredients.some(({ role, neverLess }) => role === 'acid' && neverLess);
          if (thins && line.amount !== undefined && line.amountFor === undefined && inPot >= 1)
            expect(ml(scaled?.amount)).toBeLessThanOrEqual(ml(line.amount) * inPot * (1 + 1e-8));
        });
      }),
      { numRuns: 200 },
    );
  });
});

describe('traps', () => {
  const no = (input: Parameters<typeof recipe>[0]) => {
    const found = recipe(input);
    return 'reason' in found ? found.reason.code : 'served';
  };
  const reasonOf = (input: Parameters<typeof recipe>[0]) => {
    try {
      return `${no(input)}`;
    } catch (error) {
      return `${(error as { code: string; path: string }).code} ${(error as { path: string }).path}`;
    }
  };

  test('half a batch of what sets, or of what no page prints smaller', () => {
    const halves = RECIPES.filter(({ batch }) => wholeOnly(batch));
    expect(halves.length).toBeGreaterThan(70);
    for (const { id } of halves) expect(reasonOf({ recipe: id, batches: 0.5 }), id).toBe('OUT_OF_RANGE batches');
  });

  test('more batches than a day has', () => {
    expect(reasonOf({ recipe: 'pickled beets', batches: 4 })).toBe('served');
    expect(reasonOf({ recipe: 'pickled beets', batches: 5 })).toBe('OUT_OF_RANGE batches');
    expect(reasonOf({ recipe: 'fermented dill pickles', batches: 10 })).toBe('served');
    expect(reasonOf({ recipe: 'fermented dill pickles', batches: 11 })).toBe('OUT_OF_RANGE batches');
    // 7 lb of beets a batch: 40 lb are more than four
    expect(made({ recipe: 'pickled beets', food: 'beet', raw: '40 lb' })).toMatchObject({ batches: 4, pots: 4 });
    const ids = made({ recipe: 'pickled beets', batches: 2 }).cautions.map(({ id }) => id);
    expect(ids).toContain('batch-by-batch');
  });

  // USDA Guide 6, p. 6-4: vinegar of 5 percent acidity; weaker is not made up for by more of it
  test('weak vinegar, in every recipe that holds vinegar', () => {
    const holds = RECIPES.filter((row) => vinegarLines(row).length > 0);
    expect(holds.length).toBeGreaterThan(70);
    for (const { id } of holds) {
      expect(no({ recipe: id, acetic: 0.049 }), id).toBe('weak-vinegar');
      expect(no({ recipe: id, acetic: '4 %' }), id).toBe('weak-vinegar');
      expect(no({ recipe: id, acetic: '5 %' }), id).toBe('served');
    }
    const strong = made({ recipe: 'apple butter', acetic: '10 %' });
    expect(lineOf(strong, 'vinegar')?.amount).toEqual({ value: 2, unit: 'cup' });
    expect(strong.cautions.map(({ id }) => id)).toContain('stronger-vinegar');
    expect(reasonOf({ recipe: 'apple jelly without added pectin', acetic: '5 %' })).toBe('CONTRADICTION acetic');
  });

  test('sugar left out of what sets by it', () => {
    const set = RECIPES.filter(
      ({ makes, ingredients }) =>
        ['jam', 'jelly', 'preserves', 'marmalade'].includes(makes) && ingredients.some(({ food }) => food === 'sugar'),
    );
    expect(set.length).toBeGreaterThan(25);
    for (const { id } of set) expect(no({ recipe: id, without: ['sugar'] }), id).toBe('kept-ingredient');
    const plain = made({ recipe: 'apple butter', without: ['sugar'] });
    expect(lineOf(plain, 'sugar')).toBeUndefined();
    expect(lineOf(plain, 'vinegar')).toBeDefined();
  });

  test('acid is never left out', () => {
    const sour = RECIPES.flatMap(({ id, ingredients }) =>
      ingredients.flatMap(({ role, food, optional }) =>
        role === 'acid' && food !== undefined && optional !== true ? [[id, food] as const] : [],
      ),
    );
    expect(sour.length).toBeGreaterThan(90);
    for (const [id, food] of sour) expect(no({ recipe: id, without: [nameOf(food)] }), id).toBe('kept-ingredient');
    expect(reasonOf({ recipe: 'apple butter', without: ['butter'] })).toBe('CONTRADICTION without[0]');
  });

  test.each([
    ['berry-syrup', 'elderberry'],
    ['peach-halves-or-slices', 'white peach'],
    ['fruit-puree', 'banana'],
    ['apple-butter', 'pumpkin'],
    ['fruit-puree', 'fig'],
    ['peach-jam-no-added-pectin', 'white peach'],
  ])('%s is not for %s', (id, food) => {
    expect(reasonOf({ recipe: id, food })).toBe('CONTRADICTION food');
  });
});

test('yields of jelly are none that a mass balance forbids', () => {
  // 4 cups of juice and 3 to 4 of sugar weigh at most some 1.8 kg: no more than 6 half-pints of jelly at 65 %
  const jellies = RECIPES.filter(
    ({ makes, ingredients }) => makes === 'jelly' && !ingredients.some(({ role }) => role === 'pectin'),
  );
  const filled = jellies.flatMap(({ yields = [] }) => yields.filter(({ jar }) => jar === 'half-pint'));
  expect(filled.length).toBeGreaterThan(2);
  for (const { high } of filled) expect(high).toBeLessThanOrEqual(6);
});
