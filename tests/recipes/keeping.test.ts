import { describe, expect, test } from 'vitest';
import { keepingOf } from '../../src/recipes/keeping';
import { RECIPES } from '../../src/recipes/rows/rows';

describe('how a recipe keeps', () => {
  test('on the shelf where it was processed, and by which process', () => {
    expect(keepingOf({ process: 'apple-butter' })).toEqual({ place: 'shelf', processRecipe: 'apple-butter' });
  });
  test('in its place, without a time where none is printed', () => {
    expect(keepingOf({ place: 'freezer' })).toEqual({ place: 'freezer' });
  });
  test('one printed time is both ends', () => {
    expect(keepingOf({ place: 'refrigerator', time: '4 weeks' })).toEqual({
      place: 'refrigerator',
      low: { value: 4, unit: 'week' },
      high: { value: 4, unit: 'week' },
    });
  });
  test('a range keeps its ends', () => {
    expect(keepingOf({ place: 'refrigerator', time: { low: '17 weeks', high: '26 weeks' } })).toMatchObject({
      low: { value: 17 },
      high: { value: 26 },
    });
  });
  test('nothing keeps on a shelf in jars without a process', () => {
    const jarred = new Set(['jam', 'jelly', 'pickles', 'relish', 'salsa', 'sauce', 'puree', 'ketchup', 'soup']);
    const kept = RECIPES.filter(({ makes }) => jarred.has(makes)).flatMap(({ id, keeps }) =>
      keeps.map((keep) => ({ id, ...keepingOf(keep) })),
    );
    const onShelf = kept.filter(({ place }) => place === 'shelf');
    expect(onShelf.length).toBeGreaterThan(50);
    for (const { id, processRecipe } of onShelf) expect(processRecipe, id).toBeDefined();
  });
});
