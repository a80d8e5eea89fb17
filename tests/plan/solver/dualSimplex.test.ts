import highsLoader from 'highs';
import { beforeAll, expect, test } from 'vitest';
import { seeded } from '../../../src/common/seeded';
import { toProgram } from '../../../src/plan/program/program';
import { compactOf } from '../../../src/plan/solver/compact';
import { dualSimplex, stand } from '../../../src/plan/solver/dualSimplex';
import type { Program } from '../../../src/plan/solver/linearProgram';
import { tableauOf, worthOf } from '../../../src/plan/solver/tableau';
import { randomKitchen, toLp } from '../randomKitchen';

type Highs = Awaited<ReturnType<typeof highsLoader>>;
let highs: Highs;
beforeAll(async () => {
  highs = await highsLoader();
});

/** What HiGHS says of the relaxation with some ends narrowed. */
function byHighs({ variables, bounds }: Program, ends: readonly (readonly [string, number, number])[]) {
  const more = ends.map(([name, min, max]) => ({ name, terms: [[name, 1]] as const, min, max }));
  const text = toLp({ variables, bounds: [...bounds, ...more] }).replace(/General\n.*\n/, '');
  const { Status, ObjectiveValue } = highs.solve(text);
  return Status === 'Optimal' ? ObjectiveValue : undefined;
}

test.each([1, 2, 3, 4, 5, 6])('from basis to basis in random kitchen %i: the best by HiGHS, or none', (seed) => {
  const { activities, capacity } = randomKitchen(seed, { lots: 6, products: 9 });
  const day = toProgram(activities, capacity, seed % 2 === 0 ? { worth: 1, money: 1, handsHours: 3 } : 'most worth');
  const program = { ...day, variables: day.variables.map((each) => ({ ...each, integer: false })) };
  const compact = compactOf(program);
  const tableau = tableauOf(compact.rows, compact.cost, compact.min, compact.max);
  const random = seeded(seed);
  let [feasible, none] = [0, 0];
  for (let round = 0; round < 15; round++) {
    tableau.min.set(compact.min);
    tableau.max.set(compact.max);
    const ends = compact.names.flatMap((name, column): [string, number, number][] => {
      if (random() > 0.12) return [];
      const [from, to] = [compact.min[column] as number, compact.max[column] as number];
      const cut = from + Math.floor((to - from) * random() * 0.6);
      const [min, max] = random() < 0.6 ? [from, cut] : [Math.min(cut, to) / 4, to];
      tableau.min[column] = min;
      tableau.max[column] = max;
      return [[name, min, max]];
    });
    stand(tableau);
    const ended = dualSimplex(tableau);
    const best = byHighs(program, ends);
    if (best === undefined) {
      none += 1;
      expect(ended).toBe('infeasible');
    } else {
      feasible += 1;
      expect(ended).toBe('optimal');
      expect(worthOf(tableau) + compact.constant).toBeCloseTo(best, 5);
    }
  }
  expect(feasible).toBeGreaterThan(0);
  expect(feasible + none).toBe(15);
});

test('a floor ends it early, and few pivots leave it unfinished', () => {
  const { activities, capacity } = randomKitchen(3, { lots: 6, products: 9 });
  const compact = compactOf(toProgram(activities, capacity, 'most worth'));
  const fresh = () => tableauOf(compact.rows, compact.cost, compact.min, compact.max);
  const whole = fresh();
  expect(dualSimplex(whole)).toBe('optimal');
  expect(dualSimplex(fresh(), worthOf(whole) + 1)).toBe('below');
  expect(dualSimplex(fresh(), Number.NEGATIVE_INFINITY, 2)).toBe('unfinished');
});
