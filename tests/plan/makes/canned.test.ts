import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PlanDayInput, planDay } from '../../../src/plan/index';
import { testedProcess } from '../../../src/process/index';
import type { Quantity } from '../../../src/quantity/index';
import { valueIn } from '../../../src/quantity/scale';
import { FULL_KITCHEN, type Products, planOf, productOf } from '../fullKitchen';

const cups = (amount: unknown) => valueIn(amount as Quantity<'volume'>, 'cup');
/** A plan of several lots of peaches. */
function planOfLots(
  lots: PlanDayInput['lots'],
  product: Omit<Products[number], 'from'>,
  aim: 'least waste' | 'most worth' = 'most worth',
) {
  const plan = planDay({ lots, kitchen: FULL_KITCHEN, products: [{ from: 'peach', ...product }], aim });
  if (!plan.feasible) throw new Error(plan.reason.text);
  return plan;
}
const halves = { make: 'jars', form: 'halves', pack: 'hot', jar: 'quart', method: 'boiling-water' } as const;

describe('jars by the tested process of their recipe', () => {
  test('minutes by the place, never fewer higher up', () => {
    const minutes = (feet: number) =>
      productOf('peach', halves, { elevation: { value: feet, unit: 'ft' } }).canning?.minutes ?? 0;
    // quarts of hot-packed halves: 25 min to 1,000 ft, 30 to 3,000, 35 to 6,000, 40 above
    expect([500, 2000, 4000, 7000].map(minutes)).toEqual([25, 30, 35, 40]);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 8000 }), fc.integer({ min: 0, max: 8000 }), (one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        expect(minutes(low)).toBeLessThanOrEqual(minutes(high));
      }),
      { numRuns: 15 },
    );
  });
  test('headspace and what to do with a part-filled jar', () => {
    const { canning: jars, directions: steps } = productOf('peach', halves);
    expect(jars?.headspace).toEqual({ value: 0.5, unit: 'in' });
    expect(steps.join(' ')).toContain('Leave 1/2 in of headspace');
    expect(steps).toContain('A part-filled last jar to the fridge, not into the canner.');
  });
  test('low-acid food never goes into boiling water', () => {
    for (const food of ['green beans', 'carrot', 'potato', 'beet', 'sweet corn']) {
      const [out] = planOf(food, { make: 'jars', jar: 'pint', method: 'boiling-water' }).leftOut;
      expect(out?.reason.code, food).toBe('no-tested-process');
      expect(out?.instead[0]?.text, food).toContain('gauge');
    }
    const { canning: jars } = productOf('green beans', { make: 'jars', jar: 'pint' });
    expect(jars?.method).toBe('weighted-gauge');
    expect(jars?.pressure?.value).toBeGreaterThanOrEqual(10);
  });
  test('your own weighing moves the promise', () => {
    const quarts = (ready?: `${number} lb`) =>
      planOfLots([{ food: 'peach', raw: '30 lb', ...(ready === undefined ? {} : { ready }) }], halves).products[0]
        ?.units.promised ?? 0;
    expect(quarts('20 lb')).toBeLessThan(quarts());
    expect(quarts('29 lb')).toBeGreaterThan(quarts());
  });
  test('syrup for all jars that are readied', () => {
    const { ingredients, units } = productOf('peach', { ...halves, syrup: 'light' });
    const sugar = ingredients.find(({ what }) => what === 'sugar for light syrup');
    // 2 1/4 cups of sugar for 7 quarts
    expect(cups(sugar?.amount)).toBeCloseTo((units.ready / 7) * 2.25, 9);
  });
});

