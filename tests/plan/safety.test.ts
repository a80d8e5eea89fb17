import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/index';
import { type FeasibleDay, type PlanDayInput, planDay } from '../../src/plan/index';
import { valueIn } from '../../src/quantity/scale';
import type { Quantity } from '../../src/quantity/types';
import { feasible } from '../helpers/plans';
import { dayOf, unsafe, walk } from './safetyWalk';

const HOLDS = { 'half-pint': 12, pint: 9, quart: 7 };
const kitchen: PlanDayInput['kitchen'] = {
  elevation: '900 ft',
  hours: '12 h',
  hands: 3,
  pots: [{ volume: '16 quart', count: 2 }],
  canners: [
    { method: 'boiling-water', holds: HOLDS },
    { method: 'dial-gauge', holds: HOLDS },
  ],
  dryer: { trays: 10, trayArea: '1 ft2' },
  freezeDryer: { trays: 5, trayArea: '1 ft2', ice: '12 lb' },
  freezer: { room: '200 L' },
};
type Wanted = NonNullable<PlanDayInput['products']>[number];
const day = (raw: Readonly<Record<string, string>>, product: Wanted): FeasibleDay =>
  feasible({
    lots: Object.entries(raw).map(([food, amount]) => ({ food, raw: amount })),
    kitchen,
    products: [product],
  } as PlanDayInput);
const made = (plan: FeasibleDay) => plan.products[0] as FeasibleDay['products'][number];
const fromOf = (plan: FeasibleDay, food: string): number =>
  made(plan)
    .fromLots.filter((share) => share.food === food)
    .reduce((sum, { raw }) => sum + valueIn(raw, 'lb'), 0);

describe('a walk over the recipes', () => {
  test('no plan breaks a rule of safety', { timeout: 60_000 }, () => {
    const faults: string[] = [];
    let canned = 0;
    let kept = 0;
    for (const { row, food, seed } of walk(31, 4)) {
      const input = dayOf(row, food, seed);
      const plan = planDay(input);
      if (!plan.feasible) continue;
      canned += plan.products.filter(({ canning: jars }) => jars !== undefined).length;
      kept += plan.products.filter(({ canning: jars }) => jars === undefined).length;
      faults.push(...unsafe(input, plan).map((fault) => `${row.id} of ${food}, ${seed}: ${fault}`));
    }
    expect(faults).toEqual([]);
    // the walk reaches what it is about
    expect(canned).toBeGreaterThan(10);
    expect(kept).toBeGreaterThan(10);
  });
});

describe('a printed mix', () => {
  test('holds each food by its own measure', () => {
    const okra = day({ tomato: '24 lb', okra: '24 lb' }, { recipe: 'tomatoes-with-okra-or-zucchini' });
    expect(fromOf(okra, 'okra')).toBeCloseTo(fromOf(okra, 'tomato') / 3, 3);
    const sauce = day({ tomato: '10 lb', serrano: '24 lb' }, { recipe: 'easy-hot-sauce' });
    expect(fromOf(sauce, 'serrano')).toBeLessThan(fromOf(sauce, 'tomato') / 3);
    const cocktail = day({ peach: '20 lb', pear: '5 lb', grape: '5 lb' }, { recipe: 'fruit-cocktail' });
    expect(fromOf(cocktail, 'pear')).toBeCloseTo(fromOf(cocktail, 'peach'), 3);
    expect(fromOf(cocktail, 'grape')).toBeCloseTo(fromOf(cocktail, 'peach') / 2, 3);
  });

  test('a food that must be named is asked for by its own path', () => {
    const asked = () => day({ apple: '9 lb', banana: '9 lb' }, { make: 'leather' });
    expect(asked).toThrow(expect.objectContaining({ code: 'MISSING', path: 'products[0].from' }));
  });

  test('takes one of two foods that stand for each other', () => {
    const salsa = made(day({ 'green tomato': '20 lb' }, { recipe: 'tomatillo-green-salsa' }));
    expect(salsa.ingredients.filter(({ what }) => what.includes('tomatillo'))).toEqual([]);
    const mincemeat = made(day({ venison: '8 lb' }, { recipe: 'mincemeat-pie-filling' }));
    expect(mincemeat.ingredients.filter(({ role }) => role === 'meat')).toEqual([]);
  });

  test('what goes in beside is not left fresh', () => {
    const plan = day({ tomato: '24 lb', okra: '24 lb' }, { recipe: 'tomatoes-with-okra-or-zucchini' });
    const left = plan.leftFresh.find(({ food }) => food === 'okra');
    expect(valueIn(left?.raw as Quantity<'mass'>, 'lb')).toBeCloseTo(24 - fromOf(plan, 'okra'), 3);
  });
});

