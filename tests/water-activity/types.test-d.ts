import { expectTypeOf, test } from 'vitest';
import type { Range } from '../../src/quantity/index';
import {
  fruitWaterActivity,
  growthAt,
  isothermActivity,
  isothermMoisture,
  keeps,
  saturatedSaltHumidity,
  solutionWaterActivity,
} from '../../src/water-activity/index';

test('each field takes its own dimension', () => {
  solutionWaterActivity({ water: '1 kg', solutes: { sucrose: '2 lb' } });
  solutionWaterActivity({ water: '1 kg', solutes: [{ solute: 'salt', mass: '1 oz' }] });
  // @ts-expect-error a volume where a mass belongs
  solutionWaterActivity({ water: '1 cup', solutes: { sucrose: '2 lb' } });
  // @ts-expect-error a volume of solute
  expectTypeOf(solutionWaterActivity).toBeCallableWith({ water: '1 kg', solutes: { sucrose: '2 cups' } });
  solutionWaterActivity({ freezingPoint: '-2 degC' });
  // @ts-expect-error a solution without its water
  expectTypeOf(solutionWaterActivity).toBeCallableWith({ solutes: { sucrose: '2 lb' } });
  // @ts-expect-error no such model
  expectTypeOf(solutionWaterActivity).toBeCallableWith({ water: '1 kg', solutes: {}, model: 'guess' });
  // @ts-expect-error a mass where a temperature belongs
  expectTypeOf(saturatedSaltHumidity).toBeCallableWith({ solute: 'NaCl', temperature: '25 g' });
  // @ts-expect-error a length of water
  expectTypeOf(solutionWaterActivity).toBeCallableWith({ water: '1 in', solute: 'salt', waterActivity: 0.9 });
});

test('shares are numbers or percentages, a water activity is a number', () => {
  // @ts-expect-error no percentage
  expectTypeOf(growthAt).toBeCallableWith({ waterActivity: '83 %' });
  fruitWaterActivity({ food: 'apple', moisture: '20 %' });
  // @ts-expect-error a bare text
  expectTypeOf(fruitWaterActivity).toBeCallableWith({ food: 'apple', moisture: 'dry' });
  // @ts-expect-error moisture on the dry basis is a plain number
  expectTypeOf(isothermActivity).toBeCallableWith({ food: 'potato', moisture: '20 %' });
});

test('answers', () => {
  const kiwi = isothermMoisture({ food: 'kiwi', waterActivity: 0.4 });
  // @ts-expect-error there is no moisture until the figure is known
  void kiwi.moisture;
  if (kiwi.known) expectTypeOf(kiwi.moisture).toEqualTypeOf<number>();
  else expectTypeOf(kiwi.reason.code).toEqualTypeOf<string>();
  expectTypeOf(growthAt).returns.toHaveProperty('mayGrow').toEqualTypeOf<readonly string[]>();
  expectTypeOf(keeps).returns.toHaveProperty('waterActivityRange').toEqualTypeOf<Range<number>>();
});
