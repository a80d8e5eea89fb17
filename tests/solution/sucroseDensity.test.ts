import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sucroseDensity } from '../../src/solution/index';
import { codeText as errorOf } from '../helpers/errors';

const g = (strength: number, celsius?: number) => {
  const brix = strength > 0 && strength <= 1 ? (`${Number(strength.toFixed(9))} Brix` as const) : strength;
  return sucroseDensity(celsius === undefined ? { brix } : { brix, temperature: { value: celsius, unit: 'degC' } })
    .density.value;
};

test('handbook rows at 20 degC (CRC Handbook, concentrative properties)', () => {
  expect(g(10)).toBeCloseTo(1.0381, 4);
  expect(Math.abs(g(50) - 1.2295)).toBeLessThan(2e-4);
});

test('water at 0 Brix, in air a little lighter', () => {
  expect(g(0)).toBeCloseTo(0.9982, 4);
  expect(sucroseDensity({ brix: 0 }).inAir.value).toBeCloseTo(0.99715, 4);
});

test('the temperature may be in degF', () => {
  expect(sucroseDensity({ brix: 40, temperature: '68 degF' }).density.value).toBeCloseTo(g(40), 12);
});

test('rises with Brix, and in syrup falls with warmth', () => {
  const brix = fc.double({ min: 0, max: 99, noNaN: true });
  fc.assert(fc.property(brix, fc.double({ min: 0, max: 100, noNaN: true }), (b, t) => g(b + 1, t) > g(b, t)));
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 85, noNaN: true }),
      fc.double({ min: 10, max: 95, noNaN: true }),
      (b, t) => g(b, t + 5) < g(b, t),
    ),
  );
});

test('outside the published range there is no answer', () => {
  expect(errorOf(() => sucroseDensity({ brix: -1 }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => sucroseDensity({ brix: 100.1 }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => sucroseDensity({ brix: Number.NaN }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => sucroseDensity({ brix: 20, temperature: '101 degC' }))).toBe('OUT_OF_RANGE temperature');
  expect(errorOf(() => sucroseDensity({ brix: '20' as never }))).toBe('WRONG_TYPE brix');
  expect(errorOf(() => sucroseDensity({} as never))).toBe('MISSING brix');
});
