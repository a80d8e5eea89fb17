import { describe, expect, test } from 'vitest';
import pantryJson from '../../../data/plan/pantry.json';
import { type PlanDayInput, planDay } from '../../../src/plan/index';
import { kgOfMeasure } from '../../../src/plan/makes/pantry';
import { valueIn } from '../../../src/quantity/scale';
import type { Quantity } from '../../../src/quantity/types';
import { PANTRY } from '../../../src/recipes/pantryItems';
import { printedJams } from '../../../src/recipes/printedJams';
import { codeText } from '../../helpers/errors';

const kitchen: PlanDayInput['kitchen'] = {
  elevation: '500 ft',
  hours: '12 h',
  hands: 2,
  pots: [{ volume: '12 quarts', count: 2 }],
  canners: [
    { method: 'boiling-water', holds: { 'half-pint': 12, pint: 9, quart: 7 } },
    { method: 'dial-gauge', holds: { 'half-pint': 12, pint: 9, quart: 7 } },
  ],
};
type Product = PlanDayInput['products'][number];
const plan = (food: string, product: Omit<Product, 'from'>, more: object = {}) => {
  const answer = planDay({
    lots: [{ food, raw: '24 lb' }],
    kitchen: { ...kitchen, ...more },
    products: [{ from: food, ...product }],
  });
  if (!answer.feasible) throw new Error(answer.reason.text);
  return answer;
};
const cups = (amount: unknown) => valueIn(amount as Quantity<'volume'>, 'cup');

describe('jam', () => {
  test('the printed recipe with its acid, never left out, in whole batches', () => {
    const { products, ready } = plan('peach', { make: 'jam', most: 16 });
    const [jam] = products;
    // Guide 7: 5 1/2 to 6 cups of peaches, 4 to 5 cups of sugar, 2 tbsp of lemon juice, 6 to 7 half-pints
    expect(jam?.units).toMatchObject({ promised: 12, ready: 14 });
    const lemon = jam?.ingredients.find(({ role }) => role === 'acid');
    expect(lemon).toMatchObject({ what: 'bottled lemon juice', amount: { value: 4, unit: 'tbsp' } });
    expect(lemon?.note).toContain('never less');
    expect(jam?.ingredients.find(({ role }) => role === 'sugar')?.amount).toEqual({ value: 10, unit: 'cup' });
    expect(jam?.cautions.map(({ id }) => id)).toEqual(expect.arrayContaining(['acid-for-set', 'one-batch']));
    expect(cups(ready.find(({ what }) => what === 'bottled lemon juice')?.short)).toBeCloseTo(0.25, 9);
    expect(jam?.steps.join(' ')).toContain('never double it');
  });
  test.each([
    ['peach', undefined, 6, 7],
    ['peach', 'powdered', 5, 6],
    ['peach', 'liquid', 8, 8],
    ['strawberry', 'none', 3, 4],
    ['strawberry', true, 9, 10],
    ['apricot', false, 5, 6],
    ['sour cherry', undefined, 6, 6],
    ['blueberry', undefined, 5, 5],
    ['blackberry', 'powdered', 11, 12],
  ] as const)('%s with pectin %s: whole batches only, one in a pot and in a load', (fruit, pectin, low, high) => {
    const answer = plan(fruit, { make: 'jam', worth: 1, ...(pectin === undefined ? {} : { pectin }) });
    const [jam] = answer.products;
    const batches = (jam?.units.promised ?? 0) / low;
    expect(Number.isInteger(batches) && batches > 0).toBe(true);
    expect(jam?.units.ready).toBe(batches * high);
    const cooked = answer.schedule.tasks.filter(({ kind }) => kind === 'cook');
    const canned = answer.schedule.tasks.filter(({ kind }) => kind === 'can');
    expect(cooked.length).toBe(batches);
    expect(canned.map(({ units }) => units?.count)).toEqual(Array.from({ length: batches }, () => high));
    const printed = printedJams(fruit).find(({ pectin: kind }) => kind === kindOf(jam?.ingredients));
    if (printed === undefined) throw new Error(`no jam of ${fruit}`);
    const sugar = jam?.ingredients.find(({ role }) => role === 'sugar');
    expect(cups(sugar?.amount)).toBeCloseTo(batches * printed.sugar[1], 9);
    const lemon = jam?.ingredients.find(({ role }) => role === 'acid');
    expect(lemon === undefined ? 0 : cups(lemon.amount)).toBeCloseTo((batches * printed.lemonJuice) / 16, 9);
  });
  const kindOf = (ingredients: readonly { readonly what: string }[] = []) =>
    ingredients.some(({ what }) => what === 'powdered pectin')
      ? 'powdered'
      : ingredients.some(({ what }) => what === 'liquid pectin')
        ? 'liquid'
        : 'none';
  test('two lots make batches together, and with `least waste` no part of one', () => {
    const answer = planDay({
      lots: [
        { food: 'peach', raw: '3 lb', ready: '2.4 lb' },
        { food: 'peach', raw: '9 lb' },
      ],
      kitchen,
      products: [{ make: 'jam', from: 'peach' }],
      aim: 'least waste',
    });
    if (!answer.feasible) throw new Error(answer.reason.text);
    expect((answer.products[0]?.units.promised ?? 1) % 6).toBe(0);
    expect(answer.products[0]?.units.promised).toBeGreaterThan(0);
  });
  test('pectin that is in the pantry is taken', () => {
    const withPectin = plan('peach', { make: 'jam' }, { pantry: [{ item: 'pectin', amount: '100 g' }] });
    expect(withPectin.products[0]?.ingredients.map(({ what }) => what)).toContain('powdered pectin');
  });
  test.each([
    ['plum', {}, 'no printed recipe for plum jam'],
    ['mango', {}, 'no printed recipe for mango jam'],
    ['sweet cherry', {}, 'no printed recipe for sweet cherry jam'],
    ['apricot', { pectin: 'liquid' }, 'apricot jam with liquid pectin'],
    ['blueberry', { pectin: false }, 'blueberry jam with no added pectin'],
    ['peach', { sugarToFruit: 0.5 }, 'sugarToFruit'],
    ['peach', { finishSolids: 0.65 }, 'finishSolids'],
    ['peach', { pectin: true, pectinGrade: 150 }, 'pectinGrade'],
  ] as const)('%s %o is left out with its reason', (fruit, more, reason) => {
    const answer = plan(fruit, { make: 'jam', ...more });
    expect(answer.products).toEqual([]);
    expect(answer.leftOut[0]?.reason.text).toContain(reason);
    expect(answer.leftOut[0]?.reason.text).toMatch(/these tables/);
    expect(answer.leftOut[0]?.instead[0]?.text.length).toBeGreaterThan(20);
  });
  test('fig jam has recipes, but no process: it is not canned', () => {
    const { products, leftOut } = plan('fig', { make: 'jam' });
    expect(products).toEqual([]);
    expect(leftOut[0]?.reason.text).toContain('no printed recipe for fig jam with a process');
  });
  test.each([
    ['no pot here holds one batch', { pots: [{ volume: '2 quarts' }] }],
    ['no canner here holds', { canners: [{ method: 'boiling-water', holds: { 'half-pint': 5 } }] }],
  ])('%s', (reason, more) => {
    expect(plan('peach', { make: 'jam' }, more).leftOut[0]?.reason.text).toContain(reason);
  });
});

