import { expect, test } from 'vitest';
import { planDay } from '../../src/plan/index';

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
    lots: [{ produce: 'peach', raw }],
    kitchen: { ...kitchen, ...more },
    products: [product],
  } as never);
  return plan.feasible && plan.notMade.map(({ reason }) => reason).join();
};
test.each([
  ['less than one quart jar', halves, {}, '1 lb'],
  ['no pot', halves, { pots: [] }],
  ['the pots are too small', halves, { pots: [{ volume: '1 tsp' }] }],
  ['too short for one canner load', halves, { hours: '1 h' }],
  ["the dryer's trays hold less", { make: 'dried', from: 'peach' }, {}],
  ['the freeze-dryer holds less', { make: 'freeze-dried', from: 'peach' }, {}],
  ['too few trimmings', { make: 'vinegar', from: 'peach' }, {}],
  ['none of it is wanted', { ...halves, most: 0 }, {}],
  ['elsewhere', { make: 'frozen', from: 'peach', worth: 0 }, {}],
] as const)('%s', (reason, product, more, raw?) => {
  expect(why(product, more, raw)).toContain(reason);
});
