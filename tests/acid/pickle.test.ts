import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkPickleLiquid, pickleRecipe, pickleRecipes } from '../../src/acid/index';
import { expectError } from '../helpers/errors';

const canned = pickleRecipes().filter((recipe) => recipe !== 'fermented dill pickles');

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

test('the verdict on vinegar and water', () => {
  const check = (vinegar: `${number} cups`, water: `${number} cups`, acetic: `${number} %`, times?: number) =>
    checkPickleLiquid({ recipe: 'pickled beets', vinegar, water, acetic, ...(times === undefined ? {} : { times }) });
  expect(check('4 cups', '2 cups', '5 %')).toMatchObject({ verdict: 'kept', waterToVinegar: 0.5 });
  expect(check('4 cups', '3 cups', '5 %')).toMatchObject({ verdict: 'too weak', mostWater: { value: 2, unit: 'cup' } });
  expect(check('4 cups', '1 cups', '5 %')).toMatchObject({ verdict: 'stronger' });
  expect(check('4 cups', '2 cups', '7 %')).toMatchObject({ verdict: 'stronger' });
  expect(check('4 cups', '2 cups', '5 %', 2)).toMatchObject({ verdict: 'too little' });
  expect(check('2 cups', '2 cups', '5 %', 2)).toMatchObject({ verdict: 'too weak' });
  expect(checkPickleLiquid({ recipe: 'corn relish', vinegar: '5 cups', acetic: '5 %' })).toMatchObject({
    verdict: 'kept',
    mostWater: { value: 0, unit: 'cup' },
  });
});

test('strong vinegar buys no water', () => {
  const check = (recipe: string, vinegar: `${number} cups`, acetic: `${number} %`, water: `${number} cups`) =>
    checkPickleLiquid({ recipe, vinegar, acetic, water });
  // printed without water
  const answer = check('bread-and-butter pickles', '2 cups', '10 %', '2 cups');
  expect(answer).toMatchObject({ verdict: 'too much water', mostWater: { value: 0, unit: 'cup' } });
  expect(answer.cautions.map(({ id }) => id)).toContain('stronger-vinegar');
  expect(check('pickled zucchini', '4 cups', '6 %', '0.8 cups')).toMatchObject({ verdict: 'too much water' });
  expect(check('pickled beets', '4 cups', '7 %', '3 cups')).toMatchObject({
    verdict: 'too much water',
    mostWater: { value: 2, unit: 'cup' },
  });
  // and no less vinegar
  expect(
    checkPickleLiquid({ recipe: 'bread-and-butter pickles', vinegar: '2 cups', acetic: '10 %', times: 1 }),
  ).toMatchObject({ verdict: 'too little' });
  for (const recipe of canned) {
    const { vinegar, water } = pickleRecipe({ recipe });
    for (const acetic of [0.05, 0.06, 0.1, 0.3]) {
      const more = { value: water.value + 0.1, unit: 'cup' as const };
      const { verdict } = checkPickleLiquid({ recipe, vinegar, acetic, water: more }) as { verdict: string };
      expect(['too weak', 'too much water'], recipe).toContain(verdict);
    }
  }
});

// Guide 6, p. 6-14: 1/2 cup of vinegar and 1/4 cup of bottled lemon juice
test('lemon juice printed beside the vinegar must be there', () => {
  const check = (lemonJuice?: `${number} cup`) =>
    checkPickleLiquid({
      recipe: 'three-bean salad',
      vinegar: '0.5 cup',
      acetic: 0.05,
      water: '1.25 cup',
      ...(lemonJuice === undefined ? {} : { lemonJuice }),
    });
  expect(check()).toMatchObject({ verdict: 'too little lemon juice', leastLemonJuice: { value: 0.25, unit: 'cup' } });
  expect(check('0.2 cup')).toMatchObject({ verdict: 'too little lemon juice' });
  expect(check('0.25 cup')).toMatchObject({ verdict: 'kept' });
  expect(pickleRecipe({ recipe: 'three-bean salad' })).toMatchObject({
    vinegar: { value: 0.5 },
    lemonJuice: { value: 0.25 },
  });
});

test('a ferment is not judged by its vinegar', () => {
  expect(
    checkPickleLiquid({ recipe: 'fermented dill pickles', vinegar: '0.25 cup', acetic: 0.05, water: '8 cups' }),
  ).toMatchObject({ tested: false, instead: expect.stringContaining('brineStrength') });
});

test.each(['pickled cherry peppers', 'pickled cherries', 'pickled eggs', 'pickled squash', 'constructor'])(
  'no other recipe is served for %s',
  (recipe) => {
    expectError(() => pickleRecipe({ recipe }), 'UNKNOWN_NAME', 'recipe');
  },
);

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
