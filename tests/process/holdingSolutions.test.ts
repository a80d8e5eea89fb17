import { expect, test } from 'vitest';
import { canningRules } from '../../src/process/index';
import { convert, type Quantity } from '../../src/quantity/index';

test('3 g of ascorbic acid to the gallon in every printed measure, and its half and quarter', () => {
  // worked example of the reference: half a gallon takes three 500 mg tablets, 1.5 g
  const { rules: solutions, basis, cautions } = canningRules({ topic: 'holding cut fruit' });
  expect(basis).toHaveLength(solutions.length);
  expect(cautions[0]?.id).toBe('holding-is-not-acid');
  const strengths = solutions
    .filter(
      ({ text, ascorbicAcid, waterVolume }) =>
        ascorbicAcid !== undefined && waterVolume !== undefined && !text.startsWith('direct'),
    )
    .map(
      ({ ascorbicAcid, waterVolume }) =>
        (ascorbicAcid?.value ?? 0) / convert(waterVolume as Quantity<'volume'>, 'gallon').value,
    );
  expect(strengths).toEqual([3, 3, 3, 3]);
  const tablets = solutions.find(({ text }) => text === 'vitamin C tablets 500 mg');
  expect((tablets?.tablets ?? 0) / 2).toBe(3);
  expect(tablets).not.toHaveProperty('amount');
});
