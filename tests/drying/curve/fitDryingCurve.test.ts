import { describe, expect, it } from 'vitest';
import { fitDryingCurve } from '../../../src/drying/curve/fitDryingCurve';
import { type CurveConstants, dryingCurve, type ThinLayerModel } from '../../../src/drying/index';
import { errorOf } from '../helpers';

const h = (value: number) => ({ value, unit: 'h' as const });

describe('fitDryingCurve', () => {
  const CONSTANTS: Record<ThinLayerModel, Record<string, number>> = {
    lewis: { k: 0.3 },
    page: { k: 0.3, n: 1.2 },
    'henderson-pabis': { a: 1.05, k: 0.3 },
    logarithmic: { a: 0.9, k: 0.3, c: 0.1 },
    midilli: { a: 1, k: 0.3, n: 1.1, b: -0.005 },
    'wang-singh': { a: -0.2, b: 0.01 },
  };
  it.each(Object.entries(CONSTANTS))('finds the constants of %s again', (model, constants) => {
    const points = [0, 0.5, 1, 2, 3, 4, 5, 6].map((t) => ({
      time: h(t),
      moistureRatio: dryingCurve({ model: model as ThinLayerModel, time: h(t), timeUnit: 'h', constants })
        .moistureRatio,
    }));
    const fit = fitDryingCurve({ points, model: model as ThinLayerModel });
    for (const [key, value] of Object.entries(constants))
      expect(fit.constants[key as keyof CurveConstants]).toBeCloseTo(value, 6);
    expect(fit.timeUnit).toBe('h');
  });
  it('refuses too few points and times that do not rise', () => {
    const points = [1, 0.6, 0.4].map((ratio, i) => ({ time: h(i), moistureRatio: ratio }));
    expect(errorOf(() => fitDryingCurve({ points, model: 'midilli' }))).toMatchObject({
      code: 'OUT_OF_RANGE',
      path: 'points',
    });
    expect(errorOf(() => fitDryingCurve({ points: points.slice(1) })).path).toBe('points');
    const back = [...points, { time: h(2), moistureRatio: 0.3 }];
    expect(errorOf(() => fitDryingCurve({ points: back }))).toMatchObject({
      code: 'CONTRADICTION',
      path: 'points[3].time',
    });
    expect(errorOf(() => fitDryingCurve({ points: [...points, { time: h(3), moistureRatio: 2 }] })).path).toBe(
      'points[3].moistureRatio',
    );
  });
  it('puts the published drying test between its moistures within 10 % of the textbook time', () => {
    // Geankoplis, Problem 9.6-1 (printed answers recalled): 4.1 h from X 0.20 to 0.04, from its 0.26268 at the start
    const time = (x: number) =>
      dryingCurve({
        model: 'page',
        moistureRatio: x / 0.26268,
        constants: { k: 0.17687, n: 1.37065 },
        timeUnit: 'h',
      }).time.value;
    expect(Math.abs(time(0.04) - time(0.2) - 4.1)).toBeLessThan(0.41);
  });
});
