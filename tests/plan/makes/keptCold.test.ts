import { describe, expect, test } from 'vitest';
import { planDay } from '../../../src/plan/index';
import { valueIn } from '../../../src/quantity/scale';
import { FULL_KITCHEN, planOf, productOf } from '../fullKitchen';

describe('ferments', () => {
  const kraut = () => productOf('cabbage', { recipe: 'sauerkraut' }, {}, '50 lb');
  test('sauerkraut by the printed batch: 25 lb to 9 quarts, with 15 tbsp of salt', () => {
    const { units, ingredients, raw } = kraut();
    expect(units.unit).toBe('quart');
    const batches = valueIn(raw, 'lb') / 25;
    expect(units.likely).toBeCloseTo(9 * batches, -1);
    const salt = ingredients.find(({ role }) => role === 'salt');
    expect(valueIn(salt?.amount as never, 'tbsp')).toBeCloseTo(15 * batches, 6);
  });
  test('weeks in the crock go on by themselves', () => {
    const plan = planOf('cabbage', { recipe: 'sauerkraut' }, {}, '50 lb');
    const [ferment] = plan.schedule.tasks.filter(({ kind }) => kind === 'ferment');
    // four weeks at the slow end
    expect((ferment?.endMinute ?? 0) - (ferment?.startMinute ?? 0)).toBe(28 * 24 * 60);
    expect(kraut().directions.join(' ')).toMatch(/Ferment/i);
  });
});

describe('what is not canned says so', () => {
  test('a salsa whose process is not in these tables goes into the refrigerator', () => {
    const salsa = productOf('tomato', { recipe: 'choice-salsa' });
    expect(salsa.canning).toBeUndefined();
    expect(salsa.keeps.map(({ place }) => place)).toEqual(['refrigerator']);
    expect(salsa.directions.join(' ')).toContain('Refrigerate');
  });
  test('a page without a yield is not planned', () => {
    const [out] = planOf('cucumber', { recipe: 'fermented-dill-pickles' }).leftOut;
    expect(out?.reason.code).toBe('no-amounts');
  });
});

describe('vinegar and jelly stock', () => {
  const plan = planDay({
    lots: [{ food: 'apple', raw: '60 lb' }],
    kitchen: FULL_KITCHEN,
    products: [
      { make: 'jars', from: 'apple', form: 'slices', jar: 'quart', worth: 3 },
      { make: 'vinegar', from: 'apple', least: 1, most: 2 },
      { make: 'jelly stock', from: 'apple', least: 1, most: 2 },
    ],
  });
  if (!plan.feasible) throw new Error(plan.reason.text);
  const [slices, ...ofTrimmings] = plan.products;
  test('are made of trimmings only, at the low end of what falls off', () => {
    expect(ofTrimmings.map(({ makes }) => makes)).toEqual(['vinegar', 'stock']);
    const taken = ofTrimmings.reduce((sum, { raw }) => sum + valueIn(raw, 'lb'), 0);
    expect(taken).toBeGreaterThan(1);
    expect(taken).toBeLessThanOrEqual(valueIn(slices?.trimmings?.low as never, 'lb') + 1e-6);
  });
  test('with what is dangerous about them', () => {
    const [vinegar, stock] = ofTrimmings;
    expect(vinegar?.cautions.find(({ id }) => id === 'home-vinegar-unknown')?.severity).toBe('danger');
    expect(vinegar?.directions.join(' ')).toContain('never used to can or pickle');
    expect(stock?.cautions.map(({ id }) => id)).toContain('jelly-stock-cold');
    expect(stock?.canning).toBeUndefined();
  });
});
