import { describe, expect, test } from 'vitest';
import { planDay } from '../../../src/plan/index';
import { hasJars, jarAndLid } from '../../../src/plan/makes/canner';
import { jarsOf, LIDS } from '../../../src/plan/request/stock';
import { FULL_KITCHEN, planOf, productOf } from '../fullKitchen';

const halves = { make: 'jars', form: 'halves', pack: 'hot', jar: 'quart', method: 'boiling-water' } as const;

describe('canners', () => {
  test('two products of one process share a load', () => {
    const plan = planDay({
      lots: [
        { food: 'peach', raw: '4 lb' },
        { food: 'pear', raw: '4 lb' },
      ],
      kitchen: FULL_KITCHEN,
      products: ['peach', 'pear'].map((from) => ({ ...halves, from, least: 1 })),
    });
    if (!plan.feasible) throw new Error(plan.reason.text);
    const [peaches] = plan.products;
    // both 25 min at 500 ft
    expect(peaches?.canning?.loads).toEqual([
      {
        canner: 'boiling-water canner 1',
        count: 1,
        jarsPerLoad: 7,
        minutesEach: Math.ceil(peaches?.canning?.loadMinutes.high ?? 0),
        sharedWith: ['pear halves in quarts'],
      },
    ]);
  });
  test('every jar readied has a place in a load', () => {
    const { canning: jars, units } = productOf('peach', halves, {}, '60 lb');
    const places = (jars?.loads ?? []).reduce((sum, { count: loads, jarsPerLoad }) => sum + loads * jarsPerLoad, 0);
    expect(places).toBeGreaterThanOrEqual(units.ready);
    expect(units.ready).toBeGreaterThan(14);
  });
  test('a weak burner takes longer to heat a load', () => {
    const minutes = (kitchen: object) => productOf('peach', halves, kitchen).canning?.loadMinutes.high ?? 0;
    expect(minutes({ burnerPower: '1000 W' })).toBeGreaterThan(minutes({}) + 10);
  });
  test('the jar of the printed yield comes first, then the largest stock', () => {
    const canners = [{ method: 'boiling-water', holds: { pint: 9, 'half-pint': 12 } }];
    expect(productOf('peach', { make: 'jam', pectin: 'none' }, { canners }).canning?.jar).toBe('half-pint');
    const jars = [
      { jar: 'pint', count: 4 },
      { jar: 'quart', count: 40 },
    ];
    expect(productOf('peach', { make: 'jars', form: 'halves' }, { jars }).canning?.jar).toBe('quart');
  });
  test('one more jar in stock never keeps fewer kilograms', () => {
    const used = (count: number) => {
      const kitchen = { jars: [{ jar: 'quart', count }] };
      const plan = planOf('peach', halves, kitchen);
      expect(plan.provenBest).toBe(count > 0);
      return plan.products[0]?.raw.value ?? 0;
    };
    const kilograms = [0, 3, 6, 7, 8, 12].map(used);
    expect(kilograms).toEqual([...kilograms].sort((one, other) => one - other));
    expect(kilograms[0]).toBe(0);
    expect(kilograms[5]).toBeGreaterThan(10);
  });
});

describe('why none', () => {
  test.each([
    ['no-canner', 'the kitchen has no canner', { canners: [] }, { make: 'jars', form: 'halves' }],
    ['no-canner', 'the kitchen has no dial-gauge canner', {}, { ...halves, method: 'dial-gauge' }],
    ['no-jars', 'no quart jars are in stock', { jars: [{ jar: 'pint', count: 9 }] }, halves],
    [
      'no-canner-for-jar',
      'no boiling-water canner here holds quart jars',
      { canners: [{ method: 'boiling-water', holds: { pint: 9 } }] },
      halves,
    ],
    ['no-tested-process', 'larger than the largest tested', {}, { make: 'jam', pectin: 'none', jar: 'quart' }],
  ] as const)('%s: %s', (code, text, kitchen, product) => {
    const plan = planOf('peach', product, kitchen);
    expect(plan.products).toEqual([]);
    expect(plan.leftOut[0]?.reason).toMatchObject({ code, text: expect.stringContaining(text) });
    expect(plan.leftOut[0]?.instead[0]?.text.length).toBeGreaterThan(3);
  });
});

test('a jar takes a jar and a lid; where no stock is named it is not limited', () => {
  expect(jarAndLid('pint')).toEqual([
    { stock: jarsOf('pint'), amount: 1 },
    { stock: LIDS, amount: 1 },
  ]);
  expect(hasJars({} as never, 'pint')).toBe(true);
  expect(hasJars({ jars: [{ jar: 'quart', count: 3 }] } as never, 'pint')).toBe(false);
});
