import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keeps } from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';

const activity = fc.double({ min: 0.01, max: 0.999, noNaN: true });
const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);

describe('the ruling of the Food Code', () => {
  test('drier or more acid is never stricter, and Table B never milder than Table A', () => {
    fc.assert(
      fc.property(activity, activity, fc.double({ min: 0, max: 14, noNaN: true }), (a, b, pH) => {
        const at = (waterActivity: number, heatTreatedAndPackaged: boolean) =>
          keeps({ waterActivity, pH, heatTreatedAndPackaged }).tcs?.ruledAs === 'PA' ? 1 : 0;
        const [dry, wet] = [Math.min(a, b), Math.max(a, b)];
        for (const heated of [true, false]) expect(at(wet, heated)).toBeGreaterThanOrEqual(at(dry, heated));
        expect(at(a, false)).toBeGreaterThanOrEqual(at(a, true));
      }),
    );
  });
  test('PA carries its caution', () => {
    expect(ids(keeps({ waterActivity: 0.97, pH: 6, heatTreatedAndPackaged: true }))).toContain('product-assessment');
    expect(keeps({ waterActivity: 0.97, pH: 6 }).tcs).toBeUndefined();
    expect(errorOf(() => keeps({ waterActivity: 0.97, heatTreatedAndPackaged: true }))).toEqual(['MISSING', 'pH']);
  });
  test('of a range the upper end counts', () => {
    const ruled = (high: number) =>
      keeps({ waterActivity: { low: 0.86, likely: 0.87, high }, pH: 5, heatTreatedAndPackaged: false }).tcs?.ruledAs;
    expect([ruled(0.88), ruled(0.93)]).toEqual(['non-TCS', 'PA']);
  });
});
