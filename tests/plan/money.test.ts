import { expect, test } from 'vitest';
import { type PlanDayInput, planDay } from '../../src/plan/index';

const input: PlanDayInput = {
  lots: [{ name: 'sugar', produce: 'peach', raw: '30 lb', price: '20.00 USD' }],
  kitchen: {
    elevation: '100 m',
    hours: '10 h',
    hands: 2,
    pots: [{ volume: '12 quarts' }],
    canners: [{ method: 'boiling-water', holds: { quart: 7 } }],
    jars: [{ jar: 'quart', count: 9, price: '1.50 USD', uses: 5 }],
    lids: { count: 20, price: '0.25 USD' },
    pantry: [{ item: 'sugar', amount: '10 lb', price: '8.00 USD' }],
  },
  products: [{ make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar: 'quart', syrup: 'light' }],
};
test('by hand: 18 of 30 lb, nine jars over five uses, nine lids, sugar for nine quarts', () => {
  const plan = planDay(input);
  if (!plan.feasible) throw new Error(plan.reason);
  // 6 quarts promised at 3 lb a quart; 9 to ready at 2 lb. 2 1/4 cups of sugar for 7 quarts, 200 g a cup, 0.80 USD a lb
  expect(plan.products[0]?.units).toMatchObject({ promised: 6, ready: 9 });
  const sugar = Math.round((((9 / 7) * 2.25 * 200) / 453.59237) * 80) / 100;
  expect(plan.products[0]?.cost).toEqual({
    lines: [
      { what: 'sugar', amount: { value: 12, unit: 'USD' } }, // the lot of that name
      { what: 'jars, over their lives', amount: { value: 2.7, unit: 'USD' } },
      { what: 'lids', amount: { value: 2.25, unit: 'USD' } },
      { what: 'sugar', amount: { value: sugar, unit: 'USD' } },
    ],
    total: { value: Math.round((16.95 + sugar) * 100) / 100, unit: 'USD' },
    perUnit: { value: Math.ceil(((16.95 + sugar) / 6) * 100 - 1e-9) / 100, unit: 'USD' },
  });
  expect(plan.cost).toEqual({
    produceUsed: { value: 12, unit: 'USD' },
    produceLeft: { value: 8, unit: 'USD' },
    supplies: { value: Math.round((4.95 + sugar) * 100) / 100, unit: 'USD' },
    total: { value: Math.round((24.95 + sugar) * 100) / 100, unit: 'USD' },
  });
});
test('no price, no cost', () => {
  const { price: _, ...lot } = input.lots[0] as PlanDayInput['lots'][number] & { price: string };
  const { jars: __, lids: ___, pantry: ____, ...kitchen } = input.kitchen;
  const plan = planDay({ ...input, lots: [lot], kitchen });
  expect(plan.feasible && plan.cost).toBeUndefined();
});
test('what is short is to be bought', () => {
  const plan = planDay({ ...input, kitchen: { ...input.kitchen, pantry: [{ item: 'sugar', amount: '1 oz' }] } });
  const sugar = plan.feasible ? plan.ready.find(({ what }) => what === 'sugar') : undefined;
  expect(sugar?.short).toMatchObject({
    unit: 'lb',
    value: expect.closeTo(((9 / 7) * 2.25 * 200) / 453.59237 - 1 / 16, 9),
  });
});
