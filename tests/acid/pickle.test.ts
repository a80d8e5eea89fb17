import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkPickleLiquid, pickleRecipe, pickleRecipes } from '../../src/acid/index';
import { expectError } from '../helpers/errors';

test('a scaled recipe keeps its proportions', () => {
  const recipe = fc.constantFrom(...pickleRecipes());
  fc.assert(
    fc.property(recipe, fc.double({ min: 0.25, max: 50, noNaN: true }), (name, times) => {
      const once = pickleRecipe({ recipe: name });
      const more = pickleRecipe({ recipe: name, times });
      expect(more.vinegar.value).toBeCloseTo(once.vinegar.value * times, 9);
      expect(more.water.value).toBeCloseTo(once.water.value * times, 9);
      expect(more.acetic).toBe(once.acetic);
      const check = checkPickleLiquid({ recipe: name, vinegar: more.vinegar, water: more.water, acetic: 0.05, times });
      expect(check).toMatchObject({ verdict: 'kept' });
    }),
  );
});

test('names are found as people say them', () => {
  expect(pickleRecipe({ recipe: 'bread and butter pickles' }).recipe).toBe('bread-and-butter pickles');
  expect(pickleRecipe({ recipe: 'dilly beans' }).water).toEqual({ value: 2.5, unit: 'cup' });
  expect(pickleRecipe({ recipe: 'reduced-sodium sliced sweet pickles' })).toMatchObject({ before: expect.any(String) });
  expect(pickleRecipe({ recipe: 'pickle relish' })).toMatchObject({ note: expect.any(String), salt: { value: 0.75 } });
  expect(pickleRecipe({ recipe: 'fermented dill pickles' }).yields).toBeUndefined();
});

test('the verdict on vinegar and water', () => {
  const check = (vinegar: `${number} cups`, water: `${number} cups`, acetic: `${number} %`, times?: number) =>
    checkPickleLiquid({ recipe: 'pickled beets', vinegar, water, acetic, ...(times === undefined ? {} : { times }) });
  expect(check('4 cups', '2 cups', '5 %')).toMatchObject({ verdict: 'kept', waterToVinegar: 0.5 });
  expect(check('4 cups', '3 cups', '5 %')).toMatchObject({ verdict: 'too weak', mostWater: { value: 2, unit: 'cup' } });
  expect(check('4 cups', '1 cups', '5 %')).toMatchObject({ verdict: 'stronger' });
  expect(check('4 cups', '3 cups', '7 %')).toMatchObject({ verdict: 'stronger' });
  expect(check('4 cups', '2 cups', '5 %', 2)).toMatchObject({ verdict: 'too little' });
  expect(check('2 cups', '2 cups', '5 %', 2)).toMatchObject({ verdict: 'too weak' });
  expect(checkPickleLiquid({ recipe: 'corn relish', vinegar: '5 cups', acetic: '5 %' })).toMatchObject({
    verdict: 'kept',
    mostWater: { value: 0, unit: 'cup' },
  });
});

test('vinegar below 5 % is refused, with the reason', () => {
  const refusal = checkPickleLiquid({ recipe: 'pickled beets', vinegar: '8 cups', acetic: '4 %' });
  expect(refusal).toMatchObject({ tested: false, reason: expect.stringContaining('4 %') });
  expect(refusal.cautions.map(({ id }) => id)).toContain('vinegar-below-five');
  expect(checkPickleLiquid({ recipe: 'pickled beets', vinegar: '8 cups', acetic: '4.99 %' })).toMatchObject({
    tested: false,
  });
});

test('bad input', () => {
  expectError(() => pickleRecipe({ recipe: 'pickled granite' }), 'UNKNOWN_NAME', 'recipe');
  expectError(() => pickleRecipe({ recipe: 'pickled beets', times: 0 }), 'OUT_OF_RANGE', 'times');
  expectError(
    () => checkPickleLiquid({ recipe: 'pickled beets', vinegar: '-1 cup', acetic: 0.05 }),
    'OUT_OF_RANGE',
    'vinegar',
  );
  expectError(
    () => checkPickleLiquid({ recipe: 'pickled beets', vinegar: '1 cup', acetic: 0.05, water: '-1 cup' }),
    'OUT_OF_RANGE',
    'water',
  );
});
