import { expect, test } from 'vitest';
import { canningRules } from '../../src/process/index';
import { convert } from '../../src/quantity/index';

test('3 g of ascorbic acid to the gallon in every printed measure, and its half and quarter', () => {
  // worked example of the reference: half a gallon takes three 500 mg tablets, 1.5 g
  const { rules: solutions, basis, cautions } = canningRules({ topic: 'holding cut fruit' });
  expect(basis).toHaveLength(solutions.length);
  expect(cautions[0]?.id).toBe('holding-is-not-acid');
  const strengths = solutions
    .filter(({ text, grams, water }) => grams !== undefined && water !== undefined && !text.startsWith('direct'))
    .map(({ grams = 0, water }) => grams / convert(water as '1 gallon', 'gallon').value);
  expect(strengths).toEqual([3, 3, 3, 3]);
  const tablets = solutions.find(({ unit }) => unit === 'tablet of 500 mg');
  expect((tablets?.low ?? 0) / 2).toBe(3);
});
