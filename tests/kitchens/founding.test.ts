import { describe, expect, test } from 'vitest';
import { valueIn } from '../../src/quantity/scale';
import { type Day, feasible, kitchenNamed, mustHold, poundsLeft, productOf, withoutProducts } from './kitchen';

/** The plums of the example at another height. */
const plumsAt = (elevation: `${number} ft` | '4,200 ft'): Day => {
  const day = kitchenNamed('plums');
  return { ...day, kitchen: { ...day.kitchen, elevation } };
};

/** The kitchen that this library began with: strawberries by the quart, a fair lot, tops to powder. */
function strawberries(elevation: '900 ft' | '4,200 ft'): Day {
  const { kitchen } = kitchenNamed('plums');
  return {
    invented: true,
    lots: [
      {
        name: 'fair strawberries',
        food: 'strawberry',
        raw: '40 quarts',
        price: '38.00 USD',
        sound: '91 %',
        keepFresh: '3 quarts',
      },
      { name: 'pears', food: 'pear', raw: '12 lb' },
    ],
    kitchen: { ...kitchen, elevation, hours: '11 h' } as Day['kitchen'],
    products: [
      { name: 'syrup', recipe: 'berry-syrup', from: 'strawberry', jar: 'pint', worth: '5.00 USD' },
      { name: 'slices', make: 'freeze-dried', from: 'strawberry', packSize: '3 oz', worth: '7.50 USD' },
      { name: 'leather', make: 'leather', from: ['strawberry', 'pear'], worth: '3.00 USD' },
      { name: 'pear halves', recipe: 'pear-halves', pack: 'hot', jar: 'pint', syrup: 'very light', worth: '3.50 USD' },
    ],
    aim: 'least waste',
  };
}

describe.each(['900 ft', '4,200 ft'] as const)('40 quarts of plums at %s', (elevation) => {
  const plan = feasible(plumsAt(elevation));
  test('what must hold of any plan', () => mustHold(plan, { 'pears from a neighbor': 12 * 0.45359237 }));
  test('no sound fruit is left that would fill a jar', () => expect(poundsLeft(plan)).toBeLessThan(0.5));
  test('nine of a hundred are thrown away, three of forty quarts stay fresh, and the rest is made into things', () => {
    const share = (shares: typeof plan.notSound) => valueIn(shares[0]?.raw ?? { value: 0, unit: 'lb' }, 'lb');
    const lot = share(plan.notSound) / 0.09;
    expect(share(plan.keptFresh)).toBeCloseTo((lot * 3) / 40, 6);
    // a quart of plums weighs 1.3 to 1.7 lb
    expect(lot / 40).toBeGreaterThan(1.3);
    expect(lot / 40).toBeLessThan(1.7);
  });
  test('puree in pints: hot, 15 min up to 1,000 ft and 20 min to 6,000 ft', () => {
    expect(productOf(plan, 'plum puree').canning?.minutes).toBe(elevation === '900 ft' ? 15 : 20);
    // 44 pints at 3/4 lb are 33 lb
    expect(productOf(plan, 'plum puree').units.ready).toBeGreaterThanOrEqual(40);
  });
  test('the freeze-dryer is loaded when it is free, six hours after eight', () => {
    const [load] = plan.schedule.tasks.filter(({ kind }) => kind === 'freeze-dry');
    expect(load?.startMinute).toBeGreaterThanOrEqual(360);
  });
  test('people have names, and nobody works at the break', () => {
    for (const { uses, who, throughBreak, startMinute: start, endMinute: end, unattended } of plan.schedule.tasks) {
      const hands = uses.find(({ resource }) => resource === 'hands')?.used ?? 0;
      expect(who?.length ?? 0).toBe(hands);
      if (hands > 0 || (!unattended && throughBreak !== true && hands > 0))
        expect(start >= 300 || end <= 270).toBe(true);
    }
  });
});

describe.each(['900 ft', '4,200 ft'] as const)('strawberries at %s', (elevation) => {
  const plan = feasible(strawberries(elevation));
  test('what must hold of any plan', () => mustHold(plan, { pears: 12 * 0.45359237 }));
  test('syrup, slices and leather of two fruits', () => {
    for (const name of ['syrup', 'slices', 'leather']) expect(productOf(plan, name).units.ready).toBeGreaterThan(0);
  });
  test('what is left could not be kept: no plan uses more, and all jars and trays are in use', () => {
    expect(plan.provenBest).toBe(true);
    // 9 trays, two loads in the hours; four trays of the freeze-dryer, one load of 48 h; 60 pint jars
    expect(productOf(plan, 'leather').drying?.trays).toBe(18);
    expect(productOf(plan, 'slices').drying?.trays).toBe(4);
    expect(productOf(plan, 'syrup').units.ready + productOf(plan, 'pear halves').units.ready).toBe(60);
  });
});

test('lots and kitchen alone give a day that keeps nearly all of it', () => {
  const plan = feasible(withoutProducts(kitchenNamed('plums')));
  mustHold(plan, {});
  expect(poundsLeft(plan)).toBeLessThan(1.5);
  expect(plan.products.length).toBeGreaterThan(3);
});

test.each(['apples-metric', 'venison', 'beans-corn-carrots', 'mixed-berries', 'plums-damp', 'pickles-and-kraut'])(
  '%s with no product named',
  (name) => {
    const plan = feasible(withoutProducts(kitchenNamed(name)));
    mustHold(plan, {});
    expect(plan.products.length).toBeGreaterThan(1);
  },
);
