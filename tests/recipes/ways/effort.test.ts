import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { RECIPES, recipeOfId } from '../../../src/recipes/rows/rows';
import type { RecipeRow, StepRow } from '../../../src/recipes/rows/tables';
import { effortOf } from '../../../src/recipes/ways/effort';

const of = (steps: StepRow[], kg = 1, units = 1) =>
  effortOf({ ...(recipeOfId('apple-butter') as RecipeRow), steps }, kg, units);
const none = { low: 0, high: 0 };

describe('the effort of a recipe', () => {
  test('of hands goes by the mass', () => {
    // peeling: 3 to 8 minutes a kilogram, common practice
    expect(of([{ do: 'peel' }], 10)).toEqual({
      hands: { low: 30, high: 80 },
      clock: { low: 30, high: 80 },
      alone: none,
    });
  });

  test('of a pot is on the clock, for its printed time and not the mass', () => {
    const step: StepRow = { do: 'simmer', time: { low: '5 min', high: '10 min' } };
    expect(of([step], 50)).toEqual({ hands: none, clock: { low: 5, high: 10 }, alone: none });
    expect(of([{ ...step, times: 3 }]).clock).toEqual({ low: 15, high: 30 });
  });

  test('that goes on by itself stands apart', () => {
    expect(of([{ do: 'ferment', time: '1 week' }])).toEqual({
      hands: none,
      clock: none,
      alone: { low: 10_080, high: 10_080 },
    });
    expect(of([{ do: 'freeze' }]).alone).toEqual({ low: 480, high: 1440 });
  });

  test('leaves out what may be left out, and the raw pack', () => {
    expect(
      of([
        { do: 'peel', optional: true },
        { do: 'peel', pack: 'raw' },
      ]),
    ).toEqual(of([]));
    expect(of([{ do: 'peel', pack: 'hot' }])).toEqual(of([{ do: 'peel' }]));
  });

  test('grows with mass and with jars, and its slow end is never before the practiced one', () => {
    const kg = fc.double({ min: 0.1, max: 200, noNaN: true });
    const jars = fc.integer({ min: 1, max: 200 });
    fc.assert(
      fc.property(fc.constantFrom(...RECIPES), kg, kg, jars, jars, (row, a, b, m, n) => {
        const less = effortOf(row, Math.min(a, b), Math.min(m, n));
        const more = effortOf(row, Math.max(a, b), Math.max(m, n));
        for (const what of ['hands', 'clock', 'alone'] as const) {
          expect(more[what].low).toBeGreaterThanOrEqual(less[what].low);
          expect(more[what].high).toBeGreaterThanOrEqual(less[what].high);
          expect(less[what].high).toBeGreaterThanOrEqual(less[what].low);
        }
      }),
    );
  });
});
