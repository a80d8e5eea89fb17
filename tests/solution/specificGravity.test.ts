import fc from 'fast-check';
import { expect, test } from 'vitest';
import { baume, brixFromBaume, brixFromSpecificGravity, specificGravity } from '../../src/solution/index';
import { codeText as errorOf } from '../helpers/errors';

test('Beet-Sugar Handbook, table A.1: 20 % is 1.08287 and 11.1 degrees Baume', () => {
  expect(specificGravity({ brix: 20 }).specificGravity).toBeCloseTo(1.0829, 4);
  expect(baume({ brix: 20 }).baume).toBeCloseTo(11.1, 1);
});

test('at another temperature against water of that temperature', () => {
  expect(specificGravity({ brix: 0, temperature: '60 degC' }).specificGravity).toBe(1);
  const cold = specificGravity({ brix: 40, temperature: '10 degC' }).specificGravity;
  expect(cold).toBeGreaterThan(specificGravity({ brix: 40, temperature: '60 degC' }).specificGravity);
});

test('there and back', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 99, noNaN: true }), (brix) => {
      expect(brixFromSpecificGravity(pick(specificGravity({ brix }).specificGravity)).brix).toBeCloseTo(brix, 8);
      expect(brixFromBaume({ baume: baume({ brix }).baume }).brix).toBeCloseTo(brix, 8);
    }),
  );
});
const pick = (value: number) => ({ specificGravity: value });

test('the modulus of the Baume scale is said to be recalled', () => {
  expect(baume({ brix: 20 }).basis[0]?.kind).toBe('recalled');
});

test('bad readings', () => {
  expect(errorOf(() => brixFromSpecificGravity({ specificGravity: 0.99 }))).toBe('OUT_OF_RANGE specificGravity');
  expect(errorOf(() => brixFromSpecificGravity({ specificGravity: 2 }))).toBe('OUT_OF_RANGE specificGravity');
  expect(errorOf(() => brixFromBaume({ baume: 60 }))).toBe('OUT_OF_RANGE baume');
});
