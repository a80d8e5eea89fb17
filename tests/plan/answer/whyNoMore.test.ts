import { expect, test } from 'vitest';
import { planDay } from '../../../src/plan/index';

const kitchen = {
  elevation: '100 m',
  hours: '9 h',
  hands: 2,
  pots: [{ volume: '16 quarts' }],
  canners: [{ method: 'boiling-water', holds: { quart: 7, pint: 9 } }],
  dryer: { trays: 2, trayArea: '1 ft2' },
  freezer: { room: '8 L' },
};
const halves = { make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar: 'quart' };
/** Invented: what is left of a crate of peaches, and why. */
const left = (products: readonly object[], more: object = {}, raw = '60 lb', aim = 'most worth') => {
  const plan = planDay({ lots: [{ food: 'peach', raw }], kitchen: { ...kitchen, ...more }, products, aim } as never);
  if (!plan.feasible) throw new Error(plan.reason.text);
  return plan.leftFresh.map(({ reason }) => reason);
};

test.each([
  ['most', 'no more than 3 of it', [{ ...halves, most: 3 }], {}],
  ['used-up', 'not enough quart jars for one more quart jar', [halves], { jars: [{ jar: 'quart', count: 4 }] }],
  ['used-up', 'not enough lids', [halves], { lids: { count: 4 } }],
  ['used-up', 'not enough dryer trays', [{ make: 'dried', from: 'peach' }], {}],
  ['used-up', 'not enough room in the freezer', [{ make: 'frozen', from: 'peach', form: 'slices' }], {}],
  [
    'used-up',
    'minutes of hands',
    [{ make: 'frozen', from: 'peach', form: 'slices' }],
    { hours: '20 min', hands: 1, freezer: { room: '80 L' } },
  ],
  ['too-little-fruit', 'what is left gives less than one more quart jar', [halves], {}, '10 lb'],
] as const)('%s: %s', (code, text, products, more, raw?) => {
  const [reason] = left(products, more, raw);
  expect(reason?.code).toBe(code);
  expect(reason?.text).toContain(text);
});
test('where nothing of it is asked for and more would take time', () => {
  const [reason] = left([{ ...halves, least: 2 }], {}, '60 lb', 'fewest hours');
  expect(reason?.code).toBe('not-required');
});
test('every lot that is left over says why, product by product, and those of one reason together', () => {
  const products = [
    { ...halves, name: 'halves' },
    { ...halves, name: 'more halves' },
    { make: 'dried', from: 'peach', name: 'dried' },
  ];
  const [reason] = left(products, { jars: [{ jar: 'quart', count: 4 }] });
  expect(reason?.text).toContain('halves, more halves: not enough quart jars');
  expect(reason?.text).toContain('; dried: not enough dryer trays');
});
test('a lot that no product takes', () => {
  const plan = planDay({
    lots: [
      { food: 'peach', raw: '60 lb' },
      { food: 'plum', raw: '5 lb' },
    ],
    kitchen,
    products: [halves],
  } as never);
  expect(plan.feasible && plan.leftFresh.find(({ food }) => food === 'plum')?.reason.code).toBe('no-product');
});
