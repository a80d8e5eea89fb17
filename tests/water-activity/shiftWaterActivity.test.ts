import { describe, expect, test } from 'vitest';
import { waterActivityOf } from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';
import { known } from '../helpers/known';

describe('another temperature', () => {
  const same = { waterActivity: 0.5, from: '20 degC', to: '20 degC', food: 'blueberry' } as const;
  test('nothing changes where it stays, it rises with warmth and goes back', () => {
    expect(known(waterActivityOf(same)).waterActivity).toBe(0.5);
    const warm = known(waterActivityOf({ ...same, to: '35 degC' }));
    expect(warm.waterActivity).toBeGreaterThan(0.5);
    expect(warm.range.low).toBeLessThan(warm.range.high);
    const back = known(
      waterActivityOf({
        waterActivity: warm.waterActivity,
        from: '35 degC',
        to: '20 degC',
        heatOfSorption: 5.5,
      }),
    );
    expect(back.waterActivity).toBeCloseTo(0.5, 12);
    expect(back.basis[0]?.kind).toBe('measured');
  });
  test('refusals', () => {
    const { food: _, ...bare } = same;
    expect(errorOf(() => waterActivityOf(bare))).toEqual(['MISSING', 'food']);
    expect(errorOf(() => waterActivityOf({ ...same, heatOfSorption: 4 }))).toEqual(['CONTRADICTION', 'food']);
    expect(errorOf(() => waterActivityOf({ ...bare, waterActivity: 0.95, to: '90 degC', heatOfSorption: 20 }))).toEqual(
      ['OUT_OF_RANGE', 'to'],
    );
  });

  test('a food without a heat of sorption is not known, and a text that is no food is an error', () => {
    expect(waterActivityOf({ ...same, food: 'peach' })).toMatchObject({
      known: false,
      reason: { code: 'no-heat-of-sorption' },
    });
    expect(errorOf(() => waterActivityOf({ ...same, food: 'gravel' }))).toEqual(['UNKNOWN_NAME', 'food']);
  });
});
