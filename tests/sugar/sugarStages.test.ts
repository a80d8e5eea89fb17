import { expect, test } from 'vitest';
import { sugarStageAt, sugarStages } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('soft ball is 235 to 240 degF at sea level (McGee), 2 degF less for each 1,000 ft', () => {
  expect(sugarStages().stages[1]).toMatchObject({ stage: 'soft ball', low: { value: 235 }, high: { value: 240 } });
  expect(sugarStages({ elevation: '5000 ft' }).stages[1]?.low.value).toBeCloseTo(225, 9);
  expect(sugarStages({ elevation: '0 m' }).stages[1]?.high.value).toBeCloseTo(115.6, 1);
});

test('between two stages it is past the first', () => {
  expect(sugarStageAt({ temperature: '242 degF' })).toMatchObject({ stage: { stage: 'soft ball' }, within: false });
  expect(sugarStageAt({ temperature: '120 degC' })).toMatchObject({ stage: { stage: 'firm ball' }, within: true });
  expect(sugarStageAt({ temperature: '228 degF', elevation: '5000 ft' }).stage.stage).toBe('soft ball');
  expect(sugarStageAt({ temperature: '345 degF' }).stage.use).toBeUndefined();
});

test('a thin syrup has no stage yet', () => {
  expect(errorOf(() => sugarStageAt({ temperature: '210 degF' }))).toBe('OUT_OF_RANGE temperature');
});
