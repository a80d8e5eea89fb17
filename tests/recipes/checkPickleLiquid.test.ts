import { expect, test } from 'vitest';
import { type CoveringLiquid, coveringLiquid } from '../../src/recipes/coveringLiquid';
import { checkPickleLiquid } from '../../src/recipes/index';
import { RECIPES } from '../../src/recipes/rows/rows';
import { expectError } from '../helpers/errors';

/** Every recipe with vinegar in its covering liquid, the ferments apart. */
const canned = RECIPES.filter((row) => row.makes !== 'ferment' && coveringLiquid(row) !== undefined);

test('the verdict on vinegar and water', () => {
  const check = (vinegar: `${number} cups`, water: `${number} cups`, acetic: `${number} %`, batches?: number) =>
    checkPickleLiquid({
      recipe: 'pickled beets',
      vinegar,
      waterVolume: water,
      acetic,
      ...(batches === undefined ? {} : { batches }),
    });
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
    checkPickleLiquid({ recipe, vinegar, acetic, waterVolume: water });
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
    checkPickleLiquid({ recipe: 'bread-and-butter pickles', vinegar: '2 cups', acetic: '10 %', batches: 1 }),
  ).toMatchObject({ verdict: 'too little' });
  expect(canned.length).toBeGreaterThan(60);
  for (const row of canned) {
    const { id: recipe } = row;
    const printed = coveringLiquid(row) as CoveringLiquid;
    const [vinegar, water] = [printed.vinegar, printed.water].map((value) => ({ value, unit: 'cup' as const })) as [
      { value: number; unit: 'cup' },
      { value: number; unit: 'cup' },
    ];
    for (const acetic of [0.05, 0.06, 0.1, 0.3]) {
      const more = { value: water.value + 0.1, unit: 'cup' as const };
      const { verdict } = checkPickleLiquid({ recipe, vinegar, acetic, waterVolume: more }) as { verdict: string };
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
      waterVolume: '1.25 cup',
      ...(lemonJuice === undefined ? {} : { lemonJuice }),
    });
  expect(check()).toMatchObject({ verdict: 'too little lemon juice', leastLemonJuice: { value: 0.25, unit: 'cup' } });
  expect(check('0.2 cup')).toMatchObject({ verdict: 'too little lemon juice' });
  expect(check('0.25 cup')).toMatchObject({ verdict: 'kept' });
});

test('the covering liquid of each recipe, as often as it is made, is kept', () => {
  for (const row of canned) {
    const printed = coveringLiquid(row) as CoveringLiquid;
    const cups = (value: number) => ({ value: value * 2, unit: 'cup' as const });
    const { vinegar, water, lemonJuice } = printed;
    expect(
      checkPickleLiquid({
        recipe: row.id,
        vinegar: cups(vinegar),
        waterVolume: cups(water),
        lemonJuice: cups(lemonJuice),
        acetic: 0.05,
        batches: 2,
      }),
      row.id,
    ).toMatchObject({ verdict: 'kept' });
  }
});

test('vinegar does not take the place of lemon juice', () => {
  const answer = checkPickleLiquid({ recipe: 'tomatillo green salsa', vinegar: '1 cup', acetic: '5 %' });
  expect(answer).toMatchObject({ known: false, reason: { code: 'no-vinegar' } });
});

test('batches are those that the recipe may have', () => {
  for (const batches of [0.5, 1.5, 5, 50])
    expectError(
      () => checkPickleLiquid({ recipe: 'pickled beets', vinegar: '200 cups', acetic: 0.05, batches }),
      'OUT_OF_RANGE',
      'batches',
    );
});

test('a ferment is not judged by its vinegar', () => {
  expect(
    checkPickleLiquid({ recipe: 'fermented dill pickles', vinegar: '0.25 cup', acetic: 0.05, waterVolume: '8 cups' }),
  ).toMatchObject({
    known: false,
    reason: { code: 'a-ferment' },
    instead: [{ text: expect.stringContaining('brine') }],
  });
});

test('vinegar below 5 % is refused, with the reason', () => {
  const refusal = checkPickleLiquid({ recipe: 'pickled beets', vinegar: '8 cups', acetic: '4 %' });
  expect(refusal).toMatchObject({
    known: false,
    reason: { code: 'weak-vinegar', text: expect.stringContaining('4 %') },
  });
  expect(refusal.cautions.map(({ id }) => id)).toContain('vinegar-below-five');
  expect(checkPickleLiquid({ recipe: 'pickled beets', vinegar: '8 cups', acetic: '4.99 %' })).toMatchObject({
    known: false,
  });
});

test('bad input', () => {
  expectError(
    () => checkPickleLiquid({ recipe: 'pickled beets', vinegar: '-1 cup', acetic: 0.05 }),
    'OUT_OF_RANGE',
    'vinegar',
  );
  expectError(
    () => checkPickleLiquid({ recipe: 'pickled beets', vinegar: '1 cup', acetic: 0.05, waterVolume: '-1 cup' }),
    'OUT_OF_RANGE',
    'waterVolume',
  );
});
