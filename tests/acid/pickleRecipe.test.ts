import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkPickleLiquid, pickleRecipe } from '../../src/acid/index';
import { RECIPES } from '../../src/acid/tables';
import { expectError } from '../helpers/errors';

const canned = RECIPES.map(({ recipe }) => recipe).filter((recipe) => recipe !== 'fermented dill pickles');

test('a recipe of several batches keeps its proportions', () => {
  fc.assert(
    fc.property(fc.constantFrom(...canned), fc.integer({ min: 1, max: 4 }), (name, times) => {
      const once = pickleRecipe({ recipe: name });
      const more = pickleRecipe({ recipe: name, times });
      expect(more.vinegar.value).toBeCloseTo(once.vinegar.value * times, 9);
      expect(more.water.value).toBeCloseTo(once.water.value * times, 9);
      expect(more.acetic).toBe(once.acetic);
      const { vinegar, water, lemonJuice } = more;
      const liquid = { vinegar, water, ...(lemonJuice === undefined ? {} : { lemonJuice }) };
      expect(checkPickleLiquid({ recipe: name, ...liquid, acetic: 0.05, times })).toMatchObject({ verdict: 'kept' });
      const ids = more.cautions.map(({ id }) => id);
      expect(ids.includes('batch-by-batch')).toBe(times > 1);
    }),
  );
});

test('only whole batches, and no more than a kitchen cooks one by one', () => {
  for (const recipe of canned) {
    for (const times of [0.5, 1.5, 5, 50]) expectError(() => pickleRecipe({ recipe, times }), 'OUT_OF_RANGE', 'times');
    expectError(
      () => checkPickleLiquid({ recipe, vinegar: '200 cups', acetic: 0.05, times: 50 }),
      'OUT_OF_RANGE',
      'times',
    );
  }
  // printed for each gallon of crock
  expect(pickleRecipe({ recipe: 'fermented dill pickles', times: 2.5 }).salt).toEqual({ value: 1.25, unit: 'cup' });
  expectError(() => pickleRecipe({ recipe: 'fermented dill pickles', times: 50 }), 'OUT_OF_RANGE', 'times');
});

// Guide 6, pp. 6-9 to 6-34, and the page of the fall garden relish: salt that draws water is drained
test.each([
  ['bread-and-butter pickles', { value: 0.5, unit: 'cup' }],
  ['sweet gherkin pickles', { value: 0.25, unit: 'cup' }],
  ['14-day sweet pickles', { value: 0.25, unit: 'cup' }],
  ['quick sweet pickles', { value: 1 / 3, unit: 'cup' }],
  ['reduced-sodium sliced sweet pickles', { value: 1, unit: 'tbsp' }],
  ['pickled cauliflower', { value: 4, unit: 'tsp' }],
  ['pickled bread-and-butter zucchini', { value: 0.5, unit: 'cup' }],
  ['pickle relish', { value: 0.75, unit: 'cup' }],
  ['green tomato relish', { value: 0.5, unit: 'cup' }],
  ['fall garden relish', { value: 3, unit: 'tbsp' }],
])('the salt of %s is drained and not in the covering liquid', (recipe, salt) => {
  const answer = pickleRecipe({ recipe });
  expect(answer).not.toHaveProperty('salt');
  expect(answer).not.toHaveProperty('saltEachJar');
  expect(answer.drained?.[0]?.salt).toEqual(salt);
});

test('what is drained keeps its own amounts beside the covering liquid', () => {
  expect(pickleRecipe({ recipe: 'quick dill pickles', times: 2 })).toMatchObject({
    salt: { value: 1, unit: 'cup' },
    water: { value: 16, unit: 'cup' },
    drained: [
      {
        salt: { value: 1.5, unit: 'cup' },
        water: { value: 4, unit: 'gallon' },
        time: { low: { value: 12, unit: 'h' }, high: { value: 12, unit: 'h' } },
      },
    ],
  });
  expect(pickleRecipe({ recipe: 'reduced-sodium sliced sweet pickles' })).toMatchObject({
    sugar: { value: 3 },
    drained: [{ vinegar: { value: 1, unit: 'quart' }, sugar: { value: 0.5 } }],
  });
  expect(pickleRecipe({ recipe: 'gherkins' }).drained?.[0]).toMatchObject({ rounds: 2 });
  // salt for each gallon of the water they are boiled in does not grow with the batches
  expect(pickleRecipe({ recipe: 'pickled cauliflower', times: 3 }).drained?.[0]).toMatchObject({
    each: 'gallon',
    salt: { value: 4, unit: 'tsp' },
  });
  expect(pickleRecipe({ recipe: 'pickled bell peppers' })).toMatchObject({
    saltEachJar: { salt: { value: 0.25, unit: 'tsp' }, jar: 'half-pint' },
  });
});

test('names are found as people say them', () => {
  expect(pickleRecipe({ recipe: 'bread and butter pickles' }).recipe).toBe('bread-and-butter pickles');
  expect(pickleRecipe({ recipe: 'dilly beans' }).water).toEqual({ value: 2.5, unit: 'cup' });
  expect(pickleRecipe({ recipe: 'green tomato relish' }).also).toContain('2 tbsp cornstarch, no more');
  expect(pickleRecipe({ recipe: 'fermented dill pickles' }).yields).toBeUndefined();
});

test.each(['pickled cherry peppers', 'pickled cherries', 'pickled eggs', 'pickled squash', 'constructor'])(
  'no other recipe is served for %s',
  (recipe) => {
    expectError(() => pickleRecipe({ recipe }), 'UNKNOWN_NAME', 'recipe');
  },
);

test('a recipe that is not there names those that are', () => {
  try {
    pickleRecipe({ recipe: 'pickled granite' });
    throw new Error('not refused');
  } catch (error) {
    expect((error as { options?: string[] }).options).toEqual(RECIPES.map(({ recipe }) => recipe));
  }
});

test('bad input', () => {
  expectError(() => pickleRecipe({ recipe: 'pickled granite' }), 'UNKNOWN_NAME', 'recipe');
  expectError(() => pickleRecipe({ recipe: 'pickled beets', times: 0 }), 'OUT_OF_RANGE', 'times');
});
