import { describe, expect, test } from 'vitest';
import { type PlanDayInput, planDay } from '../../../src/plan/index';
import { prepare } from '../../../src/plan/program/prepare';
import { pricesIn, withPrices } from '../../../src/plan/program/prices';
import { leastFruit } from '../../../src/plan/program/program';
import type { Activity } from '../../../src/plan/request/activity';
import type { PlanRequest } from '../../../src/plan/request/planInput';
import { BAGS, FREEZER_ROOM, jarsOf, LIDS } from '../../../src/plan/request/stock';
import { optimize } from '../../../src/plan/solver/optimize';
import { randomDay } from '../randomDay';

const usd = (value: number) => ({ value, unit: 'USD' });
const request = {
  lots: [{ food: 'peach', price: usd(25) }, { food: 'apple' }],
  kitchen: {
    jars: [
      { jar: 'pint', count: 9 },
      { jar: 'pint', count: 9, price: usd(2), lifetimeUses: 8 },
      { jar: 'pint', count: 9, price: usd(9) },
      { jar: 'quart', count: 9, price: usd(3) },
    ],
    lids: { count: 9, price: usd(0.3) },
    bags: { price: usd(0.2) },
    pantry: [
      { item: 'citric acid', amount: { value: 1, unit: 'kg' }, price: usd(7) },
      { item: 'sugar', amount: { value: 2, unit: 'kg' }, price: usd(3) },
      { item: 'sugar', amount: { value: 1, unit: 'kg' }, price: usd(9) },
    ],
    utilities: { electricity: usd(0.3), gas: usd(1.5) },
    wage: usd(12),
  },
  products: [{ make: 'jam', from: 'peach', worth: { value: 4, currency: 'USD' } }],
} as unknown as PlanRequest;
const lots = [{ rawKg: { low: 8, likely: 10, high: 12 }, price: usd(25) }, { rawKg: { low: 5, likely: 5, high: 5 } }];
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
  stockPerUnit: [
    { stock: jarsOf('pint'), amount: 1 },
    { stock: LIDS, amount: 1 },
    { stock: FREEZER_ROOM, amount: 3 },
  ],
  pantry: { sugar: { perUnit: 0.1, perReadyKg: 0.5 } },
  handsPerKg: 1,
  handsPerUnit: 2,
};
const range = (likely: number) => ({ low: likely / 2, likely, high: 2 * likely });

