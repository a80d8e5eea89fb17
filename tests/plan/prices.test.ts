import { describe, expect, test } from 'vitest';
import type { Activity } from '../../src/plan/activity';
import { planDay } from '../../src/plan/index';
import type { PlanRequest } from '../../src/plan/planInput';
import { pricesIn, withPrices } from '../../src/plan/prices';
import { randomHaul } from './randomHaul';

const usd = (value: number) => ({ value, unit: 'USD' });
const request = {
  lots: [
    { produce: 'peach', raw: { value: 10, unit: 'kg' }, price: usd(25) },
    { produce: 'apple', raw: { value: 5, unit: 'kg' } },
  ],
  kitchen: {
    jars: [
      { jar: 'pint', count: 9 },
      { jar: 'pint', count: 9, price: usd(2), uses: 8 },
      { jar: 'pint', count: 9, price: usd(9) },
      { jar: 'quart', count: 9, price: usd(3) },
    ],
    lids: { count: 9, price: usd(0.3) },
    pantry: [
      { item: 'citric acid', amount: { value: 1, unit: 'kg' }, price: usd(7) },
      { item: 'sugar', amount: { value: 2, unit: 'kg' }, price: usd(3) },
    ],
  },
  products: [{ make: 'jam', from: 'peach', worth: { value: 4, currency: 'USD' } }],
} as unknown as PlanRequest;
const same = (value: number) => ({ low: value, likely: value, high: value });
const activity: Activity = {
  product: 0,
  madeOf: 'fruit',
  supplies: [0, 1].map((lot) => ({
    lot,
    unitsPerKg: same(2),
    trimmingsPerKg: same(0),
    readyPerKg: { low: 0.7, likely: 0.8, high: 0.9 },
  })),
  worth: 1,
  least: 0,
  most: 9,
  stockPerUnit: { 'jar pint': 1, lid: 1, 'freezer room': 3 },
  sugar: { perUnit: 0.1, perReadyKg: 0.5 },
  handsPerKg: 1,
  handsPerUnit: 1,
};

describe('by hand', () => {
  test('a lot by weight, a jar over its uses (ten where none are named), a lid, a kg of sugar', () =>
    expect(pricesIn(request)).toEqual({
      currency: 'USD',
      lotKg: [2.5, 0],
      stock: { 'jar pint': 0.25, 'jar quart': 0.3, lid: 0.3 },
      sugarKg: 1.5,
    }));
  test('worths are no prices', () =>
    expect(pricesIn({ ...request, lots: request.lots.slice(1), kitchen: {} as never })).toBeUndefined());
  test('what an activity pays for a kg and for a unit, the sugar of a kg at the rich end', () => {
    const { supplies, costPerUnit } = withPrices(activity, pricesIn(request));
    expect(costPerUnit).toBeCloseTo(0.25 + 0.3 + 0.1 * 1.5, 9);
    expect(supplies.map(({ costPerKg }) => costPerKg)).toEqual([2.5 + 0.5 * 0.9 * 1.5, 0.5 * 0.9 * 1.5]);
    expect(withPrices(activity, undefined)).toBe(activity);
  });
  test('trimmings are paid for with their fruit', () => {
    const { sugar: _, ...plain } = activity;
    const { supplies } = withPrices({ ...plain, madeOf: 'trimmings' }, pricesIn(request));
    expect(supplies.map(({ costPerKg }) => costPerKg)).toEqual([0, 0]);
  });
});

/** The program's money and that of the answer are one: to the cent of each line. */
test.each(Array.from({ length: 25 }, (_, index) => index + 1))('haul %i: the least cost is the cost told', (seed) => {
  const plan = planDay({ ...randomHaul(seed), aim: 'least cost' });
  if (!plan.feasible || plan.cost === undefined || plan.products.length === 0) return;
  const units = plan.products.reduce((sum, each) => sum + each.units.promised, 0);
  const lines = plan.products.reduce((sum, { cost }) => sum + (cost?.lines.length ?? 0), 0);
  const told = plan.cost.produceUsed.value + plan.cost.supplies.value;
  expect(Math.abs(told + plan.objective * units)).toBeLessThanOrEqual(0.01 * (lines + 1));
});
