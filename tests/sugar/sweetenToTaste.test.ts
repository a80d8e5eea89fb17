import { expect, test } from 'vitest';
import { sweetenToTaste } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('a tasted sample is scaled to the pot, by volume or on the scale', () => {
  expect(sweetenToTaste({ sample: '1 cup', sugarAdded: '1 tsp', toSweeten: '3 gallons' }).sugarVolume).toEqual({
    value: 48,
    unit: 'tsp',
  });
  const { sugar, sugarVolume } = sweetenToTaste({ sample: '250 g', sugarAdded: '4 g', toSweeten: '10 kg' });
  expect([sugar, sugarVolume]).toEqual([
    { value: 160, unit: 'g' },
    { value: 0.8, unit: 'cup' },
  ]);
  expect(sweetenToTaste({ sample: '1 cup', sugarAdded: '1 tbsp', toSweeten: '16 cups' }).sugar.value).toBeCloseTo(
    200,
    9,
  );
  expect(errorOf(() => sweetenToTaste({ sample: '1 cup', sugarAdded: '1 tsp', toSweeten: '5 lb' }))).toBe(
    'WRONG_DIMENSION toSweeten',
  );
  expect(errorOf(() => sweetenToTaste({ sample: '1 lb', sugarAdded: '1 tsp', toSweeten: '5 cups' }))).toBe(
    'WRONG_DIMENSION toSweeten',
  );
  expect(errorOf(() => sweetenToTaste({ sample: '0 cup', sugarAdded: '1 tsp', toSweeten: '5 cups' }))).toBe(
    'OUT_OF_RANGE sample',
  );
});
