import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tcsClass } from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';

const activity = fc.double({ min: 0.01, max: 0.999, noNaN: true });
const ids = (answer: { cautions: readonly { id: string }[] }) => answer.cautions.map(({ id }) => id);

describe('tcsClass', () => {
  test('drier or more acid is never stricter, and Table B never milder than Table A', () => {
    fc.assert(
      fc.property(activity, activity, fc.double({ min: 0, max: 14, noNaN: true }), (a, b, pH) => {
        const at = (waterActivity: number, heatTreatedAndPackaged: boolean) =>
          tcsClass({ waterActivity, pH, heatTreatedAndPackaged }).ruledAs === 'PA' ? 1 : 0;
        const [dry, wet] = [Math.min(a, b), Math.max(a, b)];
        for (const heated of [true, false]) expect(at(wet, heated)).toBeGreaterThanOrEqual(at(dry, heated));
        expect(at(a, false)).toBeGreaterThanOrEqual(at(a, true));
      }),
    );
  });
  test('PA carries its caution', () => {
    expect(ids(tcsClass({ waterActivity: 0.97, pH: 6, heatTreatedAndPackaged: true }))).toContain('product-assessment');
    expect(errorOf(() => tcsClass({ waterActivity: 0.97, pH: 6 } as never))).toEqual([
      'MISSING',
      'heatTreatedAndPackaged',
    ]);
  });
});
