import highsLoader from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { keyOf, made, promised } from '../../../src/plan/program/decisions';
import { toProgram } from '../../../src/plan/program/program';
import type { AimWeights } from '../../../src/plan/request/planFields';
import type { Program } from '../../../src/plan/solver/linearProgram';
import { type Solved, solve } from '../../../src/plan/solver/solve';
import { randomKitchen, toLp } from '../randomKitchen';

type Highs = Awaited<ReturnType<typeof highsLoader>>;
let highs: Highs;
beforeAll(async () => {
  highs = await highsLoader();
});
/** What HiGHS, an independent solver, finds; proven to the last digit. */
const byHighs = (program: Program) => highs.solve(toLp(program), { mip_rel_gap: 0, mip_abs_gap: 1e-9 });

const meets = ({ variables, bounds }: Program, values: ReadonlyMap<string, number>): string[] => [
  ...variables
    .filter(({ name, integer }) => {
      const value = values.get(name) ?? 0;
      return value < -1e-9 || (integer && !Number.isInteger(value));
    })
    .map(({ name }) => name),
  ...bounds
    .filter(({ terms, min = -Infinity, max = Infinity }) => {
      const sum = terms.reduce((total, [name, weight]) => total + weight * (values.get(name) ?? 0), 0);
      const slack = 1e-5 * Math.max(1, Math.abs(sum));
      return sum < min - slack || sum > max + slack;
    })
    .map(({ name }) => name),
];

describe('against HiGHS', () => {
  const seeds = Array.from({ length: 40 }, (_, index) => index + 1);
  const aims = ['most worth', 'most worth', 'most worth', 'least waste'] as const;
  test.each(seeds)('the same objective in random kitchen %i, or the gap that is stated', (seed) => {
    const { activities, capacity } = randomKitchen(seed);
    const program = toProgram(activities, capacity, aims[seed % 4] as (typeof aims)[number]);
    const found = solve(program);
    const best = byHighs(program).ObjectiveValue;
    expect(found.feasible).toBe(true);
    expect(meets(program, found.values)).toEqual([]);
    if (found.optimal) expect(Math.abs(found.worth - best)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(best)));
    else expect(best).toBeLessThanOrEqual(found.worth * (1 + found.gap) + 1e-6);
    expect(found.worth).toBeLessThanOrEqual(best + 1e-6 * Math.max(1, Math.abs(best)));
  });
  const ten = Array.from({ length: 10 }, (_, index) => 201 + index);
  const equal = (program: Program): Solved => {
    const found = solve(program);
    const best = byHighs(program).ObjectiveValue;
    expect(found).toMatchObject({ feasible: true, optimal: true });
    expect(meets(program, found.values)).toEqual([]);
    expect(Math.abs(found.worth - best)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(best)));
    return found;
  };
  const mixes = [
    { worth: 1, cost: 1, hours: 6 },
    { worth: 1, waste: 2, cost: 0.5, hours: 3 },
    { waste: 1, cost: 0.3 },
  ];
  test.each(ten)('the same by weights in random kitchen %i', (seed) => {
    const { activities, capacity } = randomKitchen(seed);
    equal(toProgram(activities, capacity, mixes[seed % 3] as AimWeights));
  });
  test.each(ten)('the same with smallest batches in random kitchen %i', (seed) => {
    const { activities, capacity } = randomKitchen(seed, undefined, true);
    const { values } = equal(toProgram(activities, capacity, seed % 3 === 0 ? 'least waste' : 'most worth'));
    for (const { product, smallest = 0 } of activities) {
      const units = values.get(keyOf(promised(product))) ?? 0;
      expect(units === 0 || units >= smallest, `${units} of at least ${smallest}`).toBe(true);
      if (smallest > 1) expect(values.get(keyOf(made(product))) ?? 0).toBe(units > 0 ? 1 : 0);
    }
  });
  test('smallest batches change some of these days', () => {
    const gains = [201, 204, 205, 206].map((seed) => {
      const { activities, capacity } = randomKitchen(seed, undefined, true);
      const free = activities.map(({ smallest: _, ...each }) => each);
      const worth = (some: typeof free) => solve(toProgram(some, capacity, 'most worth')).worth;
      return worth(free) - worth(activities);
    });
    expect(Math.min(...gains)).toBeGreaterThanOrEqual(-1e-6);
    expect(Math.max(...gains)).toBeGreaterThan(0.1);
  });
  test('a batch for each load takes hands from days with large pots that are stirred', () => {
    const losses = [4, 6, 7, 8].map((seed) => {
      const { activities, capacity } = randomKitchen(seed);
      const stirred = activities.map((each) => (each.cook ? { ...each, cook: { ...each.cook, stirred: true } } : each));
      const program = toProgram(stirred, { ...capacity, pots: [60], hands: 1 }, 'most worth');
      const plain = { ...program, bounds: program.bounds.filter(({ of }) => of.of !== 'a batch for each load') };
      const [own, without] = [solve(program), solve(plain)];
      expect(own.worth).toBeCloseTo(byHighs(program).ObjectiveValue, 5);
      return without.worth - own.worth;
    });
    expect(Math.min(...losses)).toBeGreaterThanOrEqual(-1e-6);
    expect(Math.max(...losses)).toBeGreaterThan(0.1);
  });
  test.each([101, 102, 103, 104, 105, 106])('the rounding cuts take no plan away in random kitchen %i', (seed) => {
    const { activities, capacity } = randomKitchen(seed, { lots: 3, products: 5 });
    const program = toProgram(activities, capacity, 'most worth');
    const plain = { ...program, bounds: program.bounds.filter(({ of }) => of.of !== 'rounded') };
    expect(plain.bounds.length).toBeLessThan(program.bounds.length);
    expect(byHighs(program).ObjectiveValue).toBeCloseTo(byHighs(plain).ObjectiveValue, 6);
  });
  test.each([1, 2, 3, 4])('16 lots and 24 products: the same and proven, kitchen %i', (seed) => {
    const { activities, capacity } = randomKitchen(seed, { lots: 16, products: 24 });
    equal(toProgram(activities, capacity, 'most worth'));
  });
  test.each([1, 2, 3, 4])('24 lots and 32 products: near, with a gap that holds, kitchen %i', (seed) => {
    const { activities, capacity } = randomKitchen(seed, { lots: 24, products: 32 });
    const program = toProgram(activities, capacity, 'most worth');
    const found = solve(program);
    const best = byHighs(program).ObjectiveValue;
    expect(meets(program, found.values)).toEqual([]);
    expect(found.worth).toBeLessThanOrEqual(best + 1e-6 * best);
    expect(found.worth).toBeGreaterThanOrEqual(0.98 * best);
    expect(best).toBeLessThanOrEqual(found.worth * (1 + found.gap) + 1e-6);
  });
  test('musts that cannot be met are infeasible for both', () => {
    const { activities, capacity } = randomKitchen(3);
    const program = toProgram(
      activities.map((activity) => ({ ...activity, least: 40, most: 60 })),
      capacity,
      'most worth',
    );
    expect(byHighs(program).Status).toBe('Infeasible');
    expect(solve(program)).toMatchObject({ feasible: false, optimal: true });
  });
});

