import { describe, expect, it } from 'vitest';
import { planDay } from '../../../src/plan';
import type { PlanDayInput } from '../../../src/plan/request/planInput';
import { KITCHEN } from './made';

describe('a must that fails', () => {
  it('answers with the most that can be promised, and that much has a plan', () => {
    const input = (least: number): PlanDayInput => ({
      lots: [{ food: 'tomato', raw: '30 lb' }],
      kitchen: KITCHEN,
      products: [{ recipe: 'salsa-using-paste-tomatoes', jar: 'pint', least }],
    });
    const plan = planDay(input(200));
    if (plan.feasible) throw new Error('feasible');
    const [most] = plan.most;
    expect(most).toMatchObject({ least: 200 });
    expect(most?.count).toBeGreaterThan(0);
    expect(planDay(input(most?.count ?? 0)).feasible).toBe(true);
  });
});
