import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fields, readInput } from '../../../src/quantity/fields';
import { PANTRY } from '../../../src/recipes/pantryItems';
import { RECIPES, recipeOfId } from '../../../src/recipes/rows/rows';
import type { RecipeRow } from '../../../src/recipes/rows/tables';
import { kitchenSchema } from '../../../src/recipes/ways/kitchen';
import { cannerLacking, lackingFor } from '../../../src/recipes/ways/lacking';

const kitchen = (given: object) =>
  readInput(fields({ kitchen: kitchenSchema() }), { kitchen: { elevation: '900 ft', ...given } } as never).kitchen;
const lacks = (recipe: string, given: object): string[] =>
  lackingFor(recipeOfId(recipe) as RecipeRow, kitchen(given)).map(({ what }) => what);
const pantry = (...items: string[]) => ({ pantry: items.map((item) => ({ item, amount: '5 kg' })) });

describe('what a kitchen lacks', () => {
  test('is nothing where no kitchen is named, or nothing of it', () => {
    expect(lackingFor(recipeOfId('apple-butter') as RecipeRow, undefined)).toEqual([]);
    expect(lacks('apple-butter', {})).toEqual([]);
  });
  test('is a pot or jars only where it is said that there are none', () => {
    expect(lacks('apple-butter', { pots: [] })).toEqual(['burner']);
    expect(lacks('apple-butter', { jars: [] })).toEqual(['jars']);
    expect(lacks('apple-butter', { jars: [{ jar: 'pint', count: 0 }] })).toEqual(['jars']);
    expect(lacks('apple-butter', { jars: [{ jar: 'pint' }] })).toEqual([]);
  });
  test('is a dryer or a freezer that is not named', () => {
    expect(lacks('dried-tomato-slices', {})).toEqual(['dryer']);
    expect(lacks('dried-tomato-slices', { dryer: { trays: 5, trayArea: '0.1 m2' } })).toEqual([]);
    expect(lacks('frozen-onions-raw', {})).toEqual(['freezer']);
    expect(lacks('frozen-onions-raw', { freezer: { room: '50 L' } })).toEqual([]);
  });
  test('jars only of what is canned', () => {
    expect(lacks('frozen-onions-raw', { jars: [] })).not.toContain('jars');
  });
  test('of the pantry is the acid and the sugar, not the salt', () => {
    expect(lacks('apple-butter', { pantry: [] })).toEqual(['vinegar', 'sugar', 'brown sugar']);
    expect(lacks('apple-butter', pantry('vinegar', 'sugar', 'brown sugar'))).toEqual([]);
    expect(lacks('sauerkraut', { pantry: [] })).toEqual([]);
  });
  test('is nothing where one of the choices is there', () => {
    expect(lacks('tomato-crushed', pantry('citric acid'))).toEqual([]);
    expect(lacks('tomato-crushed', pantry('bottled lemon juice'))).toEqual([]);
    expect(lacks('tomato-crushed', pantry('sugar')).length).toBeGreaterThan(0);
  });
  test('of canners is said as one thing', () => {
    expect(cannerLacking(['dial-gauge', 'weighted-gauge'])).toEqual({
      kind: 'equipment',
      what: 'canner',
      text: 'a pressure canner with a dial gauge or a pressure canner with a weighted gauge',
    });
  });

  test('is never more with more in the kitchen', () => {
    const machines = { dryer: { trays: 5, trayArea: '0.1 m2' }, freezer: { room: '50 L' } };
    fc.assert(
      fc.property(
        fc.constantFrom(...RECIPES),
        fc.subarray([...PANTRY]),
        fc.subarray([...PANTRY]),
        fc.boolean(),
        (row, some, others, has) => {
          const less = lackingFor(row, kitchen(pantry(...some))).map(({ what }) => what);
          const both = { ...pantry(...new Set([...some, ...others])), ...(has ? machines : {}) };
          const more = lackingFor(row, kitchen(both)).map(({ what }) => what);
          expect(less).toEqual(expect.arrayContaining(more));
        },
      ),
    );
  });
});
