import { describe, expect, test } from 'vitest';
import { foodRows, nameOf } from '../../../src/foods/tables';
import { checkSchedule, type PlanDayInput, planDay } from '../../../src/plan/index';
import { testedProcess } from '../../../src/process/index';
import type { Quantity } from '../../../src/quantity/index';
import { valueIn } from '../../../src/quantity/scale';
import { isFor, RECIPES } from '../../../src/recipes/rows/rows';
import type { RecipeRow } from '../../../src/recipes/rows/tables';
import { codeText } from '../../helpers/errors';
import { FULL_KITCHEN, type Planned, planOf, productOf } from '../fullKitchen';

/** The first food of a recipe, by its name: a recipe for a whole kind has the first food of the kind that it is for. */
function firstFood(row: RecipeRow): string {
  const [first = ''] = row.foods;
  // peels fall off apples
  if (row.madeOf === 'trimmings' && isFor(row, 'apple')) return 'apple';
  const ofKind = foodRows.find(({ id, kind }) => kind === first && id !== first && isFor(row, id));
  return ofKind?.name ?? nameOf(first);
}
/** Peels and cores fall off only where something else is made of the food. */
const companions = (food: string) => ['freeze-dried', 'dried'].map((make) => ({ make, from: food, worth: 0.1 }));
const dayOf = (row: RecipeRow, hours: PlanDayInput['kitchen']['hours'] = FULL_KITCHEN.hours): PlanDayInput => {
  const food = firstFood(row);
  const product = { recipe: row.id, from: food, most: 24, worth: 9 };
  return {
    lots: [{ food, raw: '50 lb' }],
    kitchen: { ...FULL_KITCHEN, hours },
    products: row.madeOf === 'trimmings' ? [{ ...product, packSize: '1 oz' }, ...companions(food)] : [product],
  };
};
const kg = (mass: Quantity<'mass'>) => valueIn(mass, 'kg');

/** What is wrong with a canned product: it must be the tested process of its own recipe, with its acid and whole batches. */
function wrongWithJars(row: RecipeRow, product: Planned): string[] {
  const { canning: jars } = product;
  if (jars === undefined) return [];
  const asked = {
    food: product.food,
    recipe: row.id,
    jar: jars.jar,
    method: jars.method,
    pack: jars.pack,
    elevation: FULL_KITCHEN.elevation,
  };
  const process = testedProcess(asked as Parameters<typeof testedProcess>[0]);
  if (!process.tested) return [`${row.id}: not tested`];
  const wrong: string[] = [];
  if (process.minutes !== jars.minutes || process.pressure?.value !== jars.pressure?.value)
    wrong.push(`${row.id}: ${jars.minutes} min, not ${process.minutes}`);
  if (jars.headspace.value !== process.headspace.value) wrong.push(`${row.id}: headspace`);
  if (jars.acidToAdd !== process.acid?.text) wrong.push(`${row.id}: acid of the process`);
  if (process.acid !== undefined && !product.ingredients.some(({ role }) => role === 'acid'))
    wrong.push(`${row.id}: no acid on the list`);
  if (!product.directions.some((step) => step.startsWith('A part-filled last jar')))
    wrong.push(`${row.id}: part-filled jar`);
  const heated = row.keeps.some((keep) => 'process' in keep);
  if (!heated) wrong.push(`${row.id}: canned without a process of its own`);
  return wrong;
}

/** Mass: what is ready and what falls off never is more than what went in, at either end. */
function wrongWithMass(row: RecipeRow, { raw, ready, trimmings, fromLots: from }: Planned): string[] {
  const wrong: string[] = [];
  const shares = from.reduce((sum, share) => sum + kg(share.raw), 0);
  if (Math.abs(shares - kg(raw)) > 1e-6) wrong.push(`${row.id}: shares ${shares}`);
  if (trimmings === undefined) return wrong;
  if (kg(ready.high) + kg(trimmings.low) > kg(raw) + 1e-6) wrong.push(`${row.id}: rich end`);
  if (kg(ready.low) + kg(trimmings.high) > kg(raw) + 1e-6) wrong.push(`${row.id}: poor end`);
  return wrong;
}

/** Why a recipe may be left out of the plan of a kitchen that has everything. */
const CODES = ['no-amounts', 'stands-too-long', 'bought-form'];