describe('acid in every jar that needs it, and on the list to buy', () => {
  const acids = ['bottled lemon juice', 'citric acid', 'vinegar'];
  test.each([
    ['tomato', 'crushed', 'quart'],
    ['fig', 'whole', 'pint'],
    ['Asian pear', 'halves', 'quart'],
    ['apple', 'pie filling', 'quart'],
    ['apple', 'butter', 'pint'],
  ])('%s %s', (food, form, jar) => {
    const asked = { make: 'jars', form, jar, method: 'boiling-water', pack: 'hot' } as const;
    const needed = (pantry: object) => planOf(food, asked, pantry).haveReady.filter(({ what }) => acids.includes(what));
    for (const pantry of [{}, { pantry: [] }, { pantry: [{ item: 'sugar', amount: '50 lb' }] }]) {
      expect(needed(pantry).length).toBe(1);
      expect(needed(pantry)[0]?.short).toEqual(needed(pantry)[0]?.needed);
    }
    const [line] = needed({});
    const full = needed({ pantry: [{ item: line?.what, amount: '50 lb' }] });
    expect(full[0]).toMatchObject({ what: line?.what });
    expect(full[0]?.short).toBeUndefined();
  });
  test('tomatoes in a pressure canner too: 2 tbsp a quart, 1 tbsp a pint', () => {
    for (const [jar, tbsp] of [
      ['quart', 2],
      ['pint', 1],
    ] as const) {
      const {
        ingredients,
        units,
        canning: jars,
      } = productOf('tomato', {
        make: 'jars',
        form: 'crushed',
        jar,
        method: 'weighted-gauge',
      });
      const acid = ingredients.find(({ role }) => role === 'acid');
      expect(valueIn(acid?.amount as Quantity<'volume'>, 'tbsp')).toBeCloseTo(tbsp * units.ready, 9);
      expect(jars?.acidToAdd).toContain('each jar');
    }
  });
  test('where only citric acid is at hand, and too little of it, the rest of it is bought', () => {
    const [line] = planOf(
      'tomato',
      { make: 'jars', form: 'crushed', jar: 'quart', method: 'boiling-water' },
      { pantry: [{ item: 'citric acid', amount: '2 g' }] },
    ).haveReady.filter(({ what }) => what === 'citric acid');
    // 4.6 g a teaspoon, 48 teaspoons to the cup
    expect(cups(line?.needed) - cups(line?.short)).toBeCloseTo(2 / (4.6 * 48), 9);
  });
});