describe('by hand', () => {
  const prices = pricesIn(request, lots);
  test('a lot by weight, a jar over its uses (ten where none are named), a lid, a bag, a kg, a kWh, a minute', () =>
    expect(prices).toEqual({
      currency: 'USD',
      lotKg: [2.5, 0],
      stock: [
        { stock: jarsOf('pint'), amount: 0.25 },
        { stock: jarsOf('quart'), amount: 0.3 },
        { stock: LIDS, amount: 0.3 },
        { stock: BAGS, amount: 0.2 },
      ],
      pantryKg: { 'citric acid': 7, sugar: 1.5 },
      energy: { stove: 0.3, electricity: 0.3 },
      handsMinute: 0.2,
    }));
  test('a gas stove burns therms of 29.3071 kWh', () => {
    const energy = { ...request.kitchen.utilities, stove: 'gas' as const };
    const gas = pricesIn({ ...request, kitchen: { ...request.kitchen, utilities: energy } }, lots);
    expect(gas?.energy.stove).toBeCloseTo(1.5 / 29.3071, 6);
    expect(gas?.energy.electricity).toBe(0.3);
  });
  test('propane by the pound, the gallon or the therm', () => {
    const perKwh = (gasPer?: { value: number; unit: string }) => {
      const energy = { ...request.kitchen.utilities, stove: 'propane', ...(gasPer === undefined ? {} : { gasPer }) };
      return (
        pricesIn({ ...request, kitchen: { ...request.kitchen, utilities: energy } } as never, lots)?.energy.stove ?? 0
      );
    };
    expect(perKwh({ value: 1, unit: 'lb' })).toBeCloseTo(1.5 / 6.26209, 5);
    expect(perKwh({ value: 1, unit: 'gallon' })).toBeCloseTo(1.5 / 26.7673, 5);
    expect(perKwh()).toBeCloseTo(1.5 / 29.3071, 6);
  });
  test('worths are no prices', () =>
    expect(pricesIn({ ...request, lots: request.lots.slice(1), kitchen: {} as never }, lots)).toBeUndefined());
  test('what an activity pays for a kg and for a unit, the sugar of a kg at the rich end', () => {
    const { supplies, costPerUnit } = withPrices(activity, prices);
    expect(costPerUnit).toBeCloseTo(0.25 + 0.3 + 0.1 * 1.5 + 2 * 0.2, 9);
    const both = 0.5 * 0.9 * 1.5 + 0.2;
    expect(supplies.map(({ costPerKg }) => costPerKg)).toEqual([
      expect.closeTo(2.5 + both, 9),
      expect.closeTo(both, 9),
    ]);
    expect(withPrices(activity, undefined)).toBe(activity);
  });
  test('trimmings are paid for with their fruit', () => {
    const { pantry: _, ...plain } = activity;
    const { supplies } = withPrices({ ...plain, handsPerKg: 0, madeOf: 'trimmings' }, prices);
    expect(supplies.map(({ costPerKg }) => costPerKg)).toEqual([0, 0]);
  });
  test('energy at its likely figure: by the kg, the tray, the batch and the load', () => {
    const canner = { canner: 0, jars: 7, minutes: 50, warmUp: 20 };
    const priced = withPrices(
      {
        ...activity,
        supplies: activity.supplies.map((supply) => ({
          ...supply,
          energyPerKg: { stove: range(0.1), electricity: range(2) },
        })),
        energyPerTray: range(0.5),
        cook: { litresPerKg: 1, minutes: 30, stirred: true, energyPerBatch: range(0.4) },
        canning: {
          key: 'a',
          jar: 'quart',
          canners: [{ ...canner, energyPerLoad: range(1), energyToWarmUp: range(2) }],
        },
      },
      prices,
    );
    const plain = withPrices(activity, prices);
    expect((priced.supplies[0]?.costPerKg ?? 0) - (plain.supplies[0]?.costPerKg ?? 0)).toBeCloseTo(2.1 * 0.3, 9);
    expect(priced.costPerTray).toBeCloseTo(0.15, 9);
    expect(priced.cook?.costPerBatch).toBeCloseTo(0.4 * 0.3 + 30 * 0.2, 9);
    expect(priced.canning?.canners[0]).toMatchObject({
      costPerLoad: expect.closeTo(0.3, 9),
      costToWarmUp: expect.closeTo(0.6, 9),
    });
  });
});

/**
 * The program's money and that of the answer are one: they differ by the cents of each kind of line and each lot, and
 * where the order of work has more batches than the program needs.
 */
describe('least cost: the cost told', () => {
  let alike = 0;
  test.each(Array.from({ length: 30 }, (_, index) => index + 1))('day %i', (seed) => {
    const input = { ...randomDay(seed), aim: 'least cost' as const };
    const plan = planDay(input);
    if (!plan.feasible || plan.costs === undefined || plan.products.length === 0) return;
    const { foodUsed, supplies, energyCost: energy, handsCost: hands } = plan.costs;
    const told = [foodUsed, supplies, energy, hands].reduce((sum, { value }) => sum + value, 0);
    const units = plan.products.reduce((sum, each) => sum + each.units.promised, 0);
    const kinds = new Set(plan.products.flatMap(({ costs: cost }) => (cost?.lines ?? []).map(({ what }) => what)));
    const cents = 0.005 * kinds.size + 0.01 * input.lots.length;
    const over = told + plan.objective * units;
    expect(over).toBeGreaterThanOrEqual(-cents);
    if (over <= cents) alike += 1;
    else expect(over).toBeLessThanOrEqual(cents + extraBatches(input));
  });
  test('most of them are alike to the cent', () => expect(alike).toBeGreaterThan(20));
});

/** What the order of work costs for batches that the program does not count. */
function extraBatches(input: PlanDayInput): number {
  const { makings, program } = prepare(input);
  const { values } = optimize(program, { among: leastFruit(program) });
  const plan = planDay(input);
  if (!plan.feasible) return 0;
  return makings.reduce((sum, { label, activity }) => {
    const counted = [...values]
      .filter(([name]) => name.startsWith(`batches ${activity.product} `))
      .reduce((all, [, batches]) => all + batches, 0);
    const done = plan.schedule.tasks.filter(
      ({ kind, forProducts: products }) => kind === 'cook' && products.includes(label),
    ).length;
    return sum + Math.max(0, done - counted) * (activity.cook?.costPerBatch ?? 0);
  }, 0);
}
