import { describe, expect, test } from 'vitest';
import type { FeasibleDay, PlanDayInput } from '../../src/plan/index';
import { costBlock } from '../../src/sheet/costs';
import { runSheet } from '../../src/sheet/index';
import { exampleDay, feasible } from '../helpers/plans';

const whole = (name: string, unit: string): PlanDayInput => {
  const input = exampleDay(name);
  return {
    ...input,
    kitchen: {
      ...input.kitchen,
      energy: { electricity: `0.31 ${unit}` as '0.31 USD' },
      wage: `12 ${unit}` as '12 USD',
    },
  };
};
/** The rows of the tables, by their first cell. */
const rowsOf = (text: string): Map<string, string[]> =>
  new Map(
    text
      .split('\n')
      .filter((line) => line.startsWith('| '))
      .map((line) => {
        const cells = line.split('|').map((cell) => cell.trim());
        return [cells[1] ?? '', cells.slice(2, -1)];
      }),
  );

describe('the example with energy and own hours', () => {
  const plan = feasible(whole('day.json', 'USD'));
  const text = costBlock(plan).join('\n\n');
  const rows = rowsOf(text);
  test('the kinds add up to the total as they are printed', () => {
    const cents = (what: string) => Math.round(100 * Number(rows.get(what)?.[0] ?? 0));
    const kinds = ['food used', 'food left fresh', 'jars over their lives, lids, bags, pantry', 'energy', 'own hours'];
    expect(kinds.reduce((sum, kind) => sum + cents(kind), 0)).toBe(cents('**in all**'));
    expect(cents('**in all**')).toBe(Math.round(100 * (plan.cost?.total.value ?? 0)));
    expect(cents('energy')).toBeGreaterThan(0);
  });
  test('each product: in all, each, an ounce, a serving', () => {
    const [product] = plan.products.filter(({ jars }) => jars !== undefined);
    const { cost } = product as FeasibleDay['products'][number];
    expect(rows.get('Peach halves in quarts')).toEqual([
      cost?.total.value.toFixed(2),
      `${cost?.perUnit.high.value.toFixed(2)} a quart jar`,
      `about ${cost?.perNet?.amount.high.value.toFixed(2)} an ounce`,
      `${cost?.perServing?.amount.high.value.toFixed(2)} for 1/2 cup`,
    ]);
    expect(rows.size).toBe(
      7 + plan.products.length + 1 - plan.products.filter((each) => !each.cost?.total.value).length,
    );
  });
  test('the range of the energy, of the day and of each product', () => {
    const likely = plan.products.reduce((sum, { energy }) => sum + (energy?.likely.value ?? 0), 0);
    expect(text).toContain(`likely ${Math.round(likely)}; the cost is that of the likely figure.`);
    expect(runSheet(plan)).toMatch(/\n- Energy: [\d.]+ to [\d.]+ kWh, likely [\d.]+\./);
  });
});
test('a metric day by 100 g, and a serving that was asked about', () => {
  const input = whole('day-metric.json', 'EUR');
  const products = (input.products ?? []).map((each) => (each.make === 'dried' ? { ...each, serving: '33 g' as const } : each));
  const text = costBlock(feasible({ ...input, products })).join('\n');
  expect(text).toMatch(/\d 100 g +\| [\d.]+ for 33 g/);
  expect(text).not.toContain('an ounce');
});
test('kinds and products that cost nothing are not listed; without a price there is no block', () => {
  const input = exampleDay('day.json');
  const { energy: _, bags: __, ...kitchen } = input.kitchen;
  const rows = rowsOf(costBlock(feasible({ ...input, kitchen })).join('\n'));
  expect(rows.has('energy')).toBe(false);
  expect(rows.has('own hours')).toBe(false);
  expect(rows.has('Apple powder')).toBe(false);
  const free = feasible({
    lots: [{ food: 'apple', raw: '9 lb' }],
    kitchen: { elevation: '1 m', hours: '4 h', freezer: { room: '9 L' } },
    products: [{ make: 'frozen', from: 'apple' }],
  });
  expect(costBlock(free)).toEqual([]);
  expect(runSheet(free)).not.toContain('costs');
});
