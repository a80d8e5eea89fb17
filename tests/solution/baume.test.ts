import { expect, test } from 'vitest';
import { baume, brixFromBaume } from '../../src/solution/index';
import { codeText as errorOf } from '../helpers/errors';

test('water is 0 and the scale rises with Brix', () => {
  expect(baume({ brix: 0 }).baume).toBe(0);
  expect(baume({ brix: 60 }).baume).toBeCloseTo(32.5, 1); // Mohos 2010, Appendix 2
  expect(brixFromBaume({ baume: 0 }).brix).toBeCloseTo(0, 9);
});

test('a negative reading is refused', () => {
  expect(errorOf(() => brixFromBaume({ baume: -1 }))).toBe('OUT_OF_RANGE baume');
});