describe('jars by their printed recipe', () => {
  test.each([
    ['apple', 'bottled lemon juice', 2, 'tbsp'],
    ['blueberry', 'bottled lemon juice', 3, 'tbsp'],
    ['sour cherry', 'bottled lemon juice', 4, 'tsp'],
    ['peach', 'bottled lemon juice', 0.25, 'cup'],
  ] as const)('%s pie filling: lemon juice, sugar, starch and water by the quart', (fruit, acid, amount, unit) => {
    const { products, ready } = plan(fruit, {
      make: 'jars',
      form: 'pie filling',
      jar: 'quart',
      method: 'boiling-water',
    });
    const [filling] = products;
    const jars = filling?.units.ready ?? 0;
    const line = (role: string) => filling?.ingredients.find((each) => each.role === role);
    expect(line('acid')?.what).toBe(acid);
    expect(cups(line('acid')?.amount)).toBeCloseTo(jars * valueIn({ value: amount, unit }, 'cup'), 9);
    expect(line('acid')?.note).toContain('never less');
    expect(filling?.ingredients.map(({ role }) => role)).toEqual(expect.arrayContaining(['sugar', 'starch', 'liquid']));
    expect(ready.find(({ what }) => what === acid)?.short).toBeDefined();
    expect(filling?.steps.join(' ')).toContain('Add the lemon juice');
  });
  test('a pint takes half of a quart', () => {
    const jars = (jar: string) => {
      const [filling] = plan('peach', { make: 'jars', form: 'pie filling', jar, method: 'boiling-water' }).products;
      return cups(filling?.ingredients[0]?.amount) / (filling?.units.ready ?? 1);
    };
    expect(jars('quart')).toBeCloseTo(2 * jars('pint'), 9);
  });
  test('apple butter: 2 cups each of vinegar and cider to 8 lb of apples', () => {
    const { products, ready } = plan('apple', { make: 'jars', form: 'butter', jar: 'pint', method: 'boiling-water' });
    const [butter] = products;
    const pounds = valueIn(butter?.raw as Quantity<'mass'>, 'lb');
    for (const what of ['vinegar', 'cider']) {
      const line = butter?.ingredients.find((each) => each.what.startsWith(what));
      expect(cups(line?.amount)).toBeCloseTo(pounds / 4, 9);
      expect(cups(ready.find((each) => each.what === what)?.short)).toBeCloseTo(pounds / 4, 9);
    }
    expect(cups(ready.find(({ what }) => what === 'ground cinnamon')?.short)).toBeCloseTo(pounds / 64, 9);
    expect(butter?.steps.join(' ')).toContain('in cider and vinegar');
  });
  test.each([
    ['plum', 'puree', 'sieve'],
    ['apple', 'sauce', 'in the water'],
    ['tomato', 'sauce', 'third less'],
    ['grape', 'juice', 'jelly bag'],
    ['rhubarb', 'stewed', 'with the sugar'],
    ['cranberry', 'sauce', 'sieve'],
  ] as const)('%s %s: its own steps', (food, form, step) => {
    const [product] = plan(food, { make: 'jars', form, jar: 'pint', method: 'boiling-water' }).products;
    expect(product?.steps.join(' ')).toContain(step);
  });
  test('puree takes 1 cup of water to a quart of fruit', () => {
    const [puree] = plan('plum', { make: 'jars', form: 'puree', jar: 'pint', method: 'boiling-water' }).products;
    const litres = valueIn(puree?.ready.high as Quantity<'mass'>, 'kg');
    expect(cups(puree?.ingredients[0]?.amount)).toBeCloseTo(litres / 0.946352946, 6);
  });
  test('tomatoes packed without liquid are not covered with any', () => {
    const [jars] = plan('tomato', {
      make: 'jars',
      form: 'whole or halved, no added liquid',
      pack: 'raw',
      jar: 'quart',
      method: 'boiling-water',
    }).products;
    expect(jars?.steps.join(' ')).not.toContain('cover with');
  });
  test.each([
    ['green tomato', 'pie filling', 'quart'],
    ['tomato', 'juice, tomato-vegetable blend', 'quart'],
  ])('%s as %s takes more than the lot: left out', (food, form, jar) => {
    const answer = plan(food, { make: 'jars', form, jar, method: 'boiling-water' });
    expect(answer.products).toEqual([]);
    expect(answer.leftOut[0]?.reason.text).toContain('no printed recipe');
  });
});

