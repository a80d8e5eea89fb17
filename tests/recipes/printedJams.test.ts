import { describe, expect, test } from 'vitest';
import { valueIn } from '../../src/quantity/scale';
import { foodsOfJams, printedJams } from '../../src/recipes/printedJams';
import { recipe } from '../../src/recipes/recipe';
import { RECIPES } from '../../src/recipes/rows/rows';

describe('printed jams', () => {
  test('are those that name the fruit itself and are canned', () => {
    expect(printedJams('pear')).toEqual([]);
    expect(printedJams('berry')).toEqual([]);
    expect(printedJams('fig')).toEqual([]);
    expect(printedJams('raspberry').map(({ row }) => row.id)).toEqual(['berry-jam-no-added-pectin']);
    expect(printedJams('peach').map(({ pectin }) => pectin)).toEqual(['none', 'powdered', 'liquid']);
    expect(foodsOfJams().sort()).toEqual([
      'apricot',
      'blackberry',
      'blueberry',
      'boysenberry',
      'dewberry',
      'gooseberry',
      'loganberry',
      'peach',
      'raspberry',
      'sour cherry',
      'strawberry',
    ]);
  });

  // Guide 7, p. 7-9
  test('are in cups and spoons as printed', () => {
    expect(printedJams('blueberry')[0]).toMatchObject({
      fruit: [5, 5],
      sugar: [5.5, 5.5],
      lemonJuice: 1,
      lemonOptional: false,
      water: 0.75,
      spice: 'ground nutmeg or cinnamon',
      spiceTsp: 0.5,
      form: 'whole',
      pectinMass: { value: 49.6, unit: 'g' },
      halfPints: [5, 5],
    });
    // a bottle is two pouches
    expect(printedJams('sour cherry')[1]?.pectinVolume).toEqual({ value: 177.4, unit: 'mL' });
  });

  test('are what `recipe` answers', () => {
    for (const food of foodsOfJams()) {
      for (const jam of printedJams(food)) {
        const found = recipe({ recipe: jam.row.id, food });
        if (!('ingredients' in found)) throw new Error(jam.row.id);
        const sugar = found.ingredients.find(({ role }) => role === 'sugar');
        expect(valueIn(sugar?.amount as { value: number; unit: 'cup' }, 'cup')).toBeCloseTo(jam.sugar[0], 9);
        expect(found.yields).toEqual([{ jar: 'half-pint', low: jam.halfPints[0], high: jam.halfPints[1] }]);
      }
    }
  });
});

test('yields of jelly are none that a mass balance forbids', () => {
  // 4 cups of juice and 3 to 4 of sugar weigh at most some 1.8 kg: no more than 6 half-pints of jelly at 65 %
  const jellies = RECIPES.filter(
    ({ makes, ingredients }) => makes === 'jelly' && !ingredients.some(({ role }) => role === 'pectin'),
  );
  const filled = jellies.flatMap(({ yields = [] }) => yields.filter(({ jar }) => jar === 'half-pint'));
  expect(filled.length).toBeGreaterThan(2);
  for (const { high } of filled) expect(high).toBeLessThanOrEqual(6);
});
