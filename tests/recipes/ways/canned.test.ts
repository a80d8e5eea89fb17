import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CanningKitchen, cannedIn, packsFor } from '../../../src/recipes/ways/canned';
import { readJar } from '../../../src/words/jar';
import type { AnyPack } from '../../../src/words/pack';

const all: readonly AnyPack[] = ['hot', 'raw', 'not stated'];
const at = (feet: number): CanningKitchen['elevation'] => ({ value: feet, unit: 'ft' });
const pints = { jars: [readJar('pint')], methods: ['boiling-water'] } as const;

describe('the processes of a recipe in a kitchen', () => {
  // USDA Complete Guide to Home Canning, Guide 2, p. 2-6: pints 5, 10 and 15 minutes
  test.each([
    [1000, 5],
    [1001, 10],
    [6000, 10],
    [6001, 15],
  ])('of apple butter at %d ft take %d minutes', (feet, minutes) => {
    const { processes } = cannedIn('apple', 'apple-butter', all, { elevation: at(feet), ...pints });
    expect(processes).toMatchObject([{ jar: 'pint', pack: 'hot', minutes, headspace: { value: 0.25, unit: 'in' } }]);
    expect(processes[0]).not.toHaveProperty('pressure');
  });

  test('are only those of the packs that are asked for', () => {
    const of = (packs: readonly AnyPack[]) =>
      cannedIn('peach', 'peach-halves-or-slices', packs, { elevation: at(500), ...pints });
    expect(of(['hot']).processes.map(({ pack }) => pack)).toEqual(['hot']);
    expect(of(all).processes).toHaveLength(2);
    expect(of([]).processes).toEqual([]);
  });

  test('name the canners that would do, where the kitchen has none', () => {
    const beans = cannedIn('green-bean', 'green-bean-whole-or-pieces', all, { elevation: at(500), ...pints });
    expect(beans.processes).toEqual([]);
    expect(beans.otherCanners).toEqual(['dial-gauge', 'weighted-gauge']);
  });

  test('are none where no page has such a process', () => {
    expect(cannedIn('apple', 'apple-jerky', all, { elevation: at(500) })).toMatchObject({
      processes: [],
      otherCanners: [],
      reason: { code: 'no process' },
    });
  });

  test('in jars that are not printed are none', () => {
    const gallon = { elevation: at(500), jars: [readJar('half-gallon')] };
    expect(cannedIn('apple', 'apple-butter', all, gallon)).toMatchObject({ processes: [], served: [] });
  });

  test('have pressure with a gauge, and never less of it higher up', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 8000 }), fc.integer({ min: 0, max: 8000 }), (one, other) => {
        const psi = [Math.min(one, other), Math.max(one, other)].map((feet) => {
          const kitchen = { elevation: at(feet), jars: [readJar('pint')], methods: ['dial-gauge'] as const };
          return cannedIn('carrot', 'carrot-slices-or-dice', ['hot'], kitchen).processes[0]?.pressure?.value ?? 0;
        });
        expect(psi[0]).toBeGreaterThan(0);
        expect(psi[1]).toBeGreaterThanOrEqual(psi[0] as number);
      }),
      { numRuns: 40 },
    );
  });
});

test('the packs of a recipe are those in which its page names the food', () => {
  const row = { packFoods: { hot: ['blueberry'], raw: ['blueberry', 'raspberry'] } };
  expect(packsFor(row, 'blueberry')).toEqual(all);
  expect(packsFor(row, 'raspberry')).toEqual(['raw', 'not stated']);
  expect(packsFor({}, 'raspberry')).toEqual(all);
});
