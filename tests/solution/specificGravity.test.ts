import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brixFrom, specificGravity } from '../../src/solution/index';
import { codeText as errorOf } from '../helpers/errors';

test('Beet-Sugar Handbook, table A.1: 20 % is 1.08287 and 11.1 degrees Baume', () => {
  expect(specificGravity({ brix: 20 }).specificGravity).toBeCloseTo(1.0829, 4);
  expect(specificGravity({ brix: 20 }).baume).toBeCloseTo(11.1, 1);
});

test('at another temperature against water of that temperature', () => {
  expect(specificGravity({ brix: 0, temperature: '60 degC' }).specificGravity).toBe(1);
  const cold = specificGravity({ brix: 40, temperature: '10 degC' }).specificGravity;
  expect(cold).toBeGreaterThan(specificGravity({ brix: 40, temperature: '60 degC' }).specificGravity);
});

test('there and back', () => {
  fc.assert(
    fc.property(fc.double({ min: 1.001, max: 99, noNaN: true }), (brix) => {
      expect(brixFrom({ specificGravity: specificGravity({ brix }).specificGravity }).brix).toBeCloseTo(brix, 8);
      expect(brixFrom({ baume: specificGravity({ brix }).baume }).brix).toBeCloseTo(brix, 8);
    }),
  );
});

test('the modulus of the Baume scale is said to be recalled', () => {
  expect(specificGravity({ brix: 20 }).basis).toContainEqual(
    expect.objectContaining({ of: 'baume', kind: 'recalled', source: 'from-memory' }),
  );
});

test('bad readings', () => {
  expect(errorOf(() => brixFrom({ specificGravity: 0.99 }))).toBe('OUT_OF_RANGE specificGravity');
  expect(errorOf(() => brixFrom({ specificGravity: 2 }))).toBe('OUT_OF_RANGE specificGravity');
  expect(errorOf(() => brixFrom({ baume: 60 }))).toBe('OUT_OF_RANGE baume');
});

test('water is 0 degrees Baume and the scale rises with Brix', () => {
  expect(specificGravity({ brix: 0 }).baume).toBe(0);
  expect(specificGravity({ brix: 60 }).baume).toBeCloseTo(32.5, 1); // Mohos 2010, Appendix 2
  expect(specificGravity({ brix: 60, temperature: '80 degC' }).baume).toBe(specificGravity({ brix: 60 }).baume);
  expect(brixFrom({ baume: 0 }).brix).toBeCloseTo(0, 9);
  expect(errorOf(() => brixFrom({ baume: -1 }))).toBe('OUT_OF_RANGE baume');
});
