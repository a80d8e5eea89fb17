import { expect, test } from 'vitest';
import { planDay } from '../../../src/plan/index';
import { FULL_KITCHEN, productOf } from '../fullKitchen';

test.each([
  ['plum', { make: 'jars', form: 'whole', jar: 'pint', method: 'boiling-water' }, 'plums, whole, in pints'],
  ['peach', { make: 'jars', form: 'halves', jar: 'quart', method: 'boiling-water' }, 'peach halves in quarts'],
  ['apple', { make: 'dried', form: 'slices' }, 'apple slices, dried'],
  ['apple', { make: 'freeze-dried', form: 'slices' }, 'apple slices, freeze-dried'],
  ['peach', { make: 'frozen', form: 'slices' }, 'peach slices, frozen'],
  ['tomato', { recipe: 'chile-salsa', jar: 'pint' }, 'chile salsa in pints'],
  // a page for a whole kind of food is called after the food
  ['peach', { make: 'leather' }, 'peach leather'],
  ['peach', { name: 'for the fair', make: 'leather' }, 'for the fair'],
] as const)('%s %o: %s', (food, product, name) => {
  expect(productOf(food, product).name).toBe(name);
});
test('pulps of several foods are called after all of them', () => {
  const plan = planDay({
    lots: [
      { food: 'apple', raw: '9 lb' },
      { food: 'plum', raw: '9 lb' },
    ],
    kitchen: FULL_KITCHEN,
    products: [{ make: 'leather', from: ['apple', 'plum'] }],
  });
  expect(plan.feasible && plan.products[0]?.name).toBe('apple and plum leather');
});
