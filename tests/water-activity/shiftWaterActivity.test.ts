import { describe, expect, test } from 'vitest';
import { shiftWaterActivity } from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';
import { known } from '../helpers/known';

describe('another temperature', () => {
  const same = {
    waterActivity: 0.5,
    startTemperature: '20 degC',
    targetTemperature: '20 degC',
    food: 'blueberry',
  } as const;
  test('nothing changes where it stays, it rises with warmth and goes back', () => {
    expect(known(shiftWaterActivity(same)).waterActivity).toBe(0.5);
    const warm = known(shiftWaterActivity({ ...same, targetTemperature: '35 degC' }));
    expect(warm.waterActivity).toBeGreaterThan(0.5);
    expect(warm.waterActivityRange.low).toBeLessThan(warm.waterActivityRange.high);
    const back = known(
      shiftWaterActivity({
        waterActivity: warm.waterActivity,
        startTemperature: '35 degC',
        targetTemperature: '20 degC',
        heatOfSorption: 5.5,
      }),
    );
    expect(back.waterActivity).toBeCloseTo(0.5, 12);
    expect(back.basis[0]?.kind).toBe('measured');
  });
  test('refusals', () => {
    const { food: _, ...bare } = same;
    expect(errorOf(() => shiftWaterActivity(bare))).toEqual(['MISSING', 'food']);
    expect(errorOf(() => shiftWaterActivity({ ...same, heatOfSorption: 4 }))).toEqual(['CONTRADICTION', 'food']);
    expect(
      errorOf(() =>
        shiftWaterActivity({ ...bare, waterActivity: 0.95, targetTemperature: '90 degC', heatOfSorption: 20 }),
      ),
    ).toEqual(['OUT_OF_RANGE', 'targetTemperature']);
  });

  test('a food without a heat of sorption is not known, and a text that is no food is an error', () => {
    expect(shiftWaterActivity({ ...same, food: 'peach' })).toMatchObject({
      known: false,
      reason: { code: 'no-heat-of-sorption' },
    });
    expect(errorOf(() => shiftWaterActivity({ ...same, food: 'gravel' }))).toEqual(['UNKNOWN_NAME', 'food']);
  });
});
