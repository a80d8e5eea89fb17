import { describe, expect, test } from 'vitest';
import { batchOf, byBatch, isAlone, isWhole, kgOfCut, packedBatch } from '../../../src/plan/makes/amounts';
import type { Day, Product } from '../../../src/plan/makes/making';
import { recipeOfId } from '../../../src/recipes/rows/rows';
import type { RecipeRow } from '../../../src/recipes/rows/tables';
import { productOf } from '../fullKitchen';

const row = (id: string) => recipeOfId(id) as RecipeRow;
const product = (id: string, food: string): Product =>
  ({ wanted: {}, index: 0, row: row(id), food: { id: food, name: food }, lots: [] }) as unknown as Product;
const day = { learned: [], massUnit: 'kg', metric: true } as unknown as Day;

describe('a printed batch', () => {
  test('of a weight is of food as bought: 25 lb of cabbage to 9 quarts', () => {
    const batch = batchOf(product('sauerkraut', 'cabbage'), 'quart');
    expect(batch).toMatchObject({ of: 'raw', jars: { low: 9, high: 9 } });
    expect(batch?.kg).toBeCloseTo(25 * 0.45359237, 9);
  });
  test('of a measure is of food prepared, at the fuller end: 6 cups to 6 to 7 half-pints', () => {
    const batch = batchOf(product('peach-jam-no-added-pectin', 'peach'), 'half-pint');
    expect(batch).toMatchObject({ of: 'ready', jars: { low: 6, high: 7 } });
    // 6 cups are 1.42 L
    expect(batch?.kg).toBeGreaterThan(1.2);
    expect(batch?.kg).toBeLessThan(1.6);
  });
  test('in another jar: whole jars, fewer at the low end and more at the high end', () => {
    // 6 to 7 half-pints are 3 to 3.5 pints
    expect(batchOf(product('peach-jam-no-added-pectin', 'peach'), 'pint')?.jars).toEqual({ low: 3, high: 4 });
  });
  test('is none where the page prints no yield', () => {
    expect(batchOf(product('tomato-crushed', 'tomato'), 'quart')).toBeUndefined();
    expect(batchOf(product('blackberry-jelly-powdered-pectin', 'blackberry'), 'half-pint')).toBeUndefined();
  });
  test('for the freezer, by the pack', () => {
    const batch = packedBatch(product('frozen-apple-sugar-pack', 'apple'), 0.5);
    expect((batch?.jars.low ?? 0) * 0.5).toBeCloseTo(batch?.kg ?? -1, 9);
    expect(packedBatch(product('frozen-green-beans', 'green bean'), 0.5)).toBeUndefined();
  });
});

test('jam is whole and alone, sauce is neither', () => {
  expect([isWhole, isAlone].map((is) => is(row('peach-jam-no-added-pectin')))).toEqual([true, true]);
  expect([isWhole, isAlone].map((is) => is(row('pickled-asparagus')))).toEqual([true, false]);
  expect([isWhole, isAlone].map((is) => is(row('apple-sauce')))).toEqual([false, false]);
});

test('a liter of what no table weighs is a kilogram', () => {
  expect(kgOfCut('water', undefined, { value: 2, unit: 'L' }).kg).toBeCloseTo(2, 1);
});

test('fruit for whole batches is counted at the poor end of its yield', () => {
  const jam = product('peach-jam-no-added-pectin', 'peach');
  const lot = { index: 0, food: 'peach', trade: 'peach', label: 'peach', usableKg: 10 };
  const batch = batchOf(jam, 'half-pint');
  if (batch === undefined) throw new Error('a batch');
  const [first] = byBatch(day, { ...jam, lots: [lot] } as never, batch).lots;
  // peaches give 76 to 88 % ready: all ends by the 76 %
  expect(first?.units.low).toBeCloseTo((6 * 0.76) / batch.kg, 6);
  expect(first?.units.high).toBeCloseTo((7 * 0.76) / batch.kg, 6);
});

test('a jar that neither a table nor a page measures is filled by its room', () => {
  const { basis, units } = productOf('crab', { make: 'jars', jar: 'pint' });
  expect(units.promised).toBeLessThan(units.ready);
  expect(basis.some(({ kind, of }) => kind === 'common-practice' && of === 'units')).toBe(true);
});
