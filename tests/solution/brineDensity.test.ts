import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brineDensity } from '../../src/solution/index';
import { codeText as errorOf } from '../helpers/errors';

test('CRC Handbook: 5 % brine is 1.0340 g/mL, water 0.9982', () => {
  expect(brineDensity({ salt: '5 %' }).density.value).toBe(1.034);
  expect(brineDensity({ salt: 0 }).density.value).toBeCloseTo(0.9982, 4);
  expect(brineDensity({ salt: 0 }).specificGravity).toBe(1);
});

test('there and back', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.26, noNaN: true }), (salt) => {
      expect(brineDensity({ density: brineDensity({ salt }).density }).salt).toBeCloseTo(salt, 9);
      const { specificGravity } = brineDensity({ salt });
      expect(brineDensity({ specificGravity }).salt).toBeCloseTo(salt, 9);
    }),
  );
});

test('beyond saturation', () => {
  expect(errorOf(() => brineDensity({ salt: '30 %' }))).toBe('OUT_OF_RANGE salt');
  expect(errorOf(() => brineDensity({ density: '1.3 g/mL' }))).toBe('OUT_OF_RANGE density');
  expect(errorOf(() => brineDensity({ density: '0.9 g/mL' }))).toBe('OUT_OF_RANGE density');
});

test('one way and not two', () => {
  expect(errorOf(() => brineDensity({}))).toBe('MISSING salt');
  expect(errorOf(() => brineDensity({ salt: 0.1, density: '1.07 g/mL' }))).toBe('CONTRADICTION density');
  expect(errorOf(() => brineDensity({ specificGravity: 1.2 }))).toBe('OUT_OF_RANGE specificGravity');
});

test('the basis names what was computed, and what was given', () => {
  const kinds = brineDensity({ density: '1.05 g/mL' }).basis.map(({ of, kind }) => `${of} ${kind}`);
  expect(kinds).toContain('density measured');
  expect(kinds).toContain('salt published');
});
