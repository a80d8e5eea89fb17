import fc from 'fast-check';
import { expect, test } from 'vitest';
import { convert } from '../../src/quantity/index';
import { type SyrupStrength, syrup } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('by Brix and mass: sugar and water are the two parts of it', () => {
  const { sugar, water, mass } = syrup({ brix: 20, mass: '25 kg' }); // Earle, problem 2.1
  expect([sugar.value, water.value, mass]).toEqual([5, 20, { value: 25, unit: 'kg' }]);
});

test('by volume: the density of the syrup (ICUMSA: 50 Brix holds 614.8 g of sugar in a litre)', () => {
  const { sugar, volume } = syrup({ brix: 50, volume: '1 L' });
  expect(sugar.unit).toBe('g');
  expect(sugar.value).toBeCloseTo(614.8, 1);
  expect(volume).toEqual({ value: 1, unit: 'L' });
});

test('names follow the printed percentage, which is by volume: medium is 26.6 Brix and not 30', () => {
  const { brix, sugarVolume, waterVolume } = syrup({ strength: 'medium', mass: '5 lb' });
  expect(brix).toBeCloseTo(26.6, 1);
  expect(sugarVolume.value / (sugarVolume.value + waterVolume.value)).toBeCloseTo(0.3, 9);
  const names: SyrupStrength[] = ['very light', 'light', 'medium', 'heavy', 'very heavy'];
  const strengths = names.map((strength) => syrup({ strength, mass: '1 kg' }).brix);
  expect(strengths).toEqual([...strengths].sort((a, b) => a - b));
});

test('mass is conserved, and sugar and water need more room apart than together', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 66, noNaN: true }),
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      (brix, litres) => {
        const made = syrup({ brix, volume: { value: litres, unit: 'L' } });
        expect(made.sugar.value + made.water.value).toBeCloseTo(made.mass.value, 6);
        expect(made.sugarVolume.value + made.waterVolume.value).toBeGreaterThan(made.volume.value);
        expect(syrup({ brix, mass: made.mass }).volume.value).toBeCloseTo(convert(made.volume, 'cup').value, 6);
      },
    ),
  );
});

test('above the solubility of sugar it is refused, close to it cautioned, and heat lifts the limit', () => {
  expect(errorOf(() => syrup({ brix: 68, mass: '1 kg' }))).toBe('OUT_OF_RANGE brix');
  expect(syrup({ brix: 66.9, mass: '1 kg' }).cautions.map(({ id }) => id)).toContain('may-crystallize');
  expect(syrup({ brix: 60, mass: '1 kg' }).cautions.map(({ id }) => id)).not.toContain('may-crystallize');
  expect(syrup({ brix: 75, mass: '1 kg', temperature: '90 degC' }).sugar.value).toBe(0.75);
});

test('bad input', () => {
  expect(errorOf(() => syrup({ brix: 30 } as never))).toBe('MISSING volume');
  expect(errorOf(() => syrup({ mass: '1 kg' } as never))).toBe('MISSING brix');
  expect(errorOf(() => syrup({ brix: 30, strength: 'light', mass: '1 kg' } as never))).toBe('CONTRADICTION strength');
  expect(errorOf(() => syrup({ brix: 30, mass: '1 kg', volume: '1 L' } as never))).toBe('CONTRADICTION mass');
  expect(errorOf(() => syrup({ strength: 'thick' as never, mass: '1 kg' }))).toBe('UNKNOWN_NAME strength');
  expect(errorOf(() => syrup({ brix: 30, volume: '1 kg' as never }))).toBe('WRONG_DIMENSION volume');
  expect(errorOf(() => syrup({ brix: 30, volume: '0 L' }))).toBe('OUT_OF_RANGE volume');
});
