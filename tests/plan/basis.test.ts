import { expect, test } from 'vitest';
import { planDay } from '../../src/plan/index';
import { exampleDay } from '../helpers/plans';
import { randomDay } from './randomDay';

/** Whether a path such as `products[].trays.hours` leads to a field of an answer. */
function leadsTo(value: unknown, path: readonly string[]): boolean {
  const [step, ...rest] = path;
  if (step === undefined) return value !== undefined;
  const name = step.replace('[]', '');
  const inner = (value as Readonly<Record<string, unknown>> | undefined)?.[name];
  if (!step.endsWith('[]')) return leadsTo(inner, rest);
  return Array.isArray(inner) && inner.some((each) => leadsTo(each, rest));
}

const days = [exampleDay('day.json'), exampleDay('day-metric.json'), ...[1, 2, 3, 5, 7, 8].map(randomDay)];
test.each(days.map((day, index) => [index, day] as const))(
  'day %i: each line of the basis names a field of the plan',
  (_, day) => {
    const plan = planDay(day);
    if (!plan.feasible) return;
    const lost = (lines: typeof plan.basis, of: unknown) => lines.filter((line) => !leadsTo(of, line.of.split('.')));
    expect(lost(plan.basis, plan)).toEqual([]);
    for (const product of plan.products) expect(lost(product.basis, product)).toEqual([]);
    // and says in words what the figure is
    for (const { kind, note } of plan.basis) if (kind === 'common-practice') expect(note?.length).toBeGreaterThan(3);
  },
);
