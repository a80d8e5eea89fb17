import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brixFrom, refractiveIndex } from '../../src/solution/index';
import { codeText as errorOf } from '../helpers/errors';

test('ICUMSA 1974: 10 % is 1.34782, and midway it is midway', () => {
  expect(refractiveIndex({ brix: 10, temperature: '20 degC' }).refractiveIndex).toBe(1.34782);
  expect(refractiveIndex({ brix: 5.8, temperature: '20 degC' }).refractiveIndex).toBeCloseTo(1.341452, 9);
});

test('a warm sample bends light less', () => {
  const warm = refractiveIndex({ brix: 62.36, temperature: '25 degC' }).refractiveIndex;
  // 62.36 Brix reads 62 at 25 degC
  expect(warm).toBeCloseTo(refractiveIndex({ brix: 62, temperature: '20 degC' }).refractiveIndex, 6);
  expect(refractiveIndex({ brix: 30, temperature: '25 degC' }).basis.length).toBe(2);
});

test('there and back, at 20 degC and off it', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 12, max: 70, noNaN: true }),
      fc.double({ min: 15, max: 30, noNaN: true }),
      (brix, celsius) => {
        const temperature = { value: celsius, unit: 'degC' } as const;
        const { refractiveIndex: index } = refractiveIndex({ brix, temperature });
        expect(brixFrom({ refractiveIndex: index, temperature }).brix).toBeCloseTo(brix, 4);
      },
    ),
  );
});

test('outside the tables', () => {
  expect(errorOf(() => refractiveIndex({ brix: 50 } as never))).toBe('MISSING temperature');
  expect(errorOf(() => refractiveIndex({ brix: 96, temperature: '20 degC' }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => refractiveIndex({ brix: 50, temperature: '35 degC' }))).toBe('OUT_OF_RANGE temperature');
  expect(errorOf(() => refractiveIndex({ brix: 2, temperature: '25 degC' }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => brixFrom({ refractiveIndex: 1.3 }))).toBe('OUT_OF_RANGE refractiveIndex');
  expect(errorOf(() => brixFrom({ refractiveIndex: 1.334, temperature: '12 degC' }))).toBe(
    'OUT_OF_RANGE refractiveIndex',
  );
});
