/** Days to plan and their plans. */
import { readFileSync } from 'node:fs';
import { type FeasibleDay, type PlanDayInput, planDay } from '../../src/plan/index';

/** A day of the examples, by the name of its file. */
export const exampleDay = (name: string): PlanDayInput =>
  JSON.parse(readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8'));

/** The plan of a day that has one. */
export function feasible(input: PlanDayInput): FeasibleDay {
  const plan = planDay(input);
  if (!plan.feasible) throw new Error(plan.reason.text);
  return plan;
}
