import fc from 'fast-check';
import { expect, test } from 'vitest';
import { saltMeasure } from '../../src/acid/index';
import { expectError } from '../helpers/errors';

test('fine salt by the printed measure of each size (SR28: 6 g, 18 g, 292 g)', () => {
  expect(saltMeasure({ amount: '1 tsp' }).mass.low).toEqual({ value: 6, unit: 'g' });
  expect(saltMeasure({ amount: '1/2 cup' }).mass.low).toEqual({ value: 146, unit: 'g' });
  expect(saltMeasure({ amount: '54 g', crystal: 'pickling salt' }).volume.low).toEqual({ value: 3, unit: 'tbsp' });
  expect(saltMeasure({ amount: '30 mL' }).mass.low.value).toBeCloseTo(36.5, 1);
  expect(saltMeasure({ amount: '1 tbsp' }).cautions).toEqual([]);
});

test('coarse and flake salt give a range, from memory, and say to weigh', () => {
  const flake = saltMeasure({ amount: '1 tbsp', crystal: 'flake kosher salt' });
  expect(flake.mass.low.value).toBeLessThan(flake.mass.high.value);
  expect(flake.basis.map(({ kind }) => kind)).toEqual(['recalled']);
  expect(flake.cautions.map(({ id }) => id)).toEqual(['weigh-the-salt', 'recalled']);
  const back = saltMeasure({ amount: flake.mass.high, crystal: 'flake salt' });
  expect(back.volume.low.value).toBeCloseTo(1, 12);
});

test('weight to spoons and back', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 5000, noNaN: true }), (grams) => {
      const { volume } = saltMeasure({ amount: { value: grams, unit: 'g' } });
      expect(saltMeasure({ amount: volume.low }).mass.low.value).toBeCloseTo(grams, 6);
    }),
  );
});

test('bad input', () => {
  expectError(() => saltMeasure({ amount: '0 g' }), 'OUT_OF_RANGE', 'amount');
  expectError(() => saltMeasure({ amount: '0 tsp' }), 'OUT_OF_RANGE', 'amount');
  expectError(() => saltMeasure({ amount: '5 in' as never }), 'WRONG_DIMENSION', 'amount');
  expectError(() => saltMeasure({ amount: '5 g', crystal: 'sugar' }), 'UNKNOWN_NAME', 'crystal');
});
