import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brineDensity, saltFromDensity } from '../../src/solution/index';
import { codeText as errorOf } from '../helpers/errors';

test('CRC Handbook: 5 % brine is 1.0340 g/mL, water 0.9982', () => {
  expect(brineDensity({ salt: '5 %' }).density.value).toBe(1.034);
  expect(brineDensity({ salt: 0 }).density.value).toBeCloseTo(0.9982, 4);
  expect(brineDensity({ salt: 0 }).specificGravity).toBe(1);
});

test('there and back', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.26, noNaN: true }), (salt) => {
      expect(saltFromDensity({ density: brineDensity({ salt }).density }).salt).toBeCloseTo(salt, 9);
    }),
  );
});

test('beyond saturation', () => {
  expect(errorOf(() => brineDensity({ salt: '30 %' }))).toBe('OUT_OF_RANGE salt');
  expect(errorOf(() => saltFromDensity({ density: '1.3 g/mL' }))).toBe('OUT_OF_RANGE density');
  expect(errorOf(() => saltFromDensity({ density: '0.9 g/mL' }))).toBe('OUT_OF_RANGE density');
});