describe('small programs, by hand', () => {
  // maximize 5x + 4y, 6x + 4y <= 24, x + 2y <= 6: relaxed best (3, 1.5) = 21; in whole numbers (4, 0) = 20
  const program: Program = {
    variables: [
      { name: 'x', worth: 5, integer: true },
      { name: 'y', worth: 4, integer: true },
    ],
    bounds: [
      {
        name: 'one',
        terms: [
          ['x', 6],
          ['y', 4],
        ],
        max: 24,
      },
      {
        name: 'two',
        terms: [
          ['x', 1],
          ['y', 2],
        ],
        max: 6,
      },
    ],
  };
  test('the whole-number best, not the rounded relaxation', () => {
    const found = solve(program);
    expect(found).toMatchObject({ feasible: true, optimal: true, gap: 0, worth: 20 });
    expect(Object.fromEntries(found.values)).toEqual({ x: 4, y: 0 });
  });
  test('a search cut short states its gap', () => {
    const { activities, capacity } = randomKitchen(9);
    const day = toProgram(activities, capacity, 'most worth');
    const short = solve(day, { nodes: 4 });
    const full = solve(day);
    expect(short.feasible).toBe(true);
    expect(short.optimal).toBe(false);
    expect(short.gap).toBeGreaterThan(0);
    expect(full.worth).toBeLessThanOrEqual(short.worth * (1 + short.gap) + 1e-6);
  });
  test('a large day gets a plan from a short search as well', () => {
    for (const seed of [1, 2, 3]) {
      const { activities, capacity } = randomKitchen(seed, { lots: 20, products: 40 });
      const program = toProgram(activities, capacity, 'most worth');
      const found = solve(program, { nodes: 20 });
      expect(found.feasible).toBe(true);
      expect(meets(program, found.values)).toEqual([]);
      expect(byHighs(program).ObjectiveValue).toBeLessThanOrEqual(found.worth * (1 + found.gap) + 1e-6);
    }
  });
  test('a search with no node to spare says that it does not know', () => {
    expect(solve(program, { nodes: 0 })).toMatchObject({ feasible: false, optimal: false });
  });
  test('a start that is already the best is returned', () => {
    const start = solve(program);
    expect(solve(program, { start }).values.get('x')).toBe(4);
  });
  test('among equal plans the second objective chooses, whole numbers kept', () => {
    const free: Program = {
      variables: [...program.variables, { name: 'z', worth: 0 }],
      bounds: [...program.bounds, { name: 'z', terms: [['z', 1]], min: 1, max: 3 }],
    };
    expect(solve(free, { among: new Map([['z', -1]]) }).values.get('z')).toBeCloseTo(1, 9);
    expect(solve(free, { among: new Map([['z', 1]]) }).values.get('z')).toBeCloseTo(3, 9);
  });
  test('no load too many for the jars, and then no batch too many for the loads', () => {
    const day: Program = {
      variables: [
        { name: 'batches', worth: 0, integer: true },
        { name: 'loads', worth: 0, integer: true },
        { name: 'jars', worth: 1, integer: true },
      ],
      bounds: [
        { name: 'a batch for each load', terms: [['batches', 1] as const, ['loads', -1] as const], min: 0 },
        { name: 'loads', terms: [['loads', 7] as const, ['jars', -1] as const], min: 0 },
        { name: 'jars', terms: [['jars', 1]], max: 7 },
      ],
    };
    const values = new Map([
      ['batches', 4],
      ['loads', 3],
      ['jars', 7],
    ]);
    const found = solve(day, { start: { feasible: true, optimal: false, gap: 0, worth: 7, values } });
    expect(Object.fromEntries(found.values)).toEqual({ batches: 1, loads: 1, jars: 7 });
  });
  test('bounds that cannot hold together', () => {
    const both = [...program.bounds, { name: 'more', terms: [['x', 1]] as [string, number][], min: 5 }];
    expect(solve({ ...program, bounds: both })).toMatchObject({ feasible: false, optimal: true });
    const none = [...program.bounds, { name: 'half', terms: [['x', 1]] as [string, number][], min: 1.2, max: 1.8 }];
    expect(solve({ ...program, bounds: none })).toMatchObject({ feasible: false, optimal: true });
  });
});
