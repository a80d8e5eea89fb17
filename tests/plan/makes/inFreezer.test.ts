import { describe, expect, test } from 'vitest';
import { foods } from '../../../src/foods/index';
import { planDay } from '../../../src/plan/index';
import { valueIn } from '../../../src/quantity/scale';
import { recipeOfId } from '../../../src/recipes/rows/rows';
import { FULL_KITCHEN, type Planned, planOf, productOf } from '../fullKitchen';

const frozen = (food: string, form?: string, kitchen: object = {}) =>
  productOf(food, { make: 'frozen', ...(form === undefined ? {} : { form }) }, kitchen, '10 lb');
const at = ({ directions: steps }: Planned, words: string) => steps.findIndex((step) => step.includes(words));

describe('vegetables are blanched as the freezing tables print', () => {
  test.each([
    ['beet', 'slices', 'until they are tender'],
    ['carrot', 'slices', 'Blanch for 2 min'],
    ['sweet corn', 'kernels', 'Blanch for 4 min'],
    ['sweet corn', 'cut from the cob', 'Blanch for 4 min'],
    ['onion', 'rings', 'Blanch for 0.25 min'],
    ['onion', 'chopped', 'Chop'],
    ['green beans', 'pieces', 'Blanch for 3 min'],
    ['broccoli', 'florets', 'Blanch for 3 min'],
    ['zucchini', 'cubes', 'Steam for 2 to 3 min'],
    ['tomato', 'pieces', 'until they are tender'],
    ['spinach', 'leaves', 'Blanch for 2 min'],
    ['celery', undefined, 'Blanch for 3 min'],
    ['celery', 'slices', 'Blanch for 3 min'],
    ['peach', 'slices', 'Slice'],
    ['apple', 'slices', 'ascorbic acid'],
  ])('%s, %s', (food, form, words) => {
    expect(frozen(food, form).directions.join(' ')).toContain(words);
  });
  test('before it is cooled, and that before it is packed', () => {
    const beans = frozen('green beans');
    const order = [at(beans, 'Wash'), at(beans, 'Blanch for'), at(beans, 'Cool in ice water'), at(beans, 'Pack in')];
    expect(order).toEqual([...order].sort((one, other) => one - other));
    expect(order[0]).toBe(0);
    expect(beans.directions[at(beans, 'Cool in ice water') + 1]).toContain('as much ice as food');
    expect(beans.directions.filter((step) => step.startsWith('Blanch'))).toHaveLength(1);
  });
  test('the pot and the water are in the plan, and the hands beside it', () => {
    const corn = (kitchen: object = {}) =>
      productOf('sweet corn', { make: 'frozen', form: 'kernels' }, kitchen, '40 lb');
    const step = corn().directions.find((each) => each.startsWith('Blanch')) ?? '';
    // a 20 quart pot to its fill limit holds 13.3 quarts: 2.9 lb with a gallon of water for each
    expect(step).toContain('at most 2 3/4 lb at a time in the 20 quart pot');
    expect(step).toMatch(/return to the boil.*with .* quarts of water/);
    const { handsMinutes, cooking: pots } = corn();
    const batches = (pots?.batches ?? []).reduce((sum, each) => sum + each.count, 0);
    // 4 min, and 1 min to come back to the boil
    expect(handsMinutes.stir).toBe(5 * batches);
    const perPound = ({ handsMinutes: { stir }, raw }: Planned) => stir / raw.value;
    expect(perPound(corn({ pots: [{ volume: '10 quarts' }] }))).toBeGreaterThan(perPound(corn()) + 0.2);
  });
  test('whole ears are cobs, by the size that the minutes are for, and cooled twice as long', () => {
    const ears = frozen('corn', 'whole');
    // the middle size, unless another page is named
    expect(ears.directions.join(' ')).toMatch(/Sort ears 1 1\/4 to 1 1\/2 in.*Blanch for 9 min.*Cool .*18 min/);
    expect(ears.directions.join(' ')).not.toContain('kernel');
    const large = productOf('sweet corn', { recipe: 'frozen-corn-on-the-cob-large' });
    expect(large.directions.join(' ')).toMatch(/Blanch for 11 min.*Cool .*22 min/);
  });
  test('a minute longer in a high kitchen', () => {
    expect(frozen('broccoli', 'florets', { elevation: '5,200 ft' }).directions.join(' ')).toContain('Blanch for 4 min');
    expect(frozen('broccoli', 'florets', { elevation: '4,900 ft' }).directions.join(' ')).toContain('Blanch for 3 min');
  });
});

