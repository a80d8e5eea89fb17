import { describe, expect, test } from 'vitest';
import foodTable from '../../data/foods/foods.json';
import recipeCautions from '../../data/recipes/cautions.json';
import type { PlannedProduct } from '../../src/plan/request/plannedProduct';
import { OPERATIONS } from '../../src/recipes/rows/rows';
import { acidInJars, BESIDE, cautionsOf, kindBeside } from '../../src/sheet/beside';

const row = (id: string) => {
  const found = BESIDE.find((each) => each.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};
const made = (recipe: string, food = 'cucumber') =>
  ({
    recipe,
    fromLots: [{ lot: 'a lot', food, raw: { value: 1, unit: 'lb' } }],
    cautions: recipeCautions,
  }) as never as PlannedProduct;

describe('acid is named where it goes in', () => {
  test.each([
    ['tomato-crushed', 'fill'],
    ['bread-and-butter-pickles', 'cook'],
    ['peach-pineapple-spread', 'cook'],
  ])('%s: %s', (recipe, kind) => {
    const canning = { acidGoesInto: kind === 'fill' ? 'each jar' : 'recipe' };
    const product = { ...made(recipe), canning } as unknown as PlannedProduct;
    expect(acidInJars(product)).toBe(kind === 'fill');
    expect(kindBeside(row('acid-required'), product)).toBe(kind);
  });
});
test('lime is rinsed off on the front only where the recipe always soaks in it', () => {
  expect(kindBeside(row('rinse-off-the-lime'), made('bread-and-butter-pickles'))).toBeUndefined();
  expect(kindBeside(row('rinse-off-the-lime'), made('pickled-jalapeno-rings'))).toBe('stand');
});
test('yellow flesh is asked of peaches and nectarines, and of no apricot', () => {
  const has = (food: string) =>
    cautionsOf(made('peach-pineapple-spread', food)).some(({ id }) => id === 'yellow-flesh');
  expect([has('peach'), has('nectarine'), has('apricot')]).toEqual([true, true, false]);
});
test('foods and operations of the table are known', () => {
  const names = new Set((foodTable as { rows: { name: string }[] }).rows.map(({ name }) => name));
  for (const { foods = [], step } of BESIDE) {
    expect(foods.filter((food) => !names.has(food))).toEqual([]);
    if (step !== undefined) expect(OPERATIONS.has(step)).toBe(true);
  }
});
test('what a cook would add twice is not printed again', () => {
  expect(row('blanch-longer-high').card).toBe(true);
  expect(row('yield-is-no-process').card).toBe(true);
});
