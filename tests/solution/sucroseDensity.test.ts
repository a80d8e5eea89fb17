import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brixFrom, sucroseDensity } from '../../src/solution/index';
import { codeText as errorOf } from '../helpers/errors';

const g = (strength: number, celsius = 20) => {
  const brix = strength > 0 && strength <= 1 ? (`${Number(strength.toFixed(9))} Brix` as const) : strength;
  return sucroseDensity({ brix, temperature: { value: celsius, unit: 'degC' } }).density.value;
};

test('handbook rows at 20 degC (CRC Handbook, concentrative properties)', () => {
  expect(g(10)).toBeCloseTo(1.0381, 4);
  expect(Math.abs(g(50) - 1.2295)).toBeLessThan(2e-4);
});

test('water at 0 Brix, in air a little lighter', () => {
  expect(g(0)).toBeCloseTo(0.9982, 4);
  expect(sucroseDensity({ brix: 0, temperature: '20 degC' }).inAir.value).toBeCloseTo(0.99715, 4);
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
  expect(errorOf(() => sucroseDensity({ brix: -1, temperature: '20 degC' }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => sucroseDensity({ brix: 100.1, temperature: '20 degC' }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => sucroseDensity({ brix: Number.NaN, temperature: '20 degC' }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => sucroseDensity({ brix: 20, temperature: '101 degC' }))).toBe('OUT_OF_RANGE temperature');
  expect(errorOf(() => sucroseDensity({ brix: '20' as never, temperature: '20 degC' }))).toBe('WRONG_TYPE brix');
  expect(errorOf(() => sucroseDensity({} as never))).toBe('MISSING brix');
  expect(errorOf(() => sucroseDensity({ brix: 20 } as never))).toBe('MISSING temperature');
});

test('Beet-Sugar Handbook, table A.1: 20 % is 1.08287 and 11.1 degrees Baume', () => {
  expect(sucroseDensity({ brix: 20, temperature: '20 degC' }).specificGravity).toBeCloseTo(1.0829, 4);
  expect(sucroseDensity({ brix: 20, temperature: '20 degC' }).baume).toBeCloseTo(11.1, 1);
});

test('at another temperature against water of that temperature', () => {
  expect(sucroseDensity({ brix: 0, temperature: '60 degC' }).specificGravity).toBe(1);
  const cold = sucroseDensity({ brix: 40, temperature: '10 degC' }).specificGravity;
  expect(cold).toBeGreaterThan(sucroseDensity({ brix: 40, temperature: '60 degC' }).specificGravity);
});

test('there and back', () => {
  fc.assert(
    fc.property(fc.double({ min: 1.001, max: 99, noNaN: true }), (brix) => {
      expect(
        brixFrom({ specificGravity: sucroseDensity({ brix, temperature: '20 degC' }).specificGravity }).brix,
      ).toBeCloseTo(brix, 8);
      expect(brixFrom({ baume: sucroseDensity({ brix, temperature: '20 degC' }).baume }).brix).toBeCloseTo(brix, 8);
    }),
  );
});

test('the modulus of the Baume scale is said to be recalled', () => {
  expect(sucroseDensity({ brix: 20, temperature: '20 degC' }).basis).toContainEqual(
    expect.objectContaining({ of: 'baume', kind: 'recalled', source: 'from-memory' }),
  );
});

test('bad readings', () => {
  expect(errorOf(() => brixFrom({ specificGravity: 0.99 }))).toBe('OUT_OF_RANGE specificGravity');
  expect(errorOf(() => brixFrom({ specificGravity: 2 }))).toBe('OUT_OF_RANGE specificGravity');
  expect(errorOf(() => brixFrom({ baume: 60 }))).toBe('OUT_OF_RANGE baume');
});

test('water is 0 degrees Baume and the scale rises with Brix', () => {
  expect(sucroseDensity({ brix: 0, temperature: '20 degC' }).baume).toBe(0);
  expect(sucroseDensity({ brix: 60, temperature: '20 degC' }).baume).toBeCloseTo(32.5, 1); // Mohos 2010, Appendix 2
  expect(sucroseDensity({ brix: 60, temperature: '80 degC' }).baume).toBe(
    sucroseDensity({ brix: 60, temperature: '20 degC' }).baume,
  );
  expect(brixFrom({ baume: 0 }).brix).toBeCloseTo(0, 9);
  expect(errorOf(() => brixFrom({ baume: -1 }))).toBe('OUT_OF_RANGE baume');
});
