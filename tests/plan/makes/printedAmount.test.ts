import { expect, test } from 'vitest';
import { printedAmount } from '../../../src/plan/makes/printedAmount';
import type { IngredientRow } from '../../../src/recipes/rows/tables';

test.each([
  [{ amount: '1/2 cup' }, '1/2 cup in one batch'],
  [{ amount: '1/4 cup', most: '1/2 cup' }, '1/4 cup to 1/2 cup in one batch'],
  [{ count: 3, counted: 'cloves' }, '3 cloves in one batch'],
  [{ amount: '1/8 cup', per: { amount: '1 qt', of: 'ready' } }, '1/8 cup to 1 qt prepared'],
  [{ amount: '1/2 cup', per: { amount: '8 qt', of: 'pot' } }, '1/2 cup to a pot of 8 qt'],
  [{}, ''],
] as const)('%j', (line, text) => {
  expect(printedAmount({ role: 'other', ...line } as IngredientRow)).toBe(text);
});
