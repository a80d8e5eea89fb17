import { expect, test } from 'vitest';
import { sugarStages } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('soft ball is 235 to 240 degF at sea level (McGee), 2 degF less for each 1,000 ft', () => {
  expect(sugarStages().stages[1]).toMatchObject({ stage: 'soft ball', low: { value: 235 }, high: { value: 240 } });
  expect(sugarStages({ elevation: '5000 ft' }).stages[1]?.low.value).toBeCloseTo(225, 9);
  expect(sugarStages({ elevation: '0 m' }).stages[1]?.high.value).toBeCloseTo(115.6, 1);
});

test('between two stages it is past the first', () => {
  expect(sugarStages({ temperature: '242 degF' })).toMatchObject({ now: { stage: 'soft ball' }, inStage: false });
  expect(sugarStages({ temperature: '120 degC' })).toMatchObject({ now: { stage: 'firm ball' }, inStage: true });
  expect(sugarStages({ temperature: '228 degF', elevation: '5000 ft' }).now?.stage).toBe('soft ball');
  expect(sugarStages({ temperature: '345 degF' }).now?.use).toBeUndefined();
});

test('a thin syrup has no stage yet', () => {
  expect(errorOf(() => sugarStages({ temperature: '210 degF' }))).toBe('OUT_OF_RANGE temperature');
});
