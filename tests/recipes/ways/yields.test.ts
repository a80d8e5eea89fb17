import fc from 'fast-check';
import { expect, test } from 'vitest';
import { recipeOfId } from '../../../src/recipes/rows/rows';
import type { RecipeRow } from '../../../src/recipes/rows/tables';
import type { Lot } from '../../../src/recipes/ways/lot';
import { jarsOf, yieldsOf } from '../../../src/recipes/ways/yields';

const rowOf = (id: string): RecipeRow => recipeOfId(id) as RecipeRow;
const lot = (food: string, lb: number): Lot =>
  ({ food: { id: food, name: food }, raw: { kind: 'mass', amount: { value: lb, unit: 'lb' } } }) as Lot;

test('each printed weight is for its own jars: 16 lb or 2 1/4 lb for quarts, 10 lb for pints', () => {
  expect(yieldsOf(rowOf('apricot-halves-or-slices'), [lot('apricot', 40)], 2.5)).toEqual([
    { jar: 'quart', low: 17, high: 18 },
    { jar: 'pint', low: 36, high: 36 },
  ]);
});

test('where nothing is weighed, of the first printed weight', () => {
  expect(yieldsOf(rowOf('apricot-halves-or-slices'), [])).toEqual([
    { jar: 'quart', low: 7, high: 8 },
    { jar: 'pint', low: 14, high: 15 },
  ]);
});

test('a batch that is counted by another amount than the jars does not change the jars', () => {
  // the batch is 4 lb to a gallon of brine, the jars are for 14 lb
  expect(yieldsOf(rowOf('fermented-dill-pickles'), [lot('cucumber', 28)], 7)).toEqual([
    { jar: 'quart', low: 14, high: 14 },
    { jar: 'pint', low: 28, high: 28 },
  ]);
});

test('jars that the page counts go by the batch', () => {
  expect(yieldsOf(rowOf('apple-butter'), [lot('apple', 16)], 2)).toEqual([{ jar: 'pint', low: 16, high: 18 }]);
});

test('two lots give what one of their weight gives, and more gives more', () => {
  const row = rowOf('apricot-halves-or-slices');
  fc.assert(
    fc.property(fc.double({ min: 1, max: 500, noNaN: true }), fc.double({ min: 1, max: 500, noNaN: true }), (a, b) => {
      const both = jarsOf(row, [lot('apricot', a), lot('apricot', b)]);
      const one = jarsOf(row, [lot('apricot', a + b)]);
      for (const [at, { low, high }] of both.entries()) {
        expect(low).toBeCloseTo(one[at]?.low as number, 6);
        expect(high).toBeGreaterThan(jarsOf(row, [lot('apricot', a)])[at]?.high as number);
      }
    }),
  );
});
