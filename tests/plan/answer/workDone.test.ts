import { describe, expect, it } from 'vitest';
import { KITCHEN, made } from './made';

describe('minutes at the pot', () => {
  it('are those of the schedule, longer than the recipe by the heating up', () => {
    const plan = made({
      lots: [{ food: 'tomato', raw: '40 lb' }],
      kitchen: KITCHEN,
      products: [{ make: 'sauce', from: 'tomato', jar: 'pint' }],
    });
    const [product] = plan.products;
    const cooked = plan.schedule.tasks.filter(({ kind }) => kind === 'cook');
    const minutes = cooked.map(({ startMinute: start, endMinute: end }) => end - start);
    expect(product?.cooking?.minutesEach).toBe(Math.max(...minutes));
    expect(product?.cooking?.minutesEach).toBeGreaterThan(product?.cooking?.leastEach ?? 0);
    expect(product?.handsMinutes.stir).toBe(minutes.reduce((sum, each) => sum + each, 0));
  });
});
