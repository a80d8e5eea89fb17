import { expect, test } from 'vitest';
import { costsOf } from '../../src/sheet/costs';
import { exampleDay, feasible } from '../helpers/plans';
import { feasiblePlan } from './days';

test('the kinds add up to the total as they are printed', () => {
  const plan = feasiblePlan('the example');
  const [section] = costsOf(plan);
  const [total = ''] = section?.lines ?? [];
  const [all = 0, ...parts] = (total.replace(/ \(.*?\)/, '').match(/\d+\.\d\d/g) ?? []).map((figure) =>
    Math.round(100 * Number(figure)),
  );
  expect(all).toBe(Math.round(100 * (plan.costs?.total.value ?? 0)));
  expect(parts.reduce((sum, part) => sum + part, 0)).toBe(all);
});
test('each product: at the likely count, its range, an ounce, a serving', () => {
  const plan = feasiblePlan('the example');
  const text = costsOf(plan)[0]?.lines.join('\n') ?? '';
  const { perUnit } = plan.products[0]?.costs ?? {};
  expect(text).toContain(
    `A ${perUnit?.likely.value.toFixed(2)} a quart jar (${perUnit?.low.value.toFixed(2)} to ${perUnit?.high.value.toFixed(2)}), about `,
  );
  expect(text).toMatch(/Energy: [\d.]+ to [\d.]+ kWh, likely [\d.]+/);
});
test('what had no price is named; a metric day counts by 100 g', () => {
  expect(costsOf(feasiblePlan('the example'))[0]?.lines.at(-1)).toContain('apples from the tree');
  const text = costsOf(feasiblePlan('a metric day'))[0]?.lines.join('\n') ?? '';
  expect(text).toContain('for 100 g');
});
test('without energy prices there is no line of energy', () => {
  const input = exampleDay('day.json');
  const { utilities: _, ...kitchen } = input.kitchen;
  expect(costsOf(feasible({ ...input, kitchen }))[0]?.lines.join('\n')).not.toContain('Energy');
});

test('nothing is said twice: no range of one price, no ounce that is also the serving, no cost of a pinch', () => {
  const plan = feasiblePlan('the example');
  const money = (value: number) => ({ value, unit: 'USD' as const });
  const flat = { low: money(1.69), likely: money(1.69), high: money(1.69) };
  const ounce = { value: 1, unit: 'oz' as const };
  const [first] = plan.products;
  if (first?.costs === undefined) throw new Error('no costs');
  const line = (costs: object) =>
    costsOf({ ...plan, products: [{ ...first, costs: { ...first.costs, ...costs } as never }] })[0]?.lines[1];
  const perNet = { cost: { ...flat, likely: money(0.54) }, netMass: ounce };
  expect(line({ perUnit: flat, perNet, perServing: { ...perNet, serving: ounce } })).toBe(
    'A 1.69 a quart jar, 0.54 for 1 oz',
  );
  const pinch = { cost: { ...flat, likely: money(0.01) }, serving: { value: 0.1, unit: 'oz' as const } };
  expect(line({ perUnit: flat, perNet, perServing: pinch })).toBe('A 1.69 a quart jar, 0.54 for 1 oz');
});
