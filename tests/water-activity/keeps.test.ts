import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keeps } from '../../src/water-activity/index';
import { codeAndPath as errorOf } from '../helpers/errors';

const activity = fc.double({ min: 0.01, max: 0.999, noNaN: true });

describe('keeps', () => {
  test('an estimate within its own error of a limit is not shown to be safe', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.2, noNaN: true }),
        fc.double({ min: 0, max: 0.99, noNaN: true }),
        (uncertainty, share) => {
          const waterActivity = 0.83 - uncertainty * share - 1e-6;
          const answer = keeps({ waterActivity, uncertainty });
          expect(answer.verdict).toBe('not shown to be safe');
          expect(answer.pathogenGrowth.notExcluded).toContain('Staphylococcus aureus');
          expect(answer.pathogenGrowth.margin).toBeLessThanOrEqual(0);
        },
      ),
    );
  });

  test('what is said to be needed would indeed do', () => {
    fc.assert(
      fc.property(activity, fc.double({ min: 0, max: 0.1, noNaN: true }), (waterActivity, uncertainty) => {
        const { pathogenGrowth: pathogens, spoilerGrowth: spoilers } = keeps({ waterActivity, uncertainty });
        // near 1 the error is cut off at 1, which makes the room it leaves look larger
        fc.pre(waterActivity + uncertainty < 1);
        expect(keeps({ waterActivity: pathogens.needed as number, uncertainty }).pathogenGrowth.growth).toBe('none');
        expect(keeps({ waterActivity: spoilers.needed as number, uncertainty }).verdict).toBe('keeps');
      }),
    );
  });

  test('a verdict never grows milder with more uncertainty', () => {
    const order = ['keeps', 'may spoil', 'not shown to be safe', 'not safe'];
    fc.assert(
      fc.property(activity, fc.double({ min: 0, max: 0.2, noNaN: true }), (waterActivity, uncertainty) => {
        const rank = (u: number) => order.indexOf(keeps({ waterActivity, uncertainty: u }).verdict);
        expect(rank(uncertainty * 1.5)).toBeGreaterThanOrEqual(rank(uncertainty));
      }),
    );
  });

  test('a range counts as the same uncertainty', () => {
    const one = keeps({ waterActivity: { low: 0.78, likely: 0.8, high: 0.82 } });
    const other = keeps({ waterActivity: 0.8, uncertainty: 0.02 });
    expect([one.verdict, one.pathogenGrowth.notExcluded]).toEqual([other.verdict, other.pathogenGrowth.notExcluded]);
    expect(one.pathogenGrowth.needed).toBeCloseTo(other.pathogenGrowth.needed as number, 9);
  });

  test('a reading without its uncertainty takes 0.02 and says so', () => {
    const plain = keeps({ waterActivity: 0.59 });
    expect(plain.verdict).toBe('may spoil');
    expect(plain.basis[0]).toMatchObject({ of: 'waterActivityRange', kind: 'common-practice' });
    expect(plain.waterActivityRange).toEqual({
      low: expect.closeTo(0.57, 12),
      likely: 0.59,
      high: expect.closeTo(0.61, 12),
    });
    expect(keeps({ waterActivity: 0.59, uncertainty: 0.005 }).basis[0]).toMatchObject({
      of: 'waterActivityRange',
      kind: 'measured',
    });
  });

  test('advice for each verdict', () => {
    const advice = (input: Parameters<typeof keeps>[0]) => keeps(input).advice;
    expect(advice({ waterActivity: 0.5, uncertainty: 0.01 })).toMatch(/takes up no water/);
    expect(advice({ waterActivity: 0.7, uncertainty: 0.01 })).toMatch(/Yeasts and molds.*0\.58/);
    expect(advice({ waterActivity: 0.82, uncertainty: 0.02 })).toMatch(/Measure it more closely/);
    expect(advice({ waterActivity: 0.95, uncertainty: 0.01 })).toMatch(/further/);
  });

  test('acid that stops all of a kind leaves no limit', () => {
    const sour = keeps({ waterActivity: 0.97, uncertainty: 0.01, pH: 3.4 });
    expect(sour.pathogenGrowth).toEqual({ growth: 'none', mayGrow: [], notExcluded: [] });
    expect(sour.verdict).toBe('may spoil');
  });

  test('bad ranges', () => {
    expect(errorOf(() => keeps({ waterActivity: { low: 0.9, likely: 0.8, high: 0.95 } }))).toEqual([
      'CONTRADICTION',
      'waterActivity',
    ]);
    expect(errorOf(() => keeps({ waterActivity: { low: 0.7, likely: 0.8, high: 1.2 } }))).toEqual([
      'OUT_OF_RANGE',
      'waterActivity.high',
    ]);
    expect(errorOf(() => keeps({ waterActivity: 0.8, uncertainty: -1 }))).toEqual(['OUT_OF_RANGE', 'uncertainty']);
    expect(errorOf(() => keeps({ waterActivity: { low: 0.7, likely: 0.8, high: 0.9 }, uncertainty: 0.1 }))[1]).toBe(
      'uncertainty',
    );
    expect(errorOf(() => keeps({} as never))).toEqual(['MISSING', 'waterActivity']);
    expect(errorOf(() => keeps(undefined as never))).toEqual(['MISSING', '']);
  });

  test.each([0, 1, -0.2, 1.4, Number.NaN])('an activity of %s is refused', (waterActivity) => {
    expect(errorOf(() => keeps({ waterActivity }))).toEqual(['OUT_OF_RANGE', 'waterActivity']);
  });
});
