import { describe, expect, test } from 'vitest';
import type { StillroomError } from '../../../src/errors/index';
import { foods } from '../../../src/foods/index';
import { type PlanDayInput, planDay } from '../../../src/plan/index';
import { within } from '../../../src/plan/makes/making';
import { valueIn } from '../../../src/quantity/scale';

const kitchen: PlanDayInput['kitchen'] = {
  elevation: '100 m',
  hours: '24 h',
  hands: 4,
  pots: [{ volume: '20 quarts', count: 2 }],
  canners: [
    { method: 'dial-gauge', holds: { quart: 7, pint: 9 }, waterVolume: '4 quarts' },
    { method: 'boiling-water', holds: { 'half-pint': 12, pint: 9, quart: 7 }, count: 2 },
  ],
  dryer: { trays: 40, trayArea: '200 in2' },
  freezeDryer: { trays: 5, trayArea: '200 in2', ice: '20 lb', loads: 2 },
  freezer: { room: '100 L' },
};
const made = (lots: PlanDayInput['lots'], products: PlanDayInput['products'], more: object = {}) => {
  const plan = planDay({ lots, kitchen: { ...kitchen, ...more }, products });
  if (!plan.feasible) throw new Error(plan.reason.text);
  return plan;
};

describe('frozen: vegetables are blanched as the freezing tables print', () => {
  test.each([
    ['beet', 'slices', 'cooked until tender before freezing'],
    ['carrot', 'slices', 'Blanch in boiling water for 2 min'],
    ['sweet corn', 'kernels', 'Blanch in boiling water for 4 min'],
    ['sweet corn', 'cut from the cob', 'Blanch in boiling water for 4 min'],
    ['onion', 'slices', 'Blanch in boiling water for 10 to 15 s,'],
    ['corn', 'whole', 'small ears 7 min in boiling water; medium ears 9 min'],
    ['green beans', 'pieces', 'Blanch in boiling water for 3 min'],
    ['broccoli', 'florets', 'Blanch in boiling water for 3 min'],
    ['zucchini', 'cubes', 'Blanch in steam for 2 to 3 min'],
    ['onion', 'chopped', 'needs no blanching'],
    ['tomato', 'pieces', 'cooked until tender'],
    ['spinach', 'leaves', 'Blanch in boiling water for 2 min'],
    ['peach', 'slices', 'Freeze pieces loose'],
    ['apple', 'slices', 'Sprinkle 1/2 tsp of ascorbic acid, dissolved in 3 tbsp of water, over each quart, or steam'],
  ])('%s', (food, form, first) => {
    expect(made([{ food, raw: '10 lb' }], [{ make: 'frozen', from: food, form }]).products[0]?.steps[0]).toContain(
      first,
    );
  });
  test('a vegetable whose one time is for no cut says so', () => {
    const [left] = made(
      [{ food: 'celery', raw: '10 lb' }],
      [{ make: 'frozen', from: 'celery', form: 'slices' }],
    ).leftOut;
    expect(left?.instead[0]?.text).toMatch(/leave the form out/);
    const plain = made([{ food: 'celery', raw: '10 lb' }], [{ make: 'frozen', from: 'celery' }]);
    expect(plain.products[0]?.steps[0]).toContain('Blanch in boiling water for 3 min');
  });
  test('the pot, the water, the ice and the hands of blanching are in the plan', () => {
    const frozen = (more: object = {}) =>
      made([{ food: 'sweet corn', raw: '40 lb' }], [{ make: 'frozen', from: 'sweet corn', form: 'kernels' }], more)
        .products[0];
    const [blanch, cool] = frozen()?.steps ?? [];
    // a 20 quart pot to its fill limit holds 13.3 quarts: 2.9 lb with a gallon of water for each
    expect(blanch).toContain('at most 2 3/4 lb at a time in the 20 quart pot');
    expect(blanch).toContain('return to the boil');
    expect(blanch).toMatch(/with .* gallons of water/);
    expect(cool).toContain('ice water for 4 min, with as much ice as vegetables by weight');
    const raw = made([{ food: 'peach', raw: '40 lb' }], [{ make: 'frozen', from: 'peach' }]).products[0];
    const perPound = (product: typeof raw) =>
      ((product?.handsMinutes.prepare ?? 0) + (product?.handsMinutes.stir ?? 0)) / (product?.raw.value ?? 1);
    expect(perPound(frozen())).toBeGreaterThan(perPound(raw) + 0.5);
    const smaller = frozen({ pots: [{ volume: '10 quarts' }] });
    expect(perPound(smaller)).toBeGreaterThan(perPound(frozen()) + 0.5);
  });
  test('whole ears are cobs, each size with its own time, cooled twice as long', () => {
    const steps = made([{ food: 'corn', raw: '20 lb' }], [{ make: 'frozen', from: 'corn', form: 'whole' }]).products[0]
      ?.steps;
    expect(steps?.[0]).toContain('large ears 11 min in boiling water');
    expect(steps?.[0]).not.toContain('kernel');
    expect(steps?.[1]).toContain('small ears 14 min; medium ears 18 min; large ears 22 min)');
  });
  test('a minute longer in a high kitchen', () => {
    const plan = made([{ food: 'broccoli', raw: '10 lb' }], [{ make: 'frozen', from: 'broccoli', form: 'florets' }], {
      elevation: '5,200 ft',
    });
    expect(plan.products[0]?.steps[0]).toContain('Blanch in boiling water for 4 min');
  });
  test.each([
    ['leek', 'slices', 'hold no blanching time for leek'],
    ['fava bean', 'whole', 'hold no blanching time for fava bean'],
    ['broccoli', 'puree', 'no blanching time for broccoli in this cut'],
    ['sweet corn', 'puree', 'no blanching time for sweet corn in this cut'],
  ])('never raw without a word: %s, %s is left out', (food, form, reason) => {
    const plan = made([{ food, raw: '10 lb' }], [{ make: 'frozen', from: food, form }]);
    expect(plan.products).toEqual([]);
    expect(plan.leftOut[0]?.reason.text).toContain(reason);
  });
  test('nor in a kitchen without a pot', () => {
    const plan = made([{ food: 'carrot', raw: '10 lb' }], [{ make: 'frozen', from: 'carrot', form: 'slices' }], {
      pots: [],
    });
    expect(plan.leftOut[0]?.reason.text).toContain('no pot');
  });
  test('a fruit without a freezer pack says so', () => {
    const ids = (from: string) =>
      made([{ food: from, raw: '10 lb' }], [{ make: 'frozen', from, form: 'slices' }]).products[0]?.cautions.map(
        ({ id }) => id,
      );
    expect(ids('mango')).toContain('fruit-not-in-tables');
    expect(ids('peach')).not.toContain('fruit-not-in-tables');
  });
  test('every vegetable is blanched, cooked, printed as raw, or left out', () => {
    let seen = 0;
    for (const food of foods({ kind: 'vegetable' }).map(({ food }) => food)) {
      for (const form of [undefined, 'whole', 'slices', 'kernels']) {
        let plan: ReturnType<typeof planDay>;
        try {
          plan = planDay({
            lots: [{ food, raw: '10 lb' }],
            kitchen,
            products: [{ make: 'frozen', from: food, ...(form === undefined ? {} : { form }) }],
          });
        } catch (error) {
          // no yield or no weight of that cut in the tables
          expect((error as StillroomError).code, `${food} ${form}`).toBe('UNKNOWN_NAME');
          continue;
        }
        if (!plan.feasible) throw new Error(food);
        for (const { steps } of plan.products) expect(steps.length, `${food} ${form}`).toBeGreaterThan(1);
        seen += plan.products.length;
      }
    }
    expect(seen).toBeGreaterThan(30);
  });
  test('no more a day than the freezer takes: 2 lb for each cubic foot', () => {
    const plan = made([{ food: 'peach', raw: '60 lb' }], [{ make: 'frozen', from: 'peach' }], {
      freezer: { room: '100 L', volume: '5 ft3' },
    });
    expect(plan.products[0]?.units.ready).toBeLessThanOrEqual(10);
  });
});

describe('jars', () => {
  test('two products of one process share a load', () => {
    const plan = made(
      [
        { food: 'peach', raw: '4 lb' },
        { food: 'pear', raw: '4 lb' },
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
        sharedWith: ['pear halves in quarts'],
      },
    ]);
  });
  test('your own weighing moves the promise', () => {
    const quarts = (ready?: `${number} lb`) =>
      made(
        [{ food: 'peach', raw: '30 lb', ...(ready === undefined ? {} : { ready }) }],
        [{ make: 'jars', from: 'peach', form: 'halves', pack: 'hot', jar: 'quart' }],
      ).products[0]?.units.promised ?? 0;
    expect(quarts('20 lb')).toBeLessThan(quarts());
    expect(quarts('29 lb')).toBeGreaterThan(quarts());
  });
  test('hot jars take longer to heat on a weak burner, and own work times count', () => {
    const jam = (more: object, product: object = {}) =>
      made(
        [{ food: 'peach', raw: '9 lb' }],
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
      [{ food: 'apple', raw: '20 lb' }],
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
