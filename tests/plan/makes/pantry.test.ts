import { describe, expect, test } from 'vitest';
import pantryJson from '../../../data/plan/pantry.json';
import { acidChosen, isAcid, kgOfMeasure, pantryAmount, standsFor } from '../../../src/plan/makes/pantry';
import { PANTRY } from '../../../src/recipes/pantryItems';

const day = (pantry?: readonly string[], metric = false) =>
  ({
    request: { kitchen: pantry === undefined ? {} : { pantry: pantry.map((item) => ({ item })) } },
    metric,
    massUnit: metric ? 'kg' : 'lb',
  }) as never;

test('every item of the pantry has a row and a weight', () => {
  expect((pantryJson as { rows: { item: string }[] }).rows.map(({ item }) => item).sort()).toEqual([...PANTRY].sort());
  for (const item of PANTRY) expect(kgOfMeasure(item, { value: 1, unit: 'cup' }).kg).toBeGreaterThan(0.1);
});
test('by hand: sugar 200 g and lemon juice 244 g a cup, citric acid 4.6 g a teaspoon', () => {
  expect(kgOfMeasure('sugar', { value: 2, unit: 'cup' }).kg).toBeCloseTo(0.4, 9);
  expect(kgOfMeasure('bottled lemon juice', { value: 1, unit: 'cup' }).kg).toBeCloseTo(0.244, 9);
  expect(kgOfMeasure('citric acid', { value: 1, unit: 'tsp' }).kg).toBeCloseTo(0.0046, 9);
});
describe('acid of each jar', () => {
  const acid = {
    bottledLemonJuice: { value: 2, unit: 'tbsp' },
    citricAcid: { value: 0.5, unit: 'tsp' },
  } as const;
  test.each([
    [undefined, 'bottled lemon juice'],
    [[], 'bottled lemon juice'],
    [['citric acid'], 'citric acid'],
    [['citric acid', 'bottled lemon juice'], 'bottled lemon juice'],
  ] as const)('of a pantry with %o: %s', (pantry, item) => {
    expect(acidChosen(day(pantry), acid)?.item).toBe(item);
  });
  test('is lemon juice where citric acid is not printed, and none where neither is', () => {
    expect(acidChosen(day(['citric acid']), { bottledLemonJuice: acid.bottledLemonJuice })?.item).toBe(
      'bottled lemon juice',
    );
    expect(acidChosen(day(), {})).toBeUndefined();
  });
});
test('which items are acid, and which stand for what pages print', () => {
  expect(PANTRY.filter(isAcid)).toEqual(expect.arrayContaining(['bottled lemon juice', 'citric acid', 'vinegar']));
  expect(isAcid('sugar')).toBe(false);
  expect(standsFor('lemon', 'juice')).toBe('bottled lemon juice');
  expect(standsFor('lemon', 'peel')).toBeUndefined();
});
test('so many kg as a cook writes it', () => {
  expect(pantryAmount(day(), 'bottled lemon juice', 0.122)).toEqual({ value: expect.closeTo(0.5, 9), unit: 'cup' });
  expect(pantryAmount(day(undefined, true), 'bottled lemon juice', 0.244).unit).toBe('mL');
  expect(pantryAmount(day(), 'sugar', 0.45359237)).toEqual({ value: expect.closeTo(1, 9), unit: 'lb' });
});
