import { describe, expect, test } from 'vitest';
import { type PlanDayInput, planDay } from '../../../src/plan/index';
import { within } from '../../../src/plan/makes/context';
import { valueIn } from '../../../src/quantity/scale';

const kitchen: PlanDayInput['kitchen'] = {
  elevation: '100 m',
  hours: '24 h',
  hands: 4,
  pots: [{ volume: '20 quarts', count: 2 }],
  canners: [
    { method: 'dial-gauge', holds: { quart: 7, pint: 9 }, water: '4 quarts' },
    { method: 'boiling-water', holds: { 'half-pint': 12, pint: 9, quart: 7 }, count: 2 },
  ],
  dryer: { trays: 40, trayArea: '200 in2' },
  freezeDryer: { trays: 5, trayArea: '200 in2', ice: '20 lb', loads: 2 },
  freezer: { room: '100 L' },
};
const made = (lots: PlanDayInput['lots'], products: PlanDayInput['products'], more: object = {}) => {
  const plan = planDay({ lots, kitchen: { ...kitchen, ...more }, products });
  if (!plan.feasible) throw new Error(plan.reason);
  return plan;
};

describe('frozen: vegetables are blanched as the freezing tables print', () => {
  test.each([
    ['beet', 'slices', 'cooked until tender before freezing'],
    ['carrot', 'slices', 'minutes depend on one of the printed forms'],
    ['spinach', 'leaves', 'Blanch in boiling water for 2 min'],
    ['peach', 'slices', 'Freeze pieces loose'],
  ])('%s', (produce, form, first) => {
    expect(
      made([{ produce, raw: '10 lb' }], [{ make: 'frozen', from: produce, form }]).products[0]?.steps[0],
    ).toContain(first);
  });
  test('no more a day than the freezer takes: 2 lb for each cubic foot', () => {
    const plan = made([{ produce: 'peach', raw: '60 lb' }], [{ make: 'frozen', from: 'peach' }], {
      freezer: { room: '100 L', volume: '5 ft3' },
    });
    expect(plan.products[0]?.units.ready).toBeLessThanOrEqual(10);
  });
});

describe('jars', () => {
  test('two products of one process share a load', () => {
    const plan = made(
      [
        { produce: 'peach', raw: '4 lb' },
        { produce: 'pear', raw: '4 lb' },
      ],
      [
        { make: 'jars', from: 'peach', form: 'halves', pack: 'hot', jar: 'quart', method: 'boiling-water', least: 1 },
        { make: 'jars', from: 'pear', form: 'halves', pack: 'hot', jar: 'quart', method: 'boiling-water', least: 1 },
      ],
    );
    // both 25 min at 328 ft
    expect(plan.products[0]?.jars?.loads).toEqual([
      {
        canner: 'boiling-water canner 1',
        loads: 1,
        jarsPerLoad: 7,
        minutesEach: Math.ceil(plan.products[0]?.jars?.loadMinutes.high ?? 0),
        sharedWith: ['pear halves in quart jars'],
      },
    ]);
  });
  test('your own weighing moves the promise', () => {
    const quarts = (ready?: `${number} lb`) =>
      made(
        [{ produce: 'peach', raw: '30 lb', ...(ready === undefined ? {} : { ready }) }],
        [{ make: 'jars', from: 'peach', form: 'halves', pack: 'hot', jar: 'quart' }],
      ).products[0]?.units.promised ?? 0;
    expect(quarts('20 lb')).toBeLessThan(quarts());
    expect(quarts('29 lb')).toBeGreaterThan(quarts());
  });
  test('hot jars take longer to heat on a weak burner, and own work times count', () => {
    const jam = (more: object, product: object = {}) =>
      made(
        [{ produce: 'peach', raw: '9 lb' }],
        [{ make: 'jam', from: 'peach', jar: 'pint', method: 'boiling-water', ...product }],
        more,
      );
    const minutes = (more: object) => jam(more).products[0]?.jars?.loadMinutes.high ?? 0;
    expect(minutes({ burnerPower: '1000 W' })).toBeGreaterThan(minutes({}));
    const own = jam({}, { minutesPerPound: 0, minutesPerUnit: 1, cook: '30 min' });
    const { units, pots, handsMinutes } = own.products[0] as (typeof own.products)[number];
    // each jar: a minute of its own, and half a minute into the canner and out again; jam is stirred while it cooks
    const batches = (pots?.batches ?? []).reduce((sum, each) => sum + each.batches, 0);
    expect(handsMinutes).toEqual({ prepare: 0, fill: 2 * units.ready, stir: 30 * batches });
    expect(own.work.hands.minutes).toBeCloseTo(handsMinutes.fill + handsMinutes.stir, 6);
    expect(pots?.minutesEach).toBe(30);
  });
});

describe('dried', () => {
  test.each(['dried', 'freeze-dried', 'leather', 'powder'] as const)('%s: thinner and drier as asked', (make) => {
    const own = make === 'powder' ? { moisture: 0.04 } : { moisture: 0.15, thickness: '1/4 in' as const };
    const plan = made(
      [{ produce: 'apple', raw: '20 lb' }],
      [
        { make, from: 'apple', size: '1 oz', worth: 1, ...own },
        { make: 'jars', from: 'apple', form: 'sauce', jar: 'pint', least: 3, worth: 0 },
      ],
    );
    const product = plan.products.find((each) => each.make === make);
    expect(product?.trays?.trays).toBeGreaterThan(0);
    expect(valueIn(product?.trays?.dried.high as never, 'lb')).toBeLessThan(
      valueIn(product?.ready.high as never, 'lb'),
    );
  });
});

test('an error that is none of ours is not changed', () => {
  expect(() =>
    within(0, () => {
      throw new RangeError('other');
    }),
  ).toThrow(RangeError);
});