describe('jam is made by its printed batch, never doubled', () => {
  test.each([
    ['peach', 'none', 6, 7, 5, 2],
    ['peach', 'powdered', 5, 6, 5, 8],
    ['peach', 'liquid', 8, 8, 7, 4],
    ['strawberry', 'none', 3, 4, 4, 0],
    ['strawberry', true, 9, 10, 8, 0],
    ['apricot', false, 5, 6, 4, 2],
    ['sour cherry', undefined, 6, 6, 5, 0],
    ['blueberry', undefined, 5, 5, 5.5, 1],
    ['blackberry', 'powdered', 11, 12, 8.5, 0],
  ] as const)(
    '%s with pectin %s: %i to %i half-pints, %d cups of sugar, %d tbsp of lemon juice',
    (fruit, pectin, low, high, sugar, lemon) => {
      const answer = planOf(fruit, {
        make: 'jam',
        worth: 1,
        jar: 'half-pint',
        ...(pectin === undefined ? {} : { pectin }),
      });
      const [jam] = answer.products;
      const batches = (jam?.units.promised ?? 0) / low;
      expect(Number.isInteger(batches) && batches > 0).toBe(true);
      expect(jam?.units.ready).toBe(batches * high);
      const tasks = (kind: string) => answer.schedule.tasks.filter((each) => each.kind === kind);
      expect(tasks('cook').length).toBe(batches);
      expect(tasks('can').map(({ units }) => units?.count)).toEqual(Array.from({ length: batches }, () => high));
      const line = (of: string) => jam?.ingredients.find(({ role }) => role === of);
      expect(cups(line('sugar')?.amount)).toBeCloseTo(batches * sugar, 9);
      expect(line('acid') === undefined ? 0 : cups(line('acid')?.amount)).toBeCloseTo((batches * lemon) / 16, 9);
      expect(line('acid')?.neverLess ?? true).toBe(true);
      expect(jam?.directions.join(' ')).toContain('never double it');
      expect(jam?.cautions.map(({ id }) => id)).toEqual(expect.arrayContaining(['one-batch', 'jam-sets-by-test']));
    },
  );
  test('two lots make batches together, and with `least waste` no part of one', () => {
    const [jam] = planOfLots(
      [
        { food: 'peach', raw: '3 lb', ready: '2.4 lb' },
        { food: 'peach', raw: '9 lb' },
      ],
      { make: 'jam', pectin: 'none', jar: 'half-pint' },
      'least waste',
    ).products;
    expect((jam?.units.promised ?? 1) % 6).toBe(0);
    expect(jam?.units.promised).toBeGreaterThan(0);
  });
  test('pectin that is in the pantry is taken', () => {
    const { recipe } = productOf('peach', { make: 'jam' }, { pantry: [{ item: 'pectin', amount: '100 g' }] });
    expect(recipe).toBe('peach-jam-powdered-pectin');
  });
  test.each([
    ['plum', {}, 'no-amounts'],
    ['mango', {}, 'no-recipe'],
    ['apricot', { pectin: 'liquid' }, 'no-recipe-for-pectin'],
    ['blueberry', { pectin: false }, 'no-recipe-for-pectin'],
    ['peach', { sugarToFruit: 0.5 }, 'recipe-changed'],
  ] as const)('%s %o is left out with its reason: %s', (fruit, more, code) => {
    const answer = planOf(fruit, { make: 'jam', ...more });
    expect(answer.products).toEqual([]);
    expect(answer.leftOut[0]?.reason.code).toBe(code);
    expect(answer.leftOut[0]?.instead[0]?.text.length).toBeGreaterThan(15);
  });
  test('a jam that has no process is not canned', () => {
    const fig = productOf('fig', { make: 'jam' });
    expect(fig.canning).toBeUndefined();
    expect(fig.cautions.map(({ id }) => id)).toContain('no-shelf-process');
    expect(fig.keeps.every(({ place }) => place !== 'shelf')).toBe(true);
  });
  test.each([
    ['no-pot-for-batch', 'no pot here holds one batch', { pots: [{ volume: '2 quarts' }] }],
    [
      'no-canner-for-batch',
      'no canner here holds',
      { canners: [{ method: 'boiling-water', holds: { 'half-pint': 5 } }] },
    ],
  ])('%s', (code, text, kitchen) => {
    const [out] = planOf('peach', { make: 'jam', pectin: 'none', jar: 'half-pint' }, kitchen).leftOut;
    expect(out?.reason).toMatchObject({ code, text: expect.stringContaining(text) });
  });
});

test('whole batches of pickles, though several may be cooked together', () => {
  const { units, ingredients } = productOf('asparagus', { recipe: 'pickled-asparagus', jar: 'pint' }, {}, '60 lb');
  // 6 pints of 10 lb, 4 1/2 cups of vinegar
  expect(units.promised % 6).toBe(0);
  const vinegar = ingredients.find(({ role }) => role === 'acid');
  expect(cups(vinegar?.amount)).toBeGreaterThanOrEqual((4.5 * units.ready) / 6 - 1e-9);
});

test('the minutes are those that `testedProcess` answers for the recipe', () => {
  const { canning: jars, recipe, food } = productOf('apple', { make: 'jars', form: 'butter', jar: 'pint' });
  const asked = { food, recipe, jar: 'pint', method: 'boiling-water', elevation: '500 ft' } as const;
  expect(testedProcess(asked)).toMatchObject({ tested: true, minutes: jars?.minutes });
});

test('yellow flesh is asked of peaches and nectarines, and of no apricot', () => {
  const asks = (food: string) =>
    productOf(food, { recipe: 'peach-pineapple-spread', jar: 'half-pint' }).cautions.some(
      ({ id }) => id === 'yellow-flesh',
    );
  expect([asks('peach'), asks('nectarine'), asks('apricot')]).toEqual([true, true, false]);
});
