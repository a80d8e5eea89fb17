import { describe, expect, test } from 'vitest';
import { freezingHeadspace } from '../../../src/freezing/index';
import { RECIPES } from '../../../src/recipes/rows/rows';
import { runSheet } from '../../../src/sheet/index';
import { planOf, productOf } from '../fullKitchen';

const inches = (value: number) => ({ value, unit: 'in' });

describe('packs for the freezer', () => {
  test.each([
    ['venison', 'frozen-meat', '1 lb', undefined],
    ['chicken', 'frozen-poultry', '1 lb', undefined],
    ['broccoli', 'frozen-broccoli', '1 lb', undefined],
    ['sweet corn', 'frozen-corn-on-the-cob-small', '1 lb', undefined],
    ['green beans', 'frozen-green-bean', '1 lb', inches(0.5)],
    ['peach', 'frozen-peach-syrup-pack', '8 oz', inches(0.5)],
    ['peach', 'frozen-peach-syrup-pack', '2 lb', inches(1)],
  ] as const)('%s by %s, packs of %s', (food, recipe, packSize, headspace) => {
    const { packs, cautions } = productOf(food, { recipe, packSize });
    expect(packs?.headspace).toEqual(headspace);
    expect(cautions.some(({ id }) => id === 'glass-needs-headspace')).toBe(headspace !== undefined);
  });
  test('what a page prints for a dry pack is what the table prints', () => {
    const dry = RECIPES.flatMap(({ steps }) => steps.filter(({ style }) => style === 'dry'));
    expect(dry.length).toBeGreaterThan(50);
    const { headspace } = freezingHeadspace({ style: 'dry', mouth: 'wide', jar: 'pint' });
    expect(new Set(dry.map((step) => step.headspace))).toEqual(new Set(['1/2 in']));
    expect(headspace).toEqual(inches(0.5));
  });
});

describe('jars that are not canned', () => {
  test.each([
    // by the rule for jam; by its page; the fig jam is kept cold
    ['strawberry', 'mixed-berry-jam', 0.25],
    ['strawberry', 'freezer-berry-jam-powdered-pectin', 0.5],
    ['fig', 'fig-jam-no-added-pectin', 0.25],
  ] as const)('%s by %s: %d in, in the row and on the card', (food, recipe, value) => {
    const plan = planOf(food, { recipe });
    expect(plan.products[0]?.headspace).toEqual(inches(value));
    expect(plan.products[0]?.canning).toBeUndefined();
    const sheet = runSheet(plan);
    const words = value === 0.25 ? '1/4 in' : '1/2 in';
    expect(sheet).toMatch(new RegExp(`FILL .* jars to ${words}`));
    expect(sheet).toContain(`**JAR** **${words}** of headspace`);
  });
  test('none in a crock, and none where it is canned', () => {
    expect(productOf('cabbage', { recipe: 'sauerkraut' }, {}, '50 lb').headspace).toBeUndefined();
    expect(productOf('peach', { recipe: 'peach-jam-no-added-pectin' }).headspace).toBeUndefined();
  });
});
