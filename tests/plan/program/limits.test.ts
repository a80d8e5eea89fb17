import highsLoader from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { DayProgram } from '../../../src/plan/program/decisions';
import { limitsOf, useOf, type Widening, widened } from '../../../src/plan/program/limits';
import { toProgram } from '../../../src/plan/program/program';
import { wideningsOf } from '../../../src/plan/program/widenings';
import { jarsOf, LIDS } from '../../../src/plan/request/stock';
import { effortFor, nodesFor } from '../../../src/plan/solver/effort';
import { type Solved, solve } from '../../../src/plan/solver/solve';
import { randomKitchen, toLp } from '../randomKitchen';

type Highs = Awaited<ReturnType<typeof highsLoader>>;
let highs: Highs;
beforeAll(async () => {
  highs = await highsLoader();
});
const byHighs = (program: DayProgram): number =>
  highs.solve(toLp(program), { mip_rel_gap: 0, mip_abs_gap: 1e-9 }).ObjectiveValue;

function dayOf(
  seed: number,
  size?: { lots: number; products: number },
): { program: DayProgram; widenings: Widening[] } {
  const { activities, capacity } = randomKitchen(seed, size);
  const program = toProgram(activities, capacity, 'most worth');
  const widenings = wideningsOf(program, {
    lots: capacity.lots.map((_, index) => `lot ${index}`),
    canners: ['canner'],
    hands: capacity.hands,
    burners: capacity.burners,
    minutes: capacity.minutes,
    pots: capacity.pots.length,
  });
  return { program, widenings };
}
const near = (worth: number) => 2e-6 * Math.max(1, Math.abs(worth));

/** What the limits of a plan must keep to, against the best of the day and of each widened day by HiGHS. */
function wrong(
  program: DayProgram,
  found: Solved,
  widenings: readonly Widening[],
  effort = effortFor(program),
): string[] {
  const { limits, notComputed } = limitsOf(program, found, widenings, effort);
  const best = byHighs(program);
  const said = new Map(limits.map((limit) => [limit.what, limit]));
  return widenings.flatMap(({ what, more }): string[] => {
    const exact = byHighs(widened(program, more)) - best;
    const limit = said.get(what);
    if (limit === undefined)
      return exact > near(best) && !notComputed.includes(what) ? [`${what}: ${exact} is missing`] : [];
    const { gain, mostGain: atMost = gain } = limit;
    return gain > 0 && gain <= exact + near(best) && exact <= atMost + near(best)
      ? []
      : [`${what}: ${gain} to ${atMost}, by HiGHS ${exact}`];
  });
}

describe.each(Array.from({ length: 24 }, (_, index) => index + 1))('random kitchen %i', (seed) => {
  const { program, widenings } = dayOf(seed, { lots: 3, products: 5 });
  const found = solve(program);
  test('every gain is the exact difference, none is missing and the largest comes first', () => {
    expect(wrong(program, found, widenings)).toEqual([]);
    const { limits } = limitsOf(program, found, widenings, effortFor(program));
    expect(limits.map(({ gain }) => gain)).toEqual(limits.map(({ gain }) => gain).sort((one, other) => other - one));
    for (const { used, available } of limits) expect(used).toBeLessThanOrEqual(available + 1e-6);
  });
  test('cut short, a gain is a range that holds the exact one, or is named as not computed', () => {
    expect(wrong(program, solve(program, { nodes: 30 }), widenings, { nodes: 400, looks: 0 })).toEqual([]);
  });
});

test('more and more of a stock is never worth less', () => {
  for (let seed = 1; seed <= 24; seed++) {
    const { program } = dayOf(seed, { lots: 3, products: 5 });
    const found = solve(program);
    const pints = { of: 'stock', stock: jarsOf('pint') } as const;
    const lids = { of: 'stock', stock: LIDS } as const;
    const steps = [6, 12, 18].map((jars) => ({
      what: `${jars}`,
      oneMore: '',
      main: pints,
      more: [pints, lids].map((resource) => ({ resource, by: jars })),
    }));
    const { limits, notComputed } = limitsOf(program, found, steps, effortFor(program));
    if (notComputed.length > 0) continue;
    const gains = steps.map(({ what }) => limits.find((each) => each.what === what));
    for (let step = 1; step < gains.length; step++) {
      const [less, more] = [gains[step - 1], gains[step]];
      expect(more?.mostGain ?? more?.gain ?? 0).toBeGreaterThanOrEqual((less?.gain ?? 0) - 1e-6);
    }
  }
});

test('no effort left: everything is named as not computed, but what is not used at all', () => {
  const { program, widenings } = dayOf(4);
  const { limits, notComputed } = limitsOf(program, solve(program), widenings, { nodes: 0, looks: 0 });
  expect(limits).toEqual([]);
  expect(notComputed.length).toBe(widenings.length);
});

test('the nodes that are opened are counted off, and no more than there are', () => {
  const { program, widenings } = dayOf(8);
  const effort = { nodes: 500, looks: 0 };
  limitsOf(program, solve(program), widenings, effort);
  expect(effort.nodes).toBeLessThan(500);
  expect(effort.nodes).toBeGreaterThanOrEqual(0);
  expect(nodesFor(program)).toBeGreaterThanOrEqual(20);
});

test('no use of a bound that is not there', () =>
  expect(useOf({ variables: [], bounds: [] }, new Map(), { of: 'hands' })).toBeUndefined());
