import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StillroomError } from '../../src/errors/StillroomError';
import { RECIPES, recipeOfId } from '../../src/recipes/rows/rows';
import type { RecipeRow } from '../../src/recipes/rows/tables';
import { batchesHere, sizeOf, wholeOnly } from '../../src/recipes/scale';

const row = (batch: RecipeRow['batch']): RecipeRow => ({ ...(recipeOfId('apple-butter') as RecipeRow), batch });
const errorOf = (run: () => unknown): Partial<StillroomError> => {
  try {
    run();
  } catch (error) {
    return error as StillroomError;
  }
  return {};
};

describe('the size of a recipe', () => {
  test.each([
    ['one batch at a time', true],
    ['whole batches', true],
    ['may be doubled', true],
    ['any size', false],
    ['by the container', false],
    ['not printed', false],
  ] as const)('%s: only whole batches is %s', (scale, whole) => {
    expect(wholeOnly({ scale })).toBe(whole);
    expect(wholeOnly({ scale, whole: true })).toBe(true);
  });

  test('is pot by pot where one batch is cooked at a time', () => {
    expect(sizeOf(row({ scale: 'one batch at a time' }), 3, 'batches')).toEqual({ batches: 3, times: 1 });
  });

  test('is one pot of two where a page lets it be doubled, and pot by pot above', () => {
    const doubled = row({ scale: 'may be doubled' });
    expect(sizeOf(doubled, 2, 'batches')).toEqual({ batches: 2, times: 2 });
    expect(sizeOf(doubled, 3, 'batches')).toEqual({ batches: 3, times: 1 });
  });

  test('is any number in one pot where the page sets no limit', () => {
    expect(sizeOf(row({ scale: 'any size' }), 2.5, 'batches')).toEqual({ batches: 2.5, times: 2.5 });
  });

  test('is refused in parts, and above the most, at its path', () => {
    expect(errorOf(() => sizeOf(row({ scale: 'whole batches' }), 1.5, 'batches'))).toMatchObject({
      code: 'OUT_OF_RANGE',
      path: 'batches',
      given: 1.5,
    });
    expect(errorOf(() => sizeOf(row({ scale: 'any size', most: 4 }), 4.1, 'batches')).message).toContain('at most 4');
    expect(sizeOf(row({ scale: 'any size', most: 4 }), 4, 'batches').batches).toBe(4);
  });

  test('of what there is leaves parts of a batch over, but not by the last digit of a double', () => {
    expect(batchesHere({ scale: 'whole batches' }, 2.99)).toBe(2);
    expect(batchesHere({ scale: 'whole batches' }, 3 - 1e-12)).toBe(3);
    expect(batchesHere({ scale: 'whole batches' }, 0.9)).toBe(0);
    expect(batchesHere({ scale: 'any size' }, 2.99)).toBe(2.99);
    expect(batchesHere({ scale: 'any size', most: 2 }, 2.99)).toBe(2);
  });

  test('that food makes here is always one that may be asked for', () => {
    fc.assert(
      fc.property(fc.constantFrom(...RECIPES), fc.double({ min: 0.01, max: 50, noNaN: true }), (recipe, found) => {
        const here = batchesHere(recipe.batch, found);
        expect(here).toBeLessThanOrEqual(found + 1e-9);
        if (here > 0) expect(sizeOf(recipe, here, 'batches').batches).toBe(here);
      }),
    );
  });
});
