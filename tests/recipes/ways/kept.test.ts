import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { valueIn } from '../../../src/quantity/scale';
import { recipeOfId } from '../../../src/recipes/rows/rows';
import type { RecipeRow } from '../../../src/recipes/rows/tables';
import { keptOf } from '../../../src/recipes/ways/kept';
import type { Lot } from '../../../src/recipes/ways/lot';
import { waysToKeep } from '../../../src/recipes/waysToKeep';

const rowOf = (id: string): RecipeRow => recipeOfId(id) as RecipeRow;
const lot = (food: string, name: string, pounds?: number): Lot =>
  ({
    food: { id: food, name },
    ...(pounds === undefined ? {} : { raw: { kind: 'mass', amount: { value: pounds, unit: 'lb' } } }),
  }) as Lot;

describe('what a lot gives', () => {
  test('frozen is counted in pints, by the printed pounds for one', () => {
    // a bushel of apples, 48 lb: 32 to 40 pints (1.25 to 1.5 lb a pint)
    const found = keptOf(rowOf('frozen-apple-unsweetened'), [lot('apple', 'apple', 48)]);
    expect(found?.pints).toEqual({ low: 32, high: 38 });
    expect(found).not.toHaveProperty('mass');
    expect(found?.basis.every(({ of }) => of === 'ways[].yields')).toBe(true);
  });

  test('dried is weighed, and counted in pints, by the printed yield', () => {
    // 12 lb of apples: 1 1/4 lb dried, 3 pints; 15 lb of carrots: 1 1/4 lb, 2 to 4 pints
    expect(keptOf(rowOf('dried-apple-slices'), [lot('apple', 'apple', 24)])).toMatchObject({
      mass: { low: { value: 2.5, unit: 'lb' }, high: { value: 2.5, unit: 'lb' } },
      pints: { low: 6, high: 6 },
    });
    expect(keptOf(rowOf('dried-carrot-slices'), [lot('carrot', 'carrot', 15)])).toMatchObject({
      mass: { low: { value: 1.25 } },
      pints: { low: 2, high: 4 },
    });
  });

  test('dried is weighed by its solids where no yield is printed', () => {
    const found = keptOf(rowOf('dried-apricot-halves'), [lot('apricot', 'apricot', 20)]);
    expect(found).not.toHaveProperty('pints');
    // 20 lb with 93 percent left after pitting, 86 percent water, dried to 20 percent: about 3.2 lb
    expect(found?.mass?.low.value).toBeGreaterThan(2.5);
    expect(found?.mass?.high.value).toBeLessThan(4);
  });

  test('is not said where a lot is not weighed, or no table holds it', () => {
    expect(keptOf(rowOf('dried-apple-slices'), [lot('apple', 'apple')])).toBeUndefined();
    expect(keptOf(rowOf('dried-apple-slices'), [lot('apple', 'apple', 5), lot('apple', 'apple')])).toBeUndefined();
    expect(keptOf(rowOf('dried-herbs'), [lot('basil', 'basil', 1)])).toBeUndefined();
    expect(keptOf(rowOf('frozen-corn-on-the-cob-medium'), [lot('sweet-corn', 'sweet corn', 10)])).toBeUndefined();
    expect(keptOf(rowOf('apple-butter'), [lot('apple', 'apple', 10)])).toBeUndefined();
  });

  test('of several foods is the sum, and of more food never less', () => {
    const both = keptOf(rowOf('dried-fruit-pieces'), [lot('apple', 'apple', 12), lot('pear', 'pear', 14)]);
    expect(both).toMatchObject({ mass: { low: { value: 2.75 } }, pints: { low: 6, high: 6 } });
    const pounds = fc.double({ min: 0.1, max: 500, noNaN: true });
    fc.assert(
      fc.property(pounds, pounds, (one, other) => {
        const [less, more] = [Math.min(one, other), Math.max(one, other)].map((each) =>
          keptOf(rowOf('dried-tomato-slices'), [lot('tomato', 'tomato', each)]),
        );
        const ends = (['low', 'high'] as const).map((end) => [
          valueIn(more?.mass?.[end] as { value: number; unit: 'lb' }, 'lb') -
            valueIn(less?.mass?.[end] as { value: number; unit: 'lb' }, 'lb'),
          (more?.pints?.[end] as number) - (less?.pints?.[end] as number),
        ]);
        for (const differ of ends.flat()) expect(differ).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('stands in the way, and a yield of its own page goes first', () => {
    const kitchen = { elevation: '500 ft', freezer: { room: '100 L' } } as const;
    const found = waysToKeep({ lots: [{ food: 'apple', raw: '40 lb' }], kitchen });
    if (!('ways' in found)) throw new Error(found.reason.text);
    const of = (recipe: string) => found.ways.find((way) => way.recipe === recipe);
    expect(of('frozen-apple-unsweetened')?.yields).toEqual([{ jar: 'pint', low: 26, high: 32 }]);
    expect(of('frozen-apple-syrup-pack')?.yields).toEqual([{ jar: 'pint', low: 32, high: 32 }]);
    expect(of('dried-apple-slices')?.mass?.low).toEqual({ value: 4.17, unit: 'lb' });
    expect(found.cautions.map(({ id }) => id)).toContain('recalled');
    expect(found.basis.map((line) => line.of)).toContain('ways[].mass');
  });
});
