import { expect, test } from 'vitest';
import { freezingSyrup } from '../../src/freezing/index';
import { SYRUPS } from '../../src/freezing/tables';
import { expectError } from '../helpers/errors';

test('a batch of each strength, by name and by percentage', () => {
  for (const { strength, percent, sugarCups, yieldCups } of SYRUPS) {
    const volume = { value: yieldCups, unit: 'cup' } as const;
    expect(freezingSyrup({ strength, volume }).sugar.value).toBeCloseTo(sugarCups, 9);
    expect(freezingSyrup({ percent, volume }).strength).toBe(strength);
  }
});

// 200 g to a cup of sugar and 236.6 g to a cup of water: the percentages are rounded by the source
test.each([
  [10, 9.6],
  [20, 17.4],
  [30, 27],
  [40, 36.8],
  [50, 45.8],
])('a %d %% syrup is %d %% sugar by weight', (percent, byWeight) => {
  const { sugar, water } = freezingSyrup({ percent, volume: '1 quart' });
  const grams = sugar.value * 200;
  expect((100 * grams) / (grams + water.value * 236.6)).toBeCloseTo(byWeight, 1);
});

test('bad input', () => {
  expectError(() => freezingSyrup({ volume: '1 quart' }), 'MISSING', 'strength');
  expectError(() => freezingSyrup({ strength: 'light', percent: 20, volume: '1 quart' }), 'CONTRADICTION', 'percent');
  expectError(() => freezingSyrup({ percent: 35, volume: '1 quart' }), 'UNKNOWN_NAME', 'percent');
  expectError(() => freezingSyrup({ strength: 'thick', volume: '1 quart' }), 'UNKNOWN_NAME', 'strength');
});
