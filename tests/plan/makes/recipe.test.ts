import { describe, expect, test } from 'vitest';
import { planDay } from '../../../src/plan/index';
import { hasAcid, lacksAmounts } from '../../../src/plan/makes/needs';
import { type Part, spooned } from '../../../src/plan/makes/recipe';
import type { Quantity } from '../../../src/quantity/index';
import { valueIn } from '../../../src/quantity/scale';
import { FULL_KITCHEN, planOf, productOf } from '../fullKitchen';

const cups = (amount: unknown) => valueIn(amount as Quantity<'volume'>, 'cup');
const line = (role: Part['line']['role'], keep?: true): Part =>
  ({ line: { role, ...(keep === undefined ? {} : { keep }) }, what: role, per: { of: 'batch', much: 1 } }) as Part;

describe('amounts as the page prints them, for all that is made', () => {
  test.each([
    ['apple', 'bottled lemon juice', 2, 'tbsp'],
    ['blueberry', 'bottled lemon juice', 3, 'tbsp'],
    ['sour cherry', 'bottled lemon juice', 4, 'tsp'],
    ['peach', 'bottled lemon juice', 0.25, 'cup'],
  ] as const)('%s pie filling: lemon juice, sugar, starch and water by the quart', (fruit, acid, amount, unit) => {
    const asked = { make: 'jars', form: 'pie filling', jar: 'quart', method: 'boiling-water' } as const;
    const { products, haveReady: ready } = planOf(fruit, asked);
    const [filling] = products;
    const jars = filling?.units.ready ?? 0;
    // the food itself, and then what a list must not lose
    const [food, first] = filling?.ingredients ?? [];
    expect(food?.role).toBe('fruit');
    expect(first).toMatchObject({ what: acid, role: 'acid', neverLess: true });
    expect(cups(first?.amount)).toBeCloseTo(jars * valueIn({ value: amount, unit }, 'cup'), 9);
    expect(filling?.ingredients.map(({ role }) => role)).toEqual(expect.arrayContaining(['sugar', 'starch', 'liquid']));
    expect(ready.find(({ what }) => what === acid)?.short).toBeDefined();
    expect(filling?.directions.join(' ')).toContain('Add the lemon juice');
  });
  test('a pint takes half of a quart', () => {
    const each = (jar: string) => {
      const filling = productOf('peach', { make: 'jars', form: 'pie filling', jar, method: 'boiling-water' });
      return cups(filling.ingredients[1]?.amount) / filling.units.ready;
    };
    expect(each('quart')).toBeCloseTo(2 * each('pint'), 9);
  });
  test('apple butter: 2 cups each of vinegar and cider to 8 lb of apples', () => {
    const { products, haveReady: ready } = planOf('apple', {
      make: 'jars',
      form: 'butter',
      jar: 'pint',
      method: 'boiling-water',
    });
    const [butter] = products;
    const pounds = valueIn(butter?.raw as Quantity<'mass'>, 'lb');
    for (const what of ['vinegar', 'cider']) {
      const part = butter?.ingredients.find((each) => each.what === what);
      expect(cups(part?.amount)).toBeCloseTo(pounds / 4, 9);
      expect(cups(ready.find((each) => each.what === what)?.short)).toBeCloseTo(pounds / 4, 9);
    }
    expect(cups(ready.find(({ what }) => what === 'cinnamon')?.short)).toBeCloseTo(pounds / 64, 9);
    expect(butter?.directions.join(' ')).toContain('cider and vinegar');
  });
  test('applesauce takes 1/2 cup of water to each pot of 8 quarts', () => {
    const sauce = productOf('apple', { make: 'sauce', jar: 'pint', method: 'boiling-water' });
    // a pot holds two thirds of its volume, and a liter of food weighs a kilogram
    const pots = valueIn(sauce.ready.high, 'kg') / ((8 * 0.946352946 * 2) / 3);
    expect(sauce.ingredients[0]?.what).toContain('water');
    expect(cups(sauce.ingredients[0]?.amount)).toBeCloseTo(pots / 2, 6);
    expect(sauce.ingredients[0]?.printed).toBe('1/2 cup to a pot of 8 qt');
  });
  test('puree takes 1 cup of water to a quart of prepared fruit', () => {
    const puree = productOf('plum', { make: 'jars', form: 'puree', jar: 'pint', method: 'boiling-water' });
    // a liter of it weighs a kilogram
    const quarts = valueIn(puree.ready.high, 'kg') / 0.946352946;
    expect(cups(puree.ingredients[0]?.amount)).toBeCloseTo(quarts, 6);
  });
  test.each([
    ['plum', 'puree', 'sieve'],
    ['apple', 'sauce', 'in the water'],
    ['tomato', 'sauce', 'third'],
    ['rhubarb', 'stewed', 'with the sugar'],
    ['cranberry', 'sauce', 'Boil with the sugar'],
  ] as const)('%s %s: its own steps', (food, form, step) => {
    const { directions: steps } = productOf(food, { make: 'jars', form, jar: 'pint', method: 'boiling-water' });
    expect(steps.join(' ')).toContain(step);
  });
  test('tomatoes packed without liquid are not covered with any', () => {
    const form = 'whole or halved, no added liquid';
    const jars = productOf('tomato', { make: 'jars', form, pack: 'raw', jar: 'quart', method: 'boiling-water' });
    expect(jars.recipe).toBe('tomato-whole-or-halves-without-liquid');
    expect(jars.directions.join(' ')).not.toContain('cover');
  });
  test('a batch that fills 6 to 7 jars has its sugar once', () => {
    const { ingredients, units } = productOf('peach', { make: 'jam', pectin: 'none', jar: 'half-pint' });
    const sugar = ingredients.find(({ role }) => role === 'sugar');
    expect(cups(sugar?.amount)).toBeCloseTo((5 * units.promised) / 6, 9);
  });
  test('what must not be changed is said where the work is done', () => {
    const jam = productOf('peach', { make: 'jam', pectin: 'none', jar: 'half-pint' });
    expect(jam.directions).toContain('Change none of this: 4 cups of sugar and 2 tbsp of lemon juice.');
  });
});

