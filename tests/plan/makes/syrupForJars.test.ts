import { describe, expect, test } from 'vitest';
import { syrupForJars } from '../../../src/plan/makes/syrupForJars';

// USDA Complete Guide to Home Canning, Guide 2, "Preparing and using syrups": cups of water and sugar for a canner
// load of 9 pints and of 7 quarts
const PRINTED = [
  ['very light', 6.5, 0.75, 10.5, 1.25],
  ['light', 5.75, 1.5, 9, 2.25],
  ['medium', 5.25, 2.25, 8.25, 3.75],
  ['heavy', 5, 3.25, 7.75, 5.25],
  ['very heavy', 4.25, 4.25, 6.5, 6.75],
] as const;

describe.each(PRINTED)('%s syrup', (strength, water9, sugar9, water7, sugar7) => {
  test('printed loads come out as printed', () => {
    const pints = syrupForJars(strength, 'pint');
    expect(pints.water(9).value).toBeCloseTo(water9, 9);
    expect(pints.sugar(9).value).toBeCloseTo(sugar9, 9);
    const quarts = syrupForJars(strength, 'quart');
    expect(quarts.water(7).value).toBeCloseTo(water7, 9);
    expect(quarts.sugar(7).value).toBeCloseTo(sugar7, 9);
    expect(quarts.sugarKg(7)).toBeCloseTo(0.2 * sugar7, 9);
    expect(quarts.basis[0]?.kind).toBe('published');
  });
});
test.each([
  ['half-pint', 0.5],
  ['12 oz', 0.75],
  ['24 oz', 1.5],
])('%s jars take their share of the pint load', (jar, pints) => {
  expect(syrupForJars('light', jar).sugar(9).value).toBeCloseTo(1.5 * pints, 9);
});
test('half-gallons take twice the quart', () => {
  expect(syrupForJars('light', 'half-gallon').water(7).value).toBeCloseTo(18, 9);
});

test('a jar of a pint and a half takes its own share, not that of a half-pint', () => {
  const one = syrupForJars('light', 'pint and a half').water(1).value;
  expect(one).toBeCloseTo(1.5 * syrupForJars('light', 'pint').water(1).value, 9);
});
