import type { FeasibleDay } from '../../../src/plan';
import { planDay } from '../../../src/plan';
import type { PlanDayInput } from '../../../src/plan/request/planInput';

export type Kitchen = PlanDayInput['kitchen'];
/** Two people, two pots and a boiling-water canner. */
export const KITCHEN = {
  elevation: '900 ft',
  hours: '10 h',
  hands: 2,
  pots: [{ volume: '16 quarts' }, { volume: '12 quarts' }],
  canners: [{ method: 'boiling-water', holds: { pint: 9, 'half-pint': 9 } }],
} as const satisfies Kitchen;

/** The plan of a day that has one. */
export function made(input: PlanDayInput): FeasibleDay {
  const plan = planDay(input);
  if (!plan.feasible) throw new Error(plan.reason.text);
  return plan;
}
