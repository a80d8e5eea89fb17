import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { valueIn } from '../../../src/quantity/scale';
import { recipeOfId } from '../../../src/recipes/rows/rows';
import type { RecipeRow } from '../../../src/recipes/rows/tables';
import type { Lot } from '../../../src/recipes/ways/lot';
import { type Way, wayOf } from '../../../src/recipes/ways/way';

const rowOf = (id: string): RecipeRow => recipeOfId(id) as RecipeRow;
const lot = (food: string, kg?: number): Lot =>
  ({
    food: { id: food, name: food },
    ...(kg === undefined ? {} : { raw: { kind: 'mass', amount: { value: kg, unit: 'kg' } } }),
  }) as Lot;
const open = (...args: Parameters<typeof wayOf>): Way => {
  const found = wayOf(...args);
  if (!('way' in found)) throw new Error(found.reason.text);
  return found.way;
};
const elevation = { value: 900, unit: 'ft' } as const;

describe('one way', () => {
  test('without an amount is one batch as printed', () => {
    const way = open(rowOf('apple-butter'), [lot('apple')], undefined);
    expect(way).toMatchObject({
      recipe: 'apple-butter',
      makes: 'butter',
      foods: ['apple'],
      processes: [],
      lacking: [],
    });
    expect(way.yields).toEqual([{ jar: 'pint', low: 8, high: 9 }]);
    expect(way).not.toHaveProperty('batches');
    expect(way.needs.find(({ what }) => what === 'vinegar')).toEqual({
      what: 'vinegar',
      amount: { value: 2, unit: 'cup' },
      neverLess: true,
    });
  });

  test('does not count spices or the food itself among its needs', () => {
    const { needs } = open(rowOf('apple-butter'), [lot('apple')], undefined);
    expect(needs.map(({ what }) => what)).toEqual(['cider', 'vinegar', 'sugar', 'brown sugar']);
  });

  test('of less than a whole batch is closed, and says so', () => {
    const found = wayOf(rowOf('pickled-beets'), [lot('beet', 1)], undefined);
    expect(found).toMatchObject({ recipe: 'pickled-beets', reason: { code: 'less than a batch' } });
    expect(found).not.toHaveProperty('way');
  });

  test('lacks its canner first, where another canner would do', () => {
    const kitchen = { elevation, canners: [{ method: 'boiling-water' }] } as Parameters<typeof wayOf>[2];
    const way = open(rowOf('green-bean-whole-or-pieces'), [lot('green-bean')], kitchen);
    expect(way.processes).toEqual([]);
    expect(way.lacking[0]?.what).toBe('canner');
  });

  test('is closed where no canner would do', () => {
    const kitchen = { elevation, jars: [{ jar: 'half-gallon' }] } as Parameters<typeof wayOf>[2];
    expect(wayOf(rowOf('apple-butter'), [lot('apple')], kitchen)).toHaveProperty('reason');
  });

  test('of more food is never fewer jars or less work', () => {
    const kg = fc.double({ min: 0.5, max: 300, noNaN: true });
    fc.assert(
      fc.property(kg, kg, (one, other) => {
        const [less, more] = [Math.min(one, other), Math.max(one, other)].map((mass) =>
          open(rowOf('apple-butter'), [lot('apple', mass)], undefined),
        ) as [Way, Way];
        expect(more.batches).toBeGreaterThanOrEqual(less.batches as number);
        expect(more.yields[0]?.low).toBeGreaterThanOrEqual(less.yields[0]?.low as number);
        const work = ({ handsOn: hands }: Way) => valueIn(hands?.high as { value: number; unit: 'min' }, 'min');
        expect(work(more)).toBeGreaterThanOrEqual(work(less));
      }),
    );
  });
});
