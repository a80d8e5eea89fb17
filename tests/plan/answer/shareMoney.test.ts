import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shareMoney } from '../../../src/plan/answer/shareMoney';

test('three equal shares of 10.00: the odd cent goes to the first', () => {
  expect(shareMoney(10, [1, 1, 1])).toEqual([3.34, 3.33, 3.33]);
});
test('the cents left go to the largest remainders', () => {
  // 1.00 by 5, 3, 1 of 9: 55.55, 33.33, 11.11 cents
  expect(shareMoney(1, [5, 3, 1])).toEqual([0.56, 0.33, 0.11]);
});
test('nothing to share by', () => expect(shareMoney(3, [0, 0])).toEqual([0, 0]));
test('shares sum to the cent and none is off by a cent or more', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 1e8 }),
      fc.array(fc.double({ min: 0, max: 1e4, noNaN: true }), { minLength: 1, maxLength: 12 }),
      (cents, weights) => {
        const total = weights.reduce((sum, weight) => sum + weight, 0);
        fc.pre(total > 1e-6);
        const shares = shareMoney(cents / 100, weights).map((share) => Math.round(share * 100));
        expect(shares.reduce((sum, share) => sum + share, 0)).toBe(cents);
        shares.forEach((share, index) => {
          expect(Math.abs(share - (cents * (weights[index] as number)) / total)).toBeLessThanOrEqual(1 + 1e-6);
        });
      },
    ),
  );
});
