import { expect, test } from 'vitest';
import { foods } from '../../src/foods/index';
import { foodRows } from '../../src/foods/tables';
import { thrownBy } from '../helpers/errors';

test('every food of the pantry, or those of one kind', () => {
  expect(foods()).toHaveLength(foodRows.length);
  const fruit = foods({ kind: 'fruit' });
  expect(fruit.length).toBeLessThan(foodRows.length);
  expect(fruit.every(({ kind }) => kind === 'fruit')).toBe(true);
  expect(fruit.map(({ food }) => food)).toContain('peach');
  expect(thrownBy(() => foods({ kind: 'stone' as never }))).toMatchObject({ code: 'UNKNOWN_NAME', path: 'kind' });
});