describe('never raw without a word', () => {
  test.each([
    ['leek', 'slices', 'no-recipe', 'no recipe for frozen of leek'],
    ['fava bean', 'whole', 'no-recipe', 'no recipe for frozen of fava bean'],
    ['broccoli', 'puree', 'no-recipe-for-form', 'no recipe for broccoli in the form puree'],
    ['sweet corn', 'puree', 'no-recipe-for-form', 'no recipe for sweet corn in the form puree'],
    // rings are blanched, and only what is chopped is not
    ['onion', 'slices', 'no-recipe-for-form', 'no recipe for onion in the form slices'],
  ])('%s, %s is left out', (food, form, code, text) => {
    const plan = planOf(food, { make: 'frozen', form });
    expect(plan.products).toEqual([]);
    expect(plan.leftOut[0]?.reason).toMatchObject({ code, text: expect.stringContaining(text) });
  });
  test('nor in a kitchen without a pot', () => {
    const [out] = planOf('carrot', { make: 'frozen', form: 'slices' }, { pots: [] }).leftOut;
    expect(out?.reason.code).toBe('no-pot');
  });
  test('every vegetable is blanched, steamed, cooked, or printed as raw; or left out', () => {
    const HEATED = /Blanch for|Steam|Cook|Boil|Simmer|Heat|Roast|Bake/;
    const raw: string[] = [];
    let seen = 0;
    for (const food of foods({ kind: 'vegetable' }).map((each) => each.food)) {
      for (const form of [undefined, 'whole', 'slices', 'kernels']) {
        const plan = planDay({
          lots: [{ food, raw: '10 lb' }],
          kitchen: FULL_KITCHEN,
          products: [{ make: 'frozen', from: food, ...(form === undefined ? {} : { form }) }],
        });
        if (!plan.feasible) throw new Error(food);
        for (const { directions: steps, recipe } of plan.products) {
          seen += 1;
          const printed = recipeOfId(recipe)?.steps.some((step) => ['blanch', 'steam', 'cook'].includes(step.do));
          if (printed === true) expect(steps.join(' '), `${food} ${form}`).toMatch(HEATED);
          else if (!HEATED.test(steps.join(' '))) raw.push(recipe);
        }
      }
    }
    expect(seen).toBeGreaterThan(30);
    // what their pages freeze raw
    for (const recipe of raw) expect(recipe).toMatch(/^frozen-(onions-raw|peppers-raw|zucchini-grated)/);
  });
});

describe('packs', () => {
  test('of one weight, a pound where the cook names none: promised at the low end, readied at the high end', () => {
    const { ready, units, packs } = frozen('peach', 'slices');
    expect(packs?.packSize).toEqual({ value: 1, unit: 'lb' });
    expect(units.promised).toBe(Math.floor(valueIn(ready.low, 'lb') + 1e-6));
    expect(units.ready).toBeGreaterThanOrEqual(valueIn(ready.high, 'lb') - 1e-6);
  });
  test('no more a day than the freezer takes: 2 lb for each cubic foot', () => {
    const freezer = { room: '100 L', volume: '5 ft3' };
    const plan = productOf('peach', { make: 'frozen' }, { freezer, hours: '12 h' }, '60 lb');
    expect(plan.units.ready).toBeLessThanOrEqual(10);
  });
  test('no more than its free room holds', () => {
    const { units, packs } = productOf('peach', { make: 'frozen' }, { freezer: { room: '5 L' } });
    expect(units.ready * valueIn(packs?.room as never, 'L')).toBeLessThanOrEqual(5 + 1e-9);
    expect(units.ready).toBeGreaterThan(3);
  });
  test('no freezer, no packs', () => {
    const [out] = planOf('peach', { make: 'frozen' }, { freezer: undefined }).leftOut;
    expect(out?.reason).toEqual({ code: 'no-freezer', text: 'the kitchen has no freezer room' });
  });
});