describe('every recipe of these tables, in a kitchen that has everything', () => {
  const left = new Map<string, string[]>();
  const notMade: string[] = [];
  let made = 0;
  test.each([...new Set(RECIPES.map(({ makes }) => makes))])('%s', (makes) => {
    for (const row of RECIPES.filter((each) => each.makes === makes)) {
      const input = dayOf(row);
      const plan = planDay(input);
      if (!plan.feasible) throw new Error(`${row.id}: ${plan.reason.text}`);
      expect(checkSchedule(plan).broken, row.id).toEqual([]);
      const [out] = plan.leftOut;
      const product = plan.products.find(({ recipe }) => recipe === row.id);
      if (product === undefined) {
        const code = out?.reason.code;
        if (code === undefined) notMade.push(`${row.id}: ${plan.notMade[0]?.reason.code}`);
        else left.set(code, [...(left.get(code) ?? []), row.id]);
        expect(
          plan.leftOut.every(({ instead }) => (instead[0]?.text.length ?? 0) > 3),
          row.id,
        ).toBe(true);
        continue;
      }
      made += 1;
      expect(product.makes).toBe(makes);
      expect(product.units.promised).toBeGreaterThan(0);
      expect(product.units.promised).toBeLessThanOrEqual(product.units.likely);
      expect(product.units.likely).toBeLessThanOrEqual(product.units.ready);
      expect(product.units.ready).toBeLessThanOrEqual(24);
      expect(product.directions.join(' '), row.id).not.toMatch(/undefined|NaN|\[object/);
      expect([...wrongWithJars(row, product), ...wrongWithMass(row, product)]).toEqual([]);
    }
  });
  test('is made, or left out for a known reason', () => {
    const counts = [...left].map(([code, ids]) => `${code} ${ids.length}: ${ids.join(', ')}`);
    process.stdout.write(`${made} of ${RECIPES.length} recipes are planned; left out: ${counts.join('; ')}\n`);
    expect([...left.keys()].filter((code) => !CODES.includes(code))).toEqual([]);
    expect(notMade.join('; ')).toBe('');
    expect(made).toBeGreaterThan(RECIPES.length - 30);
  });
  test('what stands too long is planned over the days that the plan names, and what needs more than a week is not', () => {
    const rows = RECIPES.filter(({ id }) => left.get('stands-too-long')?.includes(id));
    const apart: string[] = [];
    for (const row of rows) {
      const first = planDay(dayOf(row));
      const advice = first.leftOut[0]?.instead[0]?.text ?? '';
      const days = Number(/^plan it over (\d) days$/.exec(advice)?.[1] ?? 0);
      if (days === 0) {
        apart.push(row.id);
        expect(advice).toBe('follow its recipe apart from the plan, which is of 7 days at most');
        continue;
      }
      const plan = planDay(dayOf(row, Array(days).fill('8 h')));
      expect(plan.feasible && plan.products.map(({ recipe }) => recipe), row.id).toEqual([row.id]);
    }
    expect(apart.every((id) => id.startsWith('14-day'))).toBe(true);
    expect(rows.length - apart.length).toBeGreaterThan(1);
  });
});

describe('which recipe', () => {
  test('by the cut: pieces are not made into pulp, and a word for the cut is read either way', () => {
    expect(productOf('apple', { make: 'frozen', form: 'slices' }).recipe).toMatch(
      /^frozen-apple-.*(pack|unsweetened)$/,
    );
    expect(productOf('plum', { make: 'frozen', form: 'puree' }).recipe).toBe('frozen-plum-puree');
    expect(productOf('sweet corn', { make: 'frozen', form: 'kernels' }).recipe).toBe('frozen-corn-kernels');
    const blend = { make: 'jars', form: 'juice, tomato-vegetable blend', jar: 'quart', method: 'boiling-water' };
    expect(productOf('tomato', blend as never).recipe).toBe('tomato-vegetable-juice-blend');
  });
  test('a word for what to make is no recipe for every food', () => {
    const [out] = planOf('leek', { make: 'frozen' }).leftOut;
    expect(out).toMatchObject({ name: 'leek frozen', reason: { code: 'no-recipe' } });
    expect(out?.reason.text).toContain('these tables hold no recipe');
  });
  test('a food outside the scope of a recipe is refused', () => {
    const [out] = planOf('zucchini', { recipe: 'quick-fresh-pack-dill-pickles' }).leftOut;
    expect(out?.reason).toMatchObject({ code: 'no-recipe', text: expect.stringContaining('does not name zucchini') });
  });
  test('a food that is in no lot', () => {
    const plan = planDay({
      lots: [{ food: 'peach', raw: '9 lb' }],
      kitchen: FULL_KITCHEN,
      products: [{ make: 'frozen', from: ['apple'] }],
    });
    expect(plan.leftOut[0]?.reason).toEqual({ code: 'no-lot', text: 'you have no apple in your lots' });
  });
  test('the food must be said where several were bought, or the recipe', () => {
    const input = (product: object): PlanDayInput => ({
      lots: [
        { food: 'peach', raw: '9 lb' },
        { food: 'apple', raw: '9 lb' },
      ],
      kitchen: FULL_KITCHEN,
      products: [product],
    });
    expect(codeText(() => planDay(input({ make: 'frozen' })))).toBe('MISSING products[0].from');
    expect(codeText(() => planDay(input({ form: 'slices' })))).toBe('MISSING products[0].recipe');
    const plan = planDay(input({ recipe: 'peach-jam-powdered-pectin' }));
    expect(plan.feasible && plan.products[0]?.food).toBe('peach');
  });
});