describe('other foods of a page', () => {
  const salsa = (lots: Parameters<typeof planDay>[0]['lots']) => {
    const products = [{ recipe: 'chile-salsa', from: 'tomato', jar: 'pint', least: 1 }];
    const plan = planDay({ lots, kitchen: FULL_KITCHEN, products });
    if (!plan.feasible) throw new Error(plan.reason.text);
    return plan;
  };
  const tomatoes = { food: 'tomato', raw: '10 lb' } as const;
  const onions = { food: 'onion', raw: '9 lb' } as const;
  test('come from the lots where they were bought, and are to buy where they were not', () => {
    const bought = salsa([tomatoes, onions]);
    const onion = (plan: typeof bought) => plan.products[0]?.ingredients.find(({ what }) => what.includes('onion'));
    expect(onion(bought)?.toBuy).toBeUndefined();
    expect(onion(salsa([tomatoes]))?.toBuy).toBe('onion');
    const taken = bought.products[0]?.fromLots.find(({ food }) => food === 'onion')?.raw;
    expect(valueIn(taken as Quantity<'mass'>, 'lb')).toBeGreaterThan(0.5);
  });
  test('and count as used: what was bought is what is used and what is left', () => {
    const plan = salsa([tomatoes, onions]);
    for (const [food, bought] of [
      ['tomato', 10],
      ['onion', 9],
    ] as const) {
      const used = plan.products.flatMap(({ fromLots: from }) => from).filter((share) => share.food === food);
      const left = plan.leftFresh.filter((share) => share.food === food);
      const all = [...used, ...left].reduce((sum, { raw }) => sum + valueIn(raw, 'lb'), 0);
      expect(all).toBeCloseTo(bought, 2);
    }
  });
});

test('cups, and spoons where it is little', () => {
  expect(spooned(2)).toEqual({ value: 2, unit: 'cup' });
  expect(spooned(0.25)).toEqual({ value: 0.25, unit: 'cup' });
  expect(spooned(1 / 8)).toEqual({ value: expect.closeTo(2, 9), unit: 'tbsp' });
  expect(spooned(1 / 48)).toEqual({ value: expect.closeTo(1, 9), unit: 'tsp' });
});
test('a page that prints no batch lacks what sets or keeps it, and no spice', () => {
  expect(lacksAmounts({ parts: [line('acid')] }, undefined)).toBe(true);
  expect(lacksAmounts({ parts: [line('spice', true)] }, undefined)).toBe(true);
  expect(lacksAmounts({ parts: [line('spice')] }, undefined)).toBe(false);
  const batch = { kg: 1, of: 'ready', jars: { low: 1, high: 1 }, basis: [] } as const;
  expect(lacksAmounts({ parts: [line('acid')] }, batch)).toBe(false);
});
test('an acid that the page keeps counts as acid; one to taste does not', () => {
  expect(hasAcid({ parts: [line('acid', true)], liters: 1 })).toBe(true);
  expect(hasAcid({ parts: [line('acid'), line('sugar', true)], liters: 1 })).toBe(false);
});

describe('what is drained before the jars are filled', () => {
  const pickles = productOf('pickling cucumber', { recipe: 'bread-and-butter-pickles', jar: 'pint' });
  test('is laid out and bought, though it goes into no jar', () => {
    const salt = pickles.ingredients.find(({ what }) => what.includes('under ice'));
    const batches = cups(pickles.ingredients.find(({ what }) => what.includes('vinegar'))?.amount) / 4;
    expect(cups(salt?.amount)).toBeCloseTo(batches / 2, 6);
  });
  test('an onion that the page weighs is bought by that weight', () => {
    const onion = pickles.ingredients.find(({ what }) => what.includes('onion'));
    const batches = cups(onion?.amount) / 8;
    expect(valueIn(onion?.or as Quantity<'mass'>, 'lb')).toBeCloseTo(3 * batches, 6);
  });
  test('its acid is of the recipe, not of each jar', () => {
    expect(pickles.canning?.acidGoesInto).toBe('recipe');
    const tomatoes = productOf('tomato', { make: 'jars', form: 'crushed', jar: 'pint', method: 'boiling-water' });
    expect(tomatoes.canning?.acidGoesInto).toBe('each jar');
  });
});
test('what must not be changed of the other pack is not said', () => {
  const venison = productOf('venison', { make: 'meat in jars', jar: 'pint' });
  expect(venison.canning?.pack).toBe('hot');
  expect(venison.directions.join(' ')).not.toContain('no liquid');
});

test('juice that the page has bought is not made of fresh fruit', () => {
  const plan = planOf('apple', { recipe: 'refrigerated-apple-spread', jar: 'half-pint' });
  expect(plan.products).toEqual([]);
  expect(plan.leftOut.map(({ reason }) => reason.code)).toEqual(['bought-form']);
});
test('jerky: a tray is done near a quarter of what went on it, as the pages print', () => {
  const { drying } = productOf('venison', { make: 'jerky' });
  const [on, done] = [drying?.perTray, drying?.stopWeight?.low].map((mass) => valueIn(mass as Quantity<'mass'>, 'lb'));
  expect((done as number) / (on as number)).toBeGreaterThan(0.2);
  expect((done as number) / (on as number)).toBeLessThan(0.35);
});
