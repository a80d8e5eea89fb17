import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { costChart } from '../../src/charts/index';
import { type FeasibleDay, planDay } from '../../src/plan/index';

const request = JSON.parse(readFileSync(new URL('../../examples/day.json', import.meta.url), 'utf8'));
const plan = planDay(request) as FeasibleDay;

test('an invented plan says so', () => {
  expect(costChart({ plan }).title.subtitle[0]).toContain('invented');
  expect(costChart({ plan: { ...plan, invented: false } }).title.subtitle[0]).not.toContain('invented');
});

test('the bars of the costs add up to the cost of each product', () => {
  const { values } = costChart({ plan }).data;
  for (const { name, costs: cost } of plan.products) {
    const bars = values.filter((bar) => bar.name.toLowerCase() === name.toLowerCase());
    const sum = bars.reduce((total, { spent }) => total + Math.round(spent * 100), 0);
    expect(sum).toBe(Math.round((cost?.total.value ?? 0) * 100));
  }
  expect(values.some(({ what }) => what === 'food')).toBe(true);
});

test('without a feasible plan there is no chart', () => {
  const infeasible = planDay({
    ...request,
    products: [{ make: 'jam', from: 'peaches', jar: 'half-pint', least: 900 }],
  });
  expect(infeasible.feasible).toBe(false);
  expect(() => costChart({ plan: infeasible })).toThrow(/^plan: /);
  expect(() => costChart(undefined as never)).toThrow(/^plan: /);
  expect(() => costChart({ plan: null as never })).toThrow(/^plan: /);
  expect(() => costChart({ plan: { feasible: true } as never })).toThrow(/^plan: /);
});

test('without prices there is no chart of costs', () => {
  const { costs: _, ...free } = plan;
  expect(() => costChart({ plan: free as FeasibleDay })).toThrow(/^plan: /);
});

test('each kind of cost has its own color, the same in every chart; a lot of any name is food', () => {
  const kitchen = {
    ...request.kitchen,
    bags: { price: '0.20 USD' },
    utilities: { electricity: '0.30 USD' },
    wage: '12 USD',
    pantry: [
      { item: 'sugar', amount: '10 lb', price: '8.50 USD' },
      { item: 'pectin', amount: '2 oz', price: '5.00 USD' },
      { item: 'bottled lemon juice', amount: '1 lb', price: '3.00 USD' },
    ],
  };
  const colours = (some: FeasibleDay) => {
    const color = costChart({ plan: some }).layer[0]?.encoding?.color;
    const { domain, range } = (color as { scale: Record<string, string[]> }).scale;
    return new Map(domain?.map((kind, index) => [kind, range?.[index]]));
  };
  const lots = request.lots.map((lot: object, index: number) => (index === 0 ? { ...lot, name: 'sugar' } : lot));
  const products = request.products.map((each: { make: string }) =>
    each.make === 'jam' ? { ...each, pectin: true, least: 1 } : each,
  );
  const whole = planDay({ ...request, lots, kitchen, products }) as FeasibleDay;
  const all = colours(whole);
  expect([...all.keys()]).toEqual([
    'food',
    'jars, over their lives',
    'lids',
    'bags',
    'sugar',
    'acid and pectin',
    'energy',
    'own hours',
  ]);
  expect(new Set(all.values()).size).toBe(8);
  for (const [kind, colour] of colours(plan)) expect(all.get(kind)).toBe(colour);
  const { values } = costChart({ plan: whole }).data;
  const of = (kind: string) =>
    values.filter(({ what }) => what === kind).reduce((sum, { spent }) => sum + Math.round(100 * spent), 0);
  expect(of('food')).toBe(Math.round(100 * (whole.costs?.foodUsed.value ?? 0)));
  expect(of('energy')).toBe(Math.round(100 * (whole.costs?.energyCost.value ?? 0)));
  expect(of('own hours')).toBe(Math.round(100 * (whole.costs?.handsCost.value ?? 0)));
});
