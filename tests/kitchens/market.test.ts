import { describe, expect, test } from 'vitest';
import { valueIn } from '../../src/quantity/scale';
import { batchRecord, labelFields } from '../../src/record/index';
import { amountOf, feasible, kitchenNamed, mustHold, productOf } from './kitchen';

const LB = 0.45359237;

describe('300 lb of peaches for market', () => {
  const plan = feasible(kitchenNamed('peaches-for-market'));
  const [halves, jam] = [productOf(plan, 'peach halves in light syrup'), productOf(plan, 'peach jam')];

  test('what must hold of any plan', () => mustHold(plan, { 'peaches, seconds': 300 * LB }));

  test('a quart takes 2 to 3 lb; seven take 2 1/4 cups of sugar in 9 cups of water', () => {
    // 8 % of 300 lb is not sound: 24 lb
    expect(valueIn(plan.notSound[0]?.raw ?? { value: 0, unit: 'lb' }, 'lb')).toBeCloseTo(24, 6);
    const raw = valueIn(halves.raw, 'lb');
    expect([halves.units.promised, halves.units.ready]).toEqual([
      Math.floor(raw / 3 + 1e-6),
      Math.ceil(raw / 2 - 1e-6),
    ]);
    expect(amountOf(halves, 'sugar for light', 'cup')).toBeCloseTo((halves.units.ready / 7) * 2.25, 6);
    expect(amountOf(halves, 'water for light', 'cup')).toBeCloseTo((halves.units.ready / 7) * 9, 6);
    // hot pack, quarts, 1,001 to 3,000 ft
    expect(halves.canning?.minutes).toBe(30);
  });

  test('jam in whole batches: 6 to 7 half-pints, 5 cups of sugar, 2 tablespoons of lemon juice', () => {
    const batches = jam.units.ready / 7;
    expect(Number.isInteger(batches)).toBe(true);
    expect(jam.units.promised).toBe(6 * batches);
    expect(amountOf(jam, 'sugar', 'cup')).toBeCloseTo(5 * batches, 6);
    expect(amountOf(jam, 'bottled lemon juice', 'tbsp')).toBeCloseTo(2 * batches, 6);
  });

  test('costs: all lines of all products, and what is left, are the cost of the day', () => {
    const { costs: cost } = plan;
    if (cost === undefined) throw new Error('no cost');
    // 300 lb x 0.70 USD
    const fruit = [cost.foodUsed, cost.foodLeft, cost.foodKeptFresh, cost.foodNotSound].reduce(
      (sum, { value }) => sum + value,
      0,
    );
    expect(fruit).toBeCloseTo(210, 2);
    expect(cost.foodNotSound.value).toBeCloseTo(24 * 0.7, 2);
    expect(cost.handsCost.value).toBeGreaterThan(0);
    const all = fruit + cost.supplies.value + cost.energyCost.value + cost.handsCost.value;
    expect(cost.total.value).toBeCloseTo(all, 2);
  });

  test('a label and a record of what the plan made', () => {
    const label = labelFields({
      name: 'Peach jam',
      net: jam.canning?.netMass ?? '10 oz',
      ingredients: [
        { name: 'peaches', mass: jam.ready.likely },
        { name: 'sugar', mass: { value: amountOf(jam, 'sugar', 'cup') * 0.2, unit: 'kg' } },
      ],
      made: '2026-08-14',
      batchOfDay: 1,
    });
    // 20 cups of sugar weigh 4.0 kg, 14 lb of peaches 6.4 kg
    expect(label.ingredientLine).toMatch(/peaches.*sugar/i);
    const record = batchRecord({
      date: '2026-08-14',
      name: 'peach halves',
      lots: [{ food: 'peach', form: 'halves', raw: halves.raw, ready: halves.ready.likely }],
      process: {
        method: 'boiling-water',
        food: 'peach',
        form: 'halves',
        pack: 'hot',
        jar: 'quart',
        minutes: halves.canning?.minutes as number,
        elevation: plan.elevation,
      },
      jarsFilled: halves.units.likely,
      jarsSealed: halves.units.likely,
    });
    expect(record.lotCode).not.toBe('');
  });
});
