import { expect, test } from 'vitest';
import { scaleJamRecipe } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

const reasonOf = (answer: ReturnType<typeof scaleJamRecipe>) => ('known' in answer ? answer.reason.text : 'scaled');

test('juice without added pectin: up to 8 cups in a pot, no more', () => {
  const apple = { food: 'apple', product: 'jelly', pectin: 'none' } as const;
  const double = scaleJamRecipe({ ...apple, times: 2 });
  expect('batch' in double && double.batch.sugar.low.value).toBe(6);
  expect(reasonOf(scaleJamRecipe({ ...apple, times: 2.01 }))).toMatch(/8 that set reliably/);
  expect(scaleJamRecipe({ ...apple, times: 0.5 })).toMatchObject({
    batch: { fruit: { low: { value: 2 } } },
  });
});

test('everything else is cooked as printed', () => {
  const strawberry = { food: 'strawberry', product: 'jam', pectin: 'powdered' } as const;
  expect(scaleJamRecipe({ ...strawberry, times: 1 })).toHaveProperty('batches', 1);
  expect(scaleJamRecipe({ ...strawberry, times: 3 })).toMatchObject({
    known: false,
    instead: [{ text: 'Cook 3 separate batches.' }],
  });
  expect(reasonOf(scaleJamRecipe({ ...strawberry, times: 0.5 }))).toMatch(/packet/);
  expect(scaleJamRecipe({ food: 'peach', product: 'jam', pectin: 'none', times: 0.5 })).toHaveProperty('batches', 1);
  expect(scaleJamRecipe({ food: 'peach', product: 'jam', pectin: 'none', times: 1.5 })).toMatchObject({ known: false });
});

test('jars wanted come in separate batches, counted on the printed low yield', () => {
  const answer = scaleJamRecipe({ food: 'peach', product: 'jam', pectin: 'none', halfPints: 19 });
  expect(answer).toMatchObject({
    batches: 4,
    total: { sugar: { low: { value: 16 }, high: { value: 20 } } },
  });
});

test('recipes that are not sure are not scaled', () => {
  expect(reasonOf(scaleJamRecipe({ food: 'mayhaw', product: 'jelly', pectin: 'none', times: 1 }))).toMatch(/recalled/);
  expect(reasonOf(scaleJamRecipe({ food: 'strawberry', product: 'preserves', pectin: 'liquid', times: 1 }))).toMatch(
    /contradict/,
  );
  expect(reasonOf(scaleJamRecipe({ food: 'blackberry', product: 'jelly', pectin: 'none', halfPints: 8 }))).toMatch(
    /no yield/,
  );
  expect(errorOf(() => scaleJamRecipe({ food: 'peach', product: 'jam', pectin: 'none' }))).toBe('MISSING times');
  expect(errorOf(() => scaleJamRecipe({ food: 'peach', product: 'jam', pectin: 'none', times: 1, halfPints: 6 }))).toBe(
    'CONTRADICTION halfPints',
  );
  expect(errorOf(() => scaleJamRecipe({ food: 'peach', product: 'jam', pectin: 'none', times: 0 }))).toBe(
    'OUT_OF_RANGE times',
  );
});
