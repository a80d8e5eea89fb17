import highsLoader from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { keyOf, promised } from '../../../src/plan/program/decisions';
import { toProgram } from '../../../src/plan/program/program';
import type { Program } from '../../../src/plan/solver/linearProgram';
import { optimize } from '../../../src/plan/solver/optimize';
import { type Solved, solve } from '../../../src/plan/solver/solve';
import { randomKitchen, toLp } from '../randomKitchen';

type Highs = Awaited<ReturnType<typeof highsLoader>>;
let highs: Highs;
beforeAll(async () => {
  highs = await highsLoader();
});

const sumOf = (terms: Program['per'], values: ReadonlyMap<string, number>) =>
  (terms ?? []).reduce((sum, [name, weight]) => sum + weight * (values.get(name) ?? 0), 0);
/** What HiGHS finds better than a cost for each unit: most of cost x units - money; 0 where nothing is. */
function missed({ variables, bounds, per }: Program, cost: number): number {
  const units = new Map(per);
  const step = variables.map((each) => ({ ...each, worth: each.worth + cost * (units.get(each.name) ?? 0) }));
  return highs.solve(toLp({ variables: step, bounds }), { mip_rel_gap: 0, mip_abs_gap: 1e-9 }).ObjectiveValue;
}

describe('the least cost of each unit, against HiGHS', () => {
  const seeds = Array.from({ length: 20 }, (_, index) => index + 1);
  const withMusts = (seed: number) => {
    const { activities, capacity } = randomKitchen(seed, undefined, seed % 2 === 0);
    const most = solve(toProgram(activities, capacity, 'most worth')).values;
    // every third kitchen must make half of what it can of its first product
    const least = seed % 3 === 0 ? Math.ceil((most.get(keyOf(promised(0))) ?? 0) / 2) : 0;
    return toProgram(
      activities.map((each, index) => (index === 0 ? { ...each, least } : each)),
      capacity,
      'least cost',
    );
  };
  test.each(seeds)('random kitchen %i: no plan is cheaper', (seed) => {
    const program = withMusts(seed);
    const found = optimize(program);
    expect(found).toMatchObject({ feasible: true, optimal: true, gap: 0 });
    expect(found.worth).toBeLessThan(0);
    const money = program.variables.reduce((sum, { name, worth }) => sum + worth * (found.values.get(name) ?? 0), 0);
    expect(found.worth).toBeCloseTo(money / sumOf(program.per, found.values), 9);
    expect(Math.abs(missed(program, -found.worth))).toBeLessThan(1e-6);
  });
  test('what the check would find if the plan were a hundredth dearer', () => {
    const program = withMusts(5);
    expect(missed(program, -optimize(program).worth * 1.01)).toBeGreaterThan(1e-3);
  });
});

describe('by hand', () => {
  // three units of a cost 1 each and a fixed 2 for the first load of four, then 2 more; b costs 1.4 each
  const program: Program = {
    variables: [
      { name: 'a', worth: -1, integer: true },
      { name: 'load', worth: -2, integer: true },
      { name: 'b', worth: -1.4, integer: true },
    ],
    bounds: [
      {
        name: 'loads',
        terms: [
          ['load', 4],
          ['a', -1],
        ],
        min: 0,
      },
      { name: 'a', terms: [['a', 1]], max: 10 },
      { name: 'b', terms: [['b', 1]], max: 3 },
      {
        name: 'one',
        terms: [
          ['a', 1],
          ['b', 1],
        ],
        min: 1,
      },
    ],
    per: [
      ['a', 1],
      ['b', 1],
    ],
  };
  test('b alone is cheapest, and of it as many as there are', () => {
    // four of a cost 1.5 each with their load, b 1.4
    const found = optimize(program);
    expect(found.worth).toBeCloseTo(-1.4, 9);
    expect([found.values.get('a'), found.values.get('b')]).toEqual([0, 3]);
  });
  test('a must for a is met with a full load of it and b beside it', () => {
    const bounds = [...program.bounds, { name: 'must', terms: [['a', 1]] as const, min: 3 }];
    // 4 a + 1 load + 3 b: (4 + 2 + 4.2) / 7
    const found = optimize({ ...program, bounds });
    expect(found.worth).toBeCloseTo(-10.2 / 7, 9);
    expect([found.values.get('a'), found.values.get('load'), found.values.get('b')]).toEqual([4, 1, 3]);
  });
  test('a start that is the best is kept, and one of nothing is no start', () => {
    const best = optimize(program);
    expect(optimize(program, { start: best }).worth).toBeCloseTo(-1.4, 9);
    const nothing: Solved = { feasible: true, optimal: false, gap: 0, worth: 0, values: new Map() };
    expect(optimize(program, { start: nothing }).worth).toBeCloseTo(-1.4, 9);
  });
  test('no unit can be promised: infeasible', () => {
    const bounds = [
      ...program.bounds,
      {
        name: 'none',
        terms: [
          ['a', 1],
          ['b', 1],
        ] as const,
        max: 0,
      },
    ];
    expect(optimize({ ...program, bounds })).toMatchObject({ feasible: false, optimal: true });
  });
  test('what costs nothing: as many as there are', () => {
    const free = { ...program, variables: program.variables.map((each) => ({ ...each, worth: 0 })) };
    const found = optimize(free);
    expect(found).toMatchObject({ optimal: true, gap: 0 });
    expect(Math.abs(found.worth)).toBe(0);
    expect(sumOf(program.per, found.values)).toBe(13);
  });
  test('a program without a sum is solved as it is', () => {
    const { per: _, ...linear } = program;
    expect(optimize(linear)).toEqual(solve(linear));
  });
});

test('a search cut short states a gap that the best keeps within', () => {
  const gaps = [6, 9, 27, 29].map((seed) => {
    const { activities, capacity } = randomKitchen(seed, { lots: 6, products: 10 });
    const program = toProgram(activities, capacity, 'least cost');
    const [short, full] = [optimize(program, { nodes: 60 }), optimize(program)];
    expect(full.optimal).toBe(true);
    expect(short.worth).toBeLessThanOrEqual(full.worth + 1e-6);
    expect(-full.worth).toBeGreaterThanOrEqual(-short.worth * (1 - short.gap) - 1e-6);
    expect(short.optimal).toBe(short.gap === 0);
    return short.gap;
  });
  expect(Math.max(...gaps)).toBeGreaterThan(0);
  expect(Math.max(...gaps)).toBeLessThanOrEqual(1);
});
