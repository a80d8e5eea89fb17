import { describe, expect, test } from 'vitest';
import { waterActivityOf } from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';

describe('another temperature', () => {
  const same = {
    waterActivity: 0.5,
    startTemperature: '20 degC',
    targetTemperature: '20 degC',
    heatOfSorption: 5.5,
  } as const;
  test('nothing changes where it stays, it rises with warmth and goes back', () => {
    expect(waterActivityOf(same).waterActivity).toBe(0.5);
    const warm = waterActivityOf({ ...same, targetTemperature: '35 degC' });
    // by hand: 0.5 exp(5.5 / 0.008314462618 (1/293.15 - 1/308.15))
    expect(warm.waterActivity).toBeCloseTo(0.5581, 4);
    const back = waterActivityOf({ ...same, waterActivity: warm.waterActivity, startTemperature: '35 degC' });
    expect(back.waterActivity).toBeCloseTo(0.5, 12);
    expect(back.basis[0]?.kind).toBe('measured');
  });
  test('refusals', () => {
    const { heatOfSorption: _, ...bare } = same;
    expect(errorOf(() => waterActivityOf(bare as typeof same))).toEqual(['MISSING', 'heatOfSorption']);
    expect(
      errorOf(() =>
        waterActivityOf({ ...same, waterActivity: 0.95, targetTemperature: '90 degC', heatOfSorption: 20 }),
      ),
    ).toEqual(['OUT_OF_RANGE', 'targetTemperature']);
  });
});