describe('a recipe is not changed', () => {
  test.each([
    ['beet', 'pickled-beets'],
    ['okra', 'pickled-dilled-okra'],
    ['tomato', 'tomato-whole-or-halves-in-water'],
    ['green bean', 'green-bean-whole-or-pieces'],
  ])('%s take no syrup', (food, recipe) => {
    const plan = day({ [food]: '40 lb' }, { recipe, syrup: 'heavy' });
    expect(plan.products).toEqual([]);
    expect(plan.leftOut[0]?.reason.code).toBe('recipe-changed');
  });

  test('an acid that is drained again is among the ingredients', () => {
    const mushrooms = made(day({ mushroom: '20 lb' }, { recipe: 'marinated-whole-mushrooms' }));
    const acids = mushrooms.ingredients.filter(({ role }) => role === 'acid').map(({ what }) => what);
    expect(acids).toEqual(['bottled lemon juice', 'vinegar']);
    const pickles = made(day({ 'pickling cucumber': '20 lb' }, { recipe: 'reduced-sodium-sliced-sweet-pickles' }));
    expect(pickles.ingredients.filter(({ role }) => role === 'acid')).toHaveLength(2);
  });

  test('food that gives more than the page counts on takes more acid', () => {
    const acidPerJar = (ready?: string): number => {
      const lots = [{ food: 'beet', raw: '28 lb', ...(ready === undefined ? {} : { ready }) }];
      const plan = feasible({ lots, kitchen, products: [{ recipe: 'pickled-beets' }] } as PlanDayInput);
      const { ingredients, units } = made(plan);
      const vinegar = ingredients.find(({ role }) => role === 'acid')?.amount as Quantity<'volume'>;
      return valueIn(vinegar, 'cup') / units.ready;
    };
    expect(acidPerJar('27 lb')).toBeGreaterThanOrEqual(acidPerJar() - 1e-6);
  });
});

describe('what is not canned', () => {
  test('keeps on no shelf as if it were', () => {
    const kraut = made(day({ cabbage: '25 lb' }, { recipe: 'sauerkraut' }));
    expect(kraut.keeps.map(({ place }) => place)).toEqual(['refrigerator']);
  });

  test('is blanched before it is packed', () => {
    const { directions: steps } = made(day({ 'green bean': '10 lb' }, { recipe: 'frozen-green-beans' }));
    const at = (start: string): number => steps.findIndex((step) => step.startsWith(start));
    expect(at('Blanch')).toBeGreaterThan(at('Wash'));
    expect(at('Blanch')).toBeLessThan(at('Pack'));
  });

  test('scrap vinegar sours to the end, and is not canned', () => {
    const plan = feasible({
      lots: [{ food: 'apple', raw: '40 lb' }],
      kitchen,
      products: [{ recipe: 'apple-slices' }, { recipe: 'fruit-scrap-vinegar', least: 1 }],
    } as PlanDayInput);
    const vinegar = plan.products.find(({ makes }) => makes === 'vinegar');
    expect(vinegar?.canning).toBeUndefined();
    expect(vinegar?.directions.filter((step) => step.startsWith('Ferment'))).toHaveLength(2);
    expect(vinegar?.cautions.map(({ id }) => id)).toContain('home-vinegar-unknown');
  });

  test.each([
    ['apple', { make: 'dried', moisture: 0.6 }, 'too-wet'],
    ['beef', { make: 'jerky', moisture: 0.5 }, 'too-wet'],
    ['beef', { make: 'jerky', thickness: '2 in' }, 'too-thick'],
    ['apple', { make: 'leather', moisture: 0.6 }, 'too-wet'],
  ] as const)('%s is as dry and as thin as its page', (food, product, code) => {
    const plan = day({ [food]: '20 lb' }, product);
    expect(plan.products).toEqual([]);
    expect(plan.leftOut[0]?.reason.code).toBe(code);
  });
});

describe('what is no name', () => {
  const getter = {
    get food(): string {
      throw new Error('read');
    },
    raw: '1 lb',
  };
  test.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty', '\u202eelppa', '🍎', '', 'a'.repeat(1e6)])(
    'is refused as %#',
    (name) => {
      const lots = [{ food: 'apple', raw: '20 lb' }];
      for (const input of [
        { lots: [{ food: name, raw: '20 lb' }], kitchen, products: [] },
        { lots, kitchen, products: [{ recipe: name }] },
        { lots, kitchen, products: [{ make: name }] },
        { lots, kitchen, products: [{ recipe: 'apple-sauce', from: name }] },
        { lots, kitchen, products: [{ recipe: 'apple-sauce', jar: name }] },
      ])
        expect(() => planDay(input as PlanDayInput)).toThrow(StillroomError);
    },
  );
  test('also behind a getter that throws', () => {
    expect(() => planDay({ lots: [getter], kitchen, products: [] } as unknown as PlanDayInput)).toThrow();
  });
});
