import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brine, brineStrength } from '../../src/acid/index';
import { expectError } from '../helpers/errors';

const kg = (value: number) => ({ value, unit: 'kg' as const });

test('what a percentage is of decides the salt', () => {
  const water = '1 kg' as const;
  const produce = '1 kg' as const;
  const salt = (basis: 'water' | 'brine' | 'water + produce' | 'produce') =>
    brine({ percent: '5 %', basis, water, produce }).salt.value;
  expect(salt('water')).toBeCloseTo(0.05, 12);
  expect(salt('brine')).toBeCloseTo(0.05 / 0.95, 12);
  expect(salt('water + produce')).toBeCloseTo(0.1, 12);
  expect(salt('produce')).toBeCloseTo(0.05, 12);
});

test('water by measure counts by its weight, and the salt comes in grams', () => {
  const answer = brine({ percent: '5 %', basis: 'water', water: '1 L' });
  expect(answer.salt.unit).toBe('g');
  expect(answer.salt.value).toBeCloseTo(0.05 * 998.2071, 9);
  expect(answer.fineSalt.value).toBeCloseTo((0.05 * 998.2071) / 18, 9);
  expect(answer.basis).toContainEqual(expect.objectContaining({ source: 'crc-water-density' }));
  expect(brine({ percent: '2 %', basis: 'produce', produce: '10 lb' }).salt).toEqual({ value: 0.2, unit: 'lb' });
});

test('both ways, on every basis', () => {
  const amount = fc.double({ min: 0.1, max: 100, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 0.1, noNaN: true }), amount, amount, (percent, water, produce) => {
      const fields = { water: kg(water), produce: kg(produce) };
      const back = (basis: 'water' | 'brine' | 'water + produce' | 'produce') => {
        const { salt, ratios } = brine({ percent, basis, ...fields });
        expect(brineStrength({ salt, ...fields }).ratios.toWater).toBeCloseTo(ratios.toWater ?? 0, 9);
        return ratios;
      };
      expect(back('water').toWater).toBeCloseTo(percent, 9);
      expect(back('brine').ofBrine).toBeCloseTo(percent, 9);
      if (percent * (water + produce) < 0.3 * water) {
        expect(back('water + produce').toWaterAndProduce).toBeCloseTo(percent, 9);
      }
      if (percent * produce < 0.3 * water) expect(back('produce').toProduce).toBeCloseTo(percent, 9);
    }),
  );
});

test('spoons of fine salt are weighed', () => {
  // 1 1/2 tbsp to a quart of water, the printed top-up brine: 27 g in 945 g
  const { ratios, saltMass } = brineStrength({ salt: '1 1/2 tbsp', water: '1 quart' });
  expect(saltMass).toEqual({ value: 27, unit: 'g' });
  expect(ratios.toWater).toBeCloseTo(27 / (946.352946 * 0.9982071), 9);
  expect(ratios.toProduce).toBeUndefined();
});

test('bad input', () => {
  expectError(() => brine({ percent: '5 %', basis: 'water' }), 'MISSING', 'water');
  expectError(() => brine({ percent: '5 %', basis: 'produce' }), 'MISSING', 'produce');
  expectError(() => brine({ percent: '5 %', basis: 'water + produce', water: '1 L' }), 'MISSING', 'produce');
  expectError(() => brine({ percent: '27 %', basis: 'brine', water: '1 kg' }), 'OUT_OF_RANGE', 'percent');
  expectError(() => brine({ percent: 5, basis: 'brine', water: '1 kg' }), 'OUT_OF_RANGE', 'percent');
  expectError(() => brine({ percent: '5 %', basis: 'salt' as never, water: '1 kg' }), 'UNKNOWN_NAME', 'basis');
  expectError(() => brine({ percent: '-1 %' as never, basis: 'brine', water: '1 kg' }), 'OUT_OF_RANGE', 'percent');
  expectError(() => brineStrength({ salt: '10 g' }), 'MISSING', 'water');
  expectError(() => brineStrength({ salt: '400 g', water: '1 kg' }), 'OUT_OF_RANGE', 'salt');
});
