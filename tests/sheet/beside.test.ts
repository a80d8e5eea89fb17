import { describe, expect, test } from 'vitest';
import recipeCautions from '../../data/recipes/cautions.json';
import type { PlannedProduct } from '../../src/plan/request/plannedProduct';
import { OPERATIONS } from '../../src/recipes/rows/rows';
import { acidInJars, BESIDE, cautionsOf, kindBeside } from '../../src/sheet/beside';
import { runSheet } from '../../src/sheet/index';
import { planOf } from '../plan/fullKitchen';

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
test('acid is said once: a row that names it needs no caution before it', () => {
  const ids = (canning: object) =>
    cautionsOf({ cautions: [{ id: 'acid-required' }, { id: 'vinegar-five-percent' }], canning } as never).map(
      ({ id }) => id,
    );
  expect(ids({ acidToAdd: '1 tbsp of bottled lemon juice to each jar' })).toEqual(['vinegar-five-percent']);
  // the acid of a pickle is among what goes into its pot: no row names it
  expect(ids({})).toEqual(['acid-required', 'vinegar-five-percent']);
  const plan = planOf('tomato', { recipe: 'tomato-crushed', jar: 'pint' });
  const front = runSheet(plan).split('## A')[0] ?? '';
  expect(plan.products[0]?.cautions.some(({ id }) => ['acid-required', 'acidify-every-jar'].includes(id))).toBe(true);
  expect(front).toMatch(/FILL .*ACID: 1 tbsp of bottled lemon juice/);
  expect(front).not.toMatch(/\*\*! .*[Aa]cid/);
});
test('operations of the table are known', () => {
  for (const { step } of BESIDE) if (step !== undefined) expect(OPERATIONS.has(step)).toBe(true);
});
test('what a cook would add twice is not printed again', () => {
  expect(row('blanch-longer-high').card).toBe(true);
  expect(row('yield-is-no-process').card).toBe(true);
});
