import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batchesOf, mainLine } from '../../src/recipes/batchesOf';
import { recipeOfId } from '../../src/recipes/rows/rows';
import type { RecipeRow } from '../../src/recipes/rows/tables';

const rowOf = (id: string): RecipeRow => {
  const row = recipeOfId(id);
  if (row === undefined) throw new Error(id);
  return row;
};
const apple = { id: 'apple', name: 'apple' };
const bought = (value: number, unit: 'lb' | 'kg') => ({ raw: { kind: 'mass', amount: { value, unit } } }) as const;
const batches = (...args: Parameters<typeof batchesOf>): number => {
  const found = batchesOf(...args);
  if (!found.known) throw new Error(found.reason.text);
  return found.batches;
};

describe('how many batches an amount makes', () => {
  // USDA Complete Guide to Home Canning, Guide 2, p. 2-6: 8 lb of apples
  test('is exact by the printed weight', () => {
    expect(batches(rowOf('apple-butter'), apple, bought(40, 'lb'))).toBe(5);
    expect(batches(rowOf('apple-butter'), apple, bought(2, 'lb'))).toBe(0.25);
  });

  test('is the ratio of two measures of prepared food', () => {
    // Guide 2, p. 2-25: 3 1/2 cups of peaches a quart of filling
    const peach = { id: 'peach', name: 'peach' };
    expect(batches(rowOf('peach-pie-filling'), peach, { ready: { value: 14, unit: 'cup' } })).toBe(4);
  });

  test('is not known by a volume where the page weighs the food', () => {
    const found = batchesOf(rowOf('apple-butter'), apple, { ready: { value: 4, unit: 'quart' } });
    expect(found).toMatchObject({ known: false, reason: { code: 'no printed amount' } });
  });

  test('goes by the printed load where no amount is printed, and then only as bought', () => {
    const row = rowOf('tomato-juice');
    const tomato = { id: 'tomato', name: 'tomato' };
    expect(mainLine(row, 'tomato')).toBeUndefined();
    const load = row.rawNeed?.[0]?.raw;
    expect(load).toBe('23 lb');
    expect(batches(row, tomato, bought(46, 'lb'))).toBe(2);
    expect(batchesOf(row, tomato, { ready: { value: 2, unit: 'kg' } })).toMatchObject({ known: false });
  });

  test('is not known where the page prints neither', () => {
    const row = { ...rowOf('tomato-juice'), rawNeed: undefined } as unknown as RecipeRow;
    expect(batchesOf(row, { id: 'tomato', name: 'tomato' }, bought(5, 'kg'))).toMatchObject({ known: false });
  });

  test('is by the line of the food itself before the line for all foods', () => {
    expect(mainLine(rowOf('green-tomato-pie-filling'), 'tart-apple')?.amount).toBe('3 qt');
    expect(mainLine(rowOf('green-tomato-pie-filling'), 'green-tomato')?.amount).toBe('4 qt');
  });

  test('carries the page that it goes by', () => {
    const found = batchesOf(rowOf('apple-butter'), apple, bought(8, 'lb'));
    expect(found.basis[0]).toMatchObject({ of: 'batches', source: 'usda-cghc-2015' });
  });

  test('is never fewer of more food', () => {
    const grams = fc.integer({ min: 1, max: 200_000 });
    fc.assert(
      fc.property(grams, grams, (one, other) => {
        const of = (mass: number) => batches(rowOf('apple-butter'), apple, bought(mass / 1000, 'kg'));
        expect(of(Math.max(one, other))).toBeGreaterThanOrEqual(of(Math.min(one, other)));
      }),
    );
  });
});
