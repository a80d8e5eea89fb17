import { describe, expect, it } from 'vitest';
import { moistureByWeighing } from '../../../src/drying/index';
import { errorOf } from '../helpers';

describe('dryness by weighing', () => {
  const weigh = (...pairs: [number, number][]) => ({
    weighings: pairs.map(([t, w]) => ({
      time: { value: t, unit: 'h' as const },
      mass: { value: w, unit: 'g' as const },
    })),
  });
  it('is dry only when an hour takes nothing off', () => {
    expect(moistureByWeighing(weigh([24, 500], [26, 500])).verdict).toBe('dry');
    expect(moistureByWeighing(weigh([24, 500], [26, 499])).verdict).toBe('dry');
    expect(moistureByWeighing(weigh([24, 500], [26, 498])).verdict).toBe('not dry');
    expect(moistureByWeighing(weigh([24, 500], [24.5, 500])).verdict).toBe('too soon');
    expect(moistureByWeighing({ ...weigh([24, 500], [26, 498]), tolerance: '1 %' }).verdict).toBe('dry');
    expect(moistureByWeighing(weigh([20, 600], [24, 500], [26, 490]))).toMatchObject({
      lostMass: { value: 10, unit: 'g' },
      lostShare: 0.02,
    });
  });
  it('refuses weighings out of order', () => {
    expect(errorOf(() => moistureByWeighing(weigh([24, 500])))).toMatchObject({
      code: 'OUT_OF_RANGE',
      path: 'weighings',
    });
    expect(errorOf(() => moistureByWeighing(weigh([24, 500], [24, 499]))).path).toBe('weighings[1].time');
    expect(errorOf(() => moistureByWeighing(weigh([24, 500], [26, 501]))).path).toBe('weighings[1].mass');
  });
});
