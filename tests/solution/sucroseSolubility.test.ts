import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sucroseSolubility } from '../../src/solution/index';
import { codeText as errorOf } from '../helpers/errors';

test('20 degC: the equation followed, inside the published figures', () => {
  const { brix, brixRange: range, sugarPerWater, density } = sucroseSolubility({ temperature: '20 degC' });
  expect(brix).toBeCloseTo(66.718, 3);
  expect(range.low).toBeCloseTo(66.598, 3); // Vavrinecz
  expect(range.high).toBe(67.09); // Mohos 2010, table A2.3
  expect(sugarPerWater).toBeCloseTo(brix / (100 - brix), 12);
  expect(density.value).toBeCloseTo(1.327, 3);
});

test('hot water holds more, and the range holds the likely figure', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 99, noNaN: true }), (t) => {
      const here = sucroseSolubility({ temperature: { value: t, unit: 'degC' } });
      const warmer = sucroseSolubility({ temperature: { value: t + 1, unit: 'degC' } });
      return warmer.brix > here.brix && here.brixRange.low <= here.brix && here.brix <= here.brixRange.high;
    }),
  );
});

test('below freezing there is no figure', () => {
  expect(errorOf(() => sucroseSolubility({ temperature: '-1 degC' }))).toBe('OUT_OF_RANGE temperature');
});