describe('acid is always on the list to buy', () => {
  const acids = ['bottled lemon juice', 'citric acid', 'vinegar'];
  test.each([
    ['tomato', 'crushed', 'quart'],
    ['fig', 'whole', 'pint'],
    ['Asian pear', 'halves', 'quart'],
    ['apple', 'pie filling', 'quart'],
    ['apple', 'butter', 'pint'],
  ])('%s %s', (food, form, jar) => {
    const needed = (pantry: object) =>
      plan(food, { make: 'jars', form, jar, method: 'boiling-water', pack: 'hot' }, pantry).ready.filter(({ what }) =>
        acids.includes(what),
      );
    for (const pantry of [{}, { pantry: [] }, { pantry: [{ item: 'sugar', amount: '50 lb' }] }]) {
      expect(needed(pantry).length).toBe(1);
      expect(needed(pantry)[0]?.short).toEqual(needed(pantry)[0]?.amount);
    }
    const [line] = needed({});
    const full = needed({ pantry: [{ item: line?.what, amount: '50 lb' }] });
    expect(full[0]).toMatchObject({ what: line?.what });
    expect(full[0]?.short).toBeUndefined();
  });
  test('where only citric acid is at hand, and too little of it, the rest of it is bought', () => {
    const [line] = plan(
      'tomato',
      { make: 'jars', form: 'crushed', jar: 'quart', method: 'boiling-water' },
      { pantry: [{ item: 'citric acid', amount: '2 g' }] },
    ).ready.filter(({ what }) => what === 'citric acid');
    expect(cups(line?.amount) - cups(line?.short)).toBeCloseTo(2 / (4.6 * 48), 9);
  });
});

describe('a price of gas asks for the stove', () => {
  const priced = (energy: object) => plan('peach', { make: 'jam' }, { energy });
  test('MISSING names the field', () => {
    expect(codeText(() => priced({ gas: '1.50 USD' }))).toBe('MISSING kitchen.energy.stove');
    expect(codeText(() => priced({ gas: '1.50 USD', electricity: '0.30 USD' }))).toBe('MISSING kitchen.energy.stove');
    expect(priced({ gas: '1.50 USD', stove: 'gas' }).cost?.energy.value).toBeGreaterThan(0);
    expect(priced({ electricity: '0.30 USD' }).cost?.energy.value).toBeGreaterThan(0);
  });
});

describe('the tables of recipes', () => {
  test('every item of the pantry has a weight', () => {
    expect((pantryJson as { rows: { item: string }[] }).rows.map(({ item }) => item).sort()).toEqual(
      [...PANTRY].sort(),
    );
    for (const item of PANTRY) expect(kgOfMeasure(item, { value: 1, unit: 'cup' }).kg).toBeGreaterThan(0.1);
  });
});
