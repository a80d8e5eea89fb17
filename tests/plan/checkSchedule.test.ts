import { describe, expect, test } from 'vitest';
import { checkSchedule, type FeasibleDay, planDay } from '../../src/plan/index';
import { randomSmallKitchen } from './randomSmallKitchen';

const plans: FeasibleDay[] = [];

describe('every plan of 200 small kitchens passes', () => {
  test.each(Array.from({ length: 10 }, (_, index) => 1 + 20 * index))('kitchens %i and the 19 after it', (first) => {
    for (let seed = first; seed < first + 20; seed++) {
      const plan = planDay(randomSmallKitchen(seed));
      if (!plan.feasible) throw new Error(`kitchen ${seed}: ${plan.reason}`);
      plans.push(plan);
      expect(checkSchedule(plan).broken, `kitchen ${seed}`).toEqual([]);
    }
  });
  test('and most of them can something', () => {
    const canned = plans.filter(({ products }) => products.some(({ jars }) => jars !== undefined));
    expect(plans.length).toBe(200);
    expect(canned.length).toBeGreaterThan(150);
  });
});
