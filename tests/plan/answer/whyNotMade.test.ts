import { expect, test } from 'vitest';
import { whyNotMade } from '../../../src/plan/answer/whyNotMade';
import { planDay } from '../../../src/plan/index';
import { toProgram } from '../../../src/plan/program/program';
import { solve } from '../../../src/plan/solver/solve';
import { randomKitchen } from '../randomKitchen';

const kitchen = {
  elevation: '100 m',
  hours: '6 h',
  pots: [{ volume: '12 quarts' }],
  canners: [{ method: 'boiling-water', holds: { quart: 7 } }],
  dryer: { trays: 2, trayArea: '20 cm2' },
  freezeDryer: { trays: 1, trayArea: '20 cm2', ice: '10 g' },
  freezer: { room: '20 L' },
};
const halves = { make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar: 'quart' };
const why = (product: object, more: object = {}, raw = '10 lb') => {
  const plan = planDay({
    lots: [{ food: 'peach', raw }],
    kitchen: { ...kitchen, ...more },
    products: [product],
  } as never);
  return plan.feasible && plan.notMade.map(({ reason }) => reason.text).join();
};
test.each([
  ['less than one quart jar', halves, {}, '1 lb'],
  ['no pot', halves, { pots: [] }],
  ['the pots are too small', halves, { pots: [{ volume: '1 tsp' }] }],
  ['too short for one canner load', halves, { hours: '1 h' }],
  ["the dryer's trays hold less", { make: 'dried', from: 'peach' }, {}],
  ['the freeze-dryer holds less', { make: 'freeze-dried', from: 'peach' }, {}],
  ['too few trimmings', { make: 'vinegar', from: 'peach' }, {}],
  ['`most` of it is 0', { ...halves, most: 0 }, {}],
  ['less than its smallest batch of 9', { ...halves, smallest: 9 }, {}],
  [
    "the dryer's trays hold less than its smallest batch of 2",
    { make: 'dried', from: 'peach', smallest: 2 },
    {},
    '60 lb',
  ],
  [
    'some of it, but not for its smallest batch of 3',
    { ...halves, smallest: 3 },
    { jars: [{ jar: 'quart', count: 4 }] },
  ],
  ['are worth more in other products', { make: 'frozen', from: 'peach', worth: 0 }, {}],
] as const)('%s', (reason, product, more, raw?) => {
  expect(why(product, more, raw)).toContain(reason);
});
test('least cost: what is dearer is not made, and with no pay for making only musts are', () => {
  const lots = [{ food: 'peach', raw: '30 lb', price: '20 USD' }];
  const products = [
    { make: 'frozen', from: 'peach', packSize: '2 lb' },
    { make: 'frozen', from: 'peach', packSize: '1 lb' },
  ];
  const reasons = (aim: unknown, more: object = {}) => {
    const plan = planDay({ lots, kitchen, products: [products[0], { ...products[1], ...more }], aim } as never);
    return plan.feasible && plan.notMade.map(({ name, reason }) => `${name}: ${reason.text}`);
  };
  const cost = 'it would not lower the cost of each jar or pack promised';
  expect(reasons('least cost')).toEqual([`peach slices, frozen, 2 lb: ${cost}`]);
  const must = 'nothing requires it, and it would take time or money';
  expect(reasons({ money: 1 }, { least: 2 })).toEqual([`peach slices, frozen, 2 lb: ${must}`]);
});
test('another lot that goes into it has too little', () => {
  const { activities, capacity } = randomKitchen(1, { lots: 3, products: 4 });
  const [jarred] = activities.filter(({ madeOf, cook }) => madeOf === 'fruit' && cook !== undefined);
  if (jarred === undefined) throw new Error('nothing is cooked in this kitchen');
  const reason = (kgPerUnit: number) => {
    const activity = { ...jarred, also: [{ lot: 3, kgPerUnit }] };
    const own = { ...capacity, lots: [...capacity.lots, 0.2] };
    const program = toProgram([activity], own, 'most worth');
    const making = { activity, unit: 'jar' };
    const prepared = { capacity: own, request: { aim: 'most worth' }, program, makings: [making] };
    const solved = solve(program);
    const used = { prepared, plan: { found: solved, solved, program }, leftKg: own.lots };
    return whyNotMade(making as never, used as never, { nodes: 100, looks: 0 }).code;
  };
  expect(reason(0.5)).toBe('too-little-of-another-lot');
  expect(reason(0.1)).not.toBe('too-little-of-another-lot');
});
