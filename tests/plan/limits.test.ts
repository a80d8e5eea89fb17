import { describe, expect, test } from 'vitest';
import { limitsOf, useOf, wideningsOf } from '../../src/plan/limits';
import { toProgram } from '../../src/plan/program';
import { solve } from '../../src/plan/solve';
import { randomKitchen } from './randomKitchen';

describe.each([2, 4, 7, 8])('random kitchen %i', (seed) => {
  const { activities, capacity } = randomKitchen(seed);
  const program = toProgram(activities, capacity, 'most worth');
  const found = solve(program);
  const widenings = wideningsOf(program, {
    lots: capacity.lots.map((_, index) => `lot ${index}`),
    canners: ['canner'],
    hands: capacity.hands,
    burners: capacity.burners,
    minutes: capacity.minutes,
    pots: capacity.pots.length,
  });
  const limits = limitsOf(program, found, widenings);
  test('a limit is nearly used up, adds something, and the largest comes first', () => {
    for (const { used, available, gain } of limits) {
      expect(used).toBeLessThanOrEqual(available + 1e-6);
      expect(gain).toBeGreaterThan(0);
    }
    expect(limits.map(({ gain }) => gain)).toEqual(limits.map(({ gain }) => gain).sort((one, other) => other - one));
  });
  test('the gain is what solving the widened kitchen anew gives', () => {
    for (const { what, gain } of limits) {
      const more = widenings.find((each) => each.what === what)?.more ?? {};
      const widened = {
        ...program,
        bounds: program.bounds.map((bound) =>
          bound.max === undefined ? bound : { ...bound, max: bound.max + (more[bound.name] ?? 0) },
        ),
      };
      expect(solve(widened).worth - found.worth).toBeCloseTo(gain, 6);
    }
  });
});
test('no use of a bound that is not there', () =>
  expect(useOf({ variables: [], bounds: [] }, new Map(), 'hands')).toBeUndefined());
