import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { allocationChart } from '../../src/charts/index';
import { type FeasibleDay, planDay } from '../../src/plan/index';

const request = JSON.parse(readFileSync(new URL('../../examples/day.json', import.meta.url), 'utf8'));
const plan = planDay(request) as FeasibleDay;

test('the bars of the allocation add up to each lot: what is used whole, and what is left fresh', () => {
  const { values } = allocationChart({ plan }).data;
  for (const { name, raw } of request.lots as { name: string; raw: string }[]) {
    const ofTrimmings = plan.products.filter(({ trimmings }) => trimmings === undefined);
    const names = new Set(ofTrimmings.map((product) => product.name.toLowerCase()));
    const bars = values.filter((bar) => bar.lot === name && !names.has(bar.name.toLowerCase()));
    const sum = bars.reduce((total, bar) => total + bar.weighs, 0);
    expect(sum).toBeCloseTo(Number.parseFloat(raw), 6);
  }
  expect(values.map((bar) => bar.name)).toContain('Left fresh');
});

test('an invented plan says so', () => {
  expect(allocationChart({ plan }).title.subtitle[0]).toContain('invented');
  expect(allocationChart({ plan: { ...plan, invented: false } }).title.subtitle[0]).not.toContain('invented');
});

test('a plan with nothing made still has its bar of what is left fresh', () => {
  const nothing = planDay({
    lots: [{ food: 'apple', raw: '20 lb' }],
    kitchen: { elevation: '500 m', hours: '6 h' },
    products: [{ make: 'dried', from: 'apples' }],
  });
  const { data, title } = allocationChart({ plan: nothing });
  expect(data.values).toEqual([{ name: 'Left fresh', lot: expect.any(String), weighs: 20 }]);
  expect(title.subtitle.join(' ')).not.toContain('trimmings');
});

test('without a feasible plan there is no chart', () => {
  const infeasible = planDay({
    ...request,
    products: [{ make: 'jam', from: 'peaches', jar: 'half-pint', least: 900 }],
  });
  expect(infeasible.feasible).toBe(false);
  expect(() => allocationChart({ plan: infeasible })).toThrow(/^plan: /);
  expect(() => allocationChart(undefined as never)).toThrow(/^plan: /);
  expect(() => allocationChart({ plan: null as never })).toThrow(/^plan: /);
  expect(() => allocationChart({ plan: { feasible: true } as never })).toThrow(/^plan: /);
});
