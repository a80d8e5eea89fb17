import { expect, test } from 'vitest';
import { jamRecipe, remakeJelly, scaleRecipe } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('apricot jam without added pectin (Guide 7)', () => {
  const { fruit, sugar, lemonJuice, halfPints, cautions } = jamRecipe({
    fruit: 'apricots',
    product: 'jam',
    pectin: 'none',
  });
  expect([fruit.low.value, fruit.high.value, sugar.low.value, lemonJuice?.value]).toEqual([4, 4.5, 4, 2]);
  expect(halfPints).toEqual({ low: 5, high: 6 });
  expect(cautions.map(({ id }) => id)).toContain('acid-for-set');
});

test('a berry finds the row of the berries; packages are weighed', () => {
  expect(jamRecipe({ fruit: 'raspberries', product: 'jam', pectin: 'none' }).name).toBe('berry');
  expect(jamRecipe({ fruit: 'strawberry', product: 'jam', pectin: 'powdered' }).pectinMass).toEqual({
    value: 49.6,
    unit: 'g',
  });
  expect(jamRecipe({ fruit: 'pear-apple', product: 'jam', pectin: 'liquid' }).pectinVolume?.value).toBeCloseTo(
    177.4,
    9,
  );
  expect(jamRecipe({ fruit: 'apple', product: 'jelly', pectin: 'none' })).toMatchObject({
    lemonOptional: true,
    raw: { value: 3, unit: 'lb' },
  });
});

test('a recalled row says so', () => {
  expect(jamRecipe({ fruit: 'mayhaw', product: 'jelly', pectin: 'none' }).cautions.map(({ id }) => id)).toContain(
    'recalled',
  );
});

test('what is not printed is not invented', () => {
  expect(errorOf(() => jamRecipe({ fruit: 'mango', product: 'jam', pectin: 'none' }))).toBe('UNKNOWN_NAME fruit');
  expect(errorOf(() => jamRecipe({ fruit: 'strawberry', product: 'preserves', pectin: 'none' }))).toBe(
    'UNKNOWN_NAME pectin',
  );
});

const reasonOf = (answer: ReturnType<typeof scaleRecipe>) => (answer.tested ? 'scaled' : answer.reason);

test('juice without added pectin: up to 8 cups in a pot, no more', () => {
  const apple = { fruit: 'apple', product: 'jelly', pectin: 'none' } as const;
  const double = scaleRecipe({ ...apple, times: 2 });
  expect(double.tested && double.batch.sugar.low.value).toBe(6);
  expect(reasonOf(scaleRecipe({ ...apple, times: 2.01 }))).toMatch(/8 that set reliably/);
  expect(scaleRecipe({ ...apple, times: 0.5 })).toMatchObject({
    tested: true,
    batch: { fruit: { low: { value: 2 } } },
  });
});

test('everything else is cooked as printed', () => {
  const strawberry = { fruit: 'strawberry', product: 'jam', pectin: 'powdered' } as const;
  expect(scaleRecipe({ ...strawberry, times: 1 }).tested).toBe(true);
  expect(scaleRecipe({ ...strawberry, times: 3 })).toMatchObject({
    tested: false,
    instead: 'Cook 3 separate batches.',
  });
  expect(reasonOf(scaleRecipe({ ...strawberry, times: 0.5 }))).toMatch(/packet/);
  expect(scaleRecipe({ fruit: 'peach', product: 'jam', pectin: 'none', times: 0.5 }).tested).toBe(true);
  expect(scaleRecipe({ fruit: 'peach', product: 'jam', pectin: 'none', times: 1.5 }).tested).toBe(false);
});

test('jars wanted come in separate batches, counted on the printed low yield', () => {
  const answer = scaleRecipe({ fruit: 'peach', product: 'jam', pectin: 'none', halfPints: 19 });
  expect(answer).toMatchObject({
    tested: true,
    batches: 4,
    total: { sugar: { low: { value: 16 }, high: { value: 20 } } },
  });
});

test('recipes that are not sure are not scaled', () => {
  expect(reasonOf(scaleRecipe({ fruit: 'mayhaw', product: 'jelly', pectin: 'none', times: 1 }))).toMatch(/recalled/);
  expect(reasonOf(scaleRecipe({ fruit: 'strawberry', product: 'preserves', pectin: 'liquid', times: 1 }))).toMatch(
    /contradict/,
  );
  expect(reasonOf(scaleRecipe({ fruit: 'blackberry', product: 'jelly', pectin: 'none', halfPints: 8 }))).toMatch(
    /no yield/,
  );
  expect(errorOf(() => scaleRecipe({ fruit: 'peach', product: 'jam', pectin: 'none' }))).toBe('MISSING times');
  expect(errorOf(() => scaleRecipe({ fruit: 'peach', product: 'jam', pectin: 'none', times: 1, halfPints: 6 }))).toBe(
    'CONTRADICTION halfPints',
  );
  expect(errorOf(() => scaleRecipe({ fruit: 'peach', product: 'jam', pectin: 'none', times: 0 }))).toBe(
    'OUT_OF_RANGE times',
  );
});

test('soft jelly again', () => {
  expect(remakeJelly({ jelly: '1 quart', pectin: 'powdered' })).toMatchObject({
    sugar: { value: 0.25, unit: 'cup' },
    pectin: { value: 4, unit: 'tsp' },
    boil: { low: { value: 30, unit: 's' } },
    batches: 1,
  });
  expect(remakeJelly({ jelly: '12 cups', pectin: 'none' })).toMatchObject({ lemonJuice: { value: 6 }, batches: 2 });
  expect(remakeJelly({ jelly: '12 cups', pectin: 'none' }).pectin).toBeUndefined();
  expect(remakeJelly({ jelly: '4 cups', pectin: 'liquid' }).cautions.map(({ id }) => id)).toContain('recalled');
});
