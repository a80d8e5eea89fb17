import highsLoader from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { yieldsKnown } from '../../../src/plan/answer/yieldsKnown';
import { type FeasibleDay, type PlanDayInput, planDay } from '../../../src/plan/index';
import { toProgram } from '../../../src/plan/program/program';
import type { Activity } from '../../../src/plan/request/activity';
import { effortFor } from '../../../src/plan/solver/effort';
import type { Program } from '../../../src/plan/solver/linearProgram';
import { solve } from '../../../src/plan/solver/solve';
import { randomKitchen, toLp } from '../randomKitchen';

const day = (
  lot: object = {},
  more: Partial<PlanDayInput> = {},
): FeasibleDay & Required<Pick<FeasibleDay, 'yields'>> => {
  const plan = planDay({
    lots: [{ food: 'peach', raw: '20 kg', ...lot } as PlanDayInput['lots'][number]],
    kitchen: { elevation: '100 m', hours: '10 h', freezer: { room: '500 L' } },
    products: [{ make: 'frozen', from: 'peach', form: 'slices', packSize: '500 g', worth: 1 }],
    oneMore: true,
    ...more,
  });
  if (!plan.feasible) throw new Error(plan.reason.text);
  const { yields = [] } = plan;
  return { ...plan, yields };
};

describe('what it would add to know a yield', () => {
  test('the worth of the plan with that yield given, less the worth of this one', () => {
    // slices of 20 kg of peaches in packs of 500 g: so many as each end of the published range gives
    const plan = day();
    const ends = { low: 0.76, high: 0.88 };
    const packs = (share: number) => Math.floor((20 * share) / 0.5 + 1e-9);
    expect(plan.products[0]?.units.promised).toBe(packs(ends.low));
    const [peach] = plan.yields;
    expect(peach?.food).toBe('peach');
    expect(peach?.poor).toBe(0);
    expect(peach?.rich).toBe(packs(ends.high) - packs(ends.low));
  });
  test('a yield that was weighed leaves little to know', () => {
    const [weighed] = day({ ready: '16.4 kg' }).yields;
    const [book] = day().yields;
    expect((weighed?.rich ?? 9) - (weighed?.poor ?? 0)).toBeLessThan((book?.rich ?? 0) - (book?.poor ?? 0));
  });
  test('the poor end known frees jars that were readied for the rich one', () => {
    const jars: Partial<PlanDayInput> = {
      kitchen: {
        elevation: '100 m',
        hours: '12 h',
        hands: 3,
        pots: [{ volume: '20 L' }],
        canners: [{ method: 'boiling-water', holds: { quart: 7 } }],
        jars: [{ jar: 'quart', count: 7 }],
      },
      products: [{ make: 'jars', from: 'peach', form: 'halves', pack: 'hot', jar: 'quart', worth: 1 }],
    };
    const plan = day({}, jars);
    const promised = plan.products[0]?.units.promised ?? 0;
    expect(promised).toBeLessThan(7);
    expect(plan.yields[0]?.poor).toBe(7 - promised);
  });
  test('only fruit that is used is listed', () => {
    const plan = day(
      {},
      {
        lots: [
          { food: 'peach', raw: '20 kg' },
          { food: 'apple', raw: '20 kg' },
        ],
      },
    );
    expect(plan.yields.map(({ food }) => food)).toEqual(['peach']);
  });
});

test('limits and yields are worked out only where they are asked for', () => {
  const more = ['limits', 'limitsNotComputed', 'yields'];
  expect(Object.keys(day())).toEqual(expect.arrayContaining(more));
  const { yields, ...plain } = day({}, { oneMore: false });
  expect(yields).toEqual([]);
  for (const field of more) expect(plain).not.toHaveProperty(field);
});

describe('on 24 random days', () => {
  let highs: Awaited<ReturnType<typeof highsLoader>>;
  beforeAll(async () => {
    highs = await highsLoader();
  });
  const byHighs = (program: Program): number =>
    highs.solve(toLp(program), { mip_rel_gap: 0, mip_abs_gap: 1e-9 }).ObjectiveValue;
  const ENDS = { poor: 'low', likely: 'likely', rich: 'high' } as const;
  type End = keyof typeof ENDS;
  const know = (activity: Activity, end: 'low' | 'likely' | 'high'): Activity => ({
    ...activity,
    supplies: activity.supplies.map((supply) => {
      const [units, trimmings] = [supply.unitsPerKg[end], supply.trimmingsPerKg];
      const dropped = end === 'low' ? trimmings.high : end === 'high' ? trimmings.low : trimmings.likely;
      return {
        ...supply,
        unitsPerKg: { low: units, likely: units, high: units },
        trimmingsPerKg: { low: dropped, likely: dropped, high: dropped },
      };
    }),
  });
  /** The products of a random kitchen as if they were of three kinds of fruit, without a schedule. */
  function dayOf(seed: number) {
    const { activities, capacity } = randomKitchen(seed, { lots: 3, products: 6 });
    const program = toProgram(activities, capacity, 'most worth');
    const makings = activities.map((activity) => ({ activity, food: `fruit ${activity.product % 3}` }));
    const answer = (nodes?: number, effort = effortFor(program)) => {
      const found = solve(program, nodes === undefined ? {} : { nodes });
      const fitted = { found, solved: found, program, share: 1, kept: makings.map((making) => ({ making })) };
      return yieldsKnown(
        { makings, capacity, request: { aim: 'most worth' } } as never,
        fitted as never,
        (of, options) => solve(of, options),
        effort,
      );
    };
    const exact = (food: string, end: End): number => {
      const known = makings.map((making) =>
        making.food === food ? know(making.activity, ENDS[end]) : making.activity,
      );
      return Math.max(0, byHighs(toProgram(known, capacity, 'most worth')) - byHighs(program));
    };
    return { answer, exact, worth: byHighs(program) };
  }
  test.each(Array.from({ length: 24 }, (_, index) => index + 1))(
    'day %i: never below zero, and the exact figure or a range that holds it',
    (seed) => {
      const { answer, exact, worth } = dayOf(seed);
      const near = 2e-6 * Math.max(1, worth);
      for (const yields of [answer(), answer(30, { nodes: 300, looks: 0 })]) {
        expect(yields.length).toBe(3);
        for (const known of yields) {
          for (const end of Object.keys(ENDS) as End[]) {
            if (known.notComputed?.includes(end)) {
              expect(known[end]).toBeUndefined();
              continue;
            }
            const least = known[end] as number;
            const most = known.atMost?.[end] ?? least;
            expect(least).toBeGreaterThanOrEqual(0);
            const gain = exact(known.food, end);
            expect(least, `${known.food} ${end}`).toBeLessThanOrEqual(gain + near);
            expect(most, `${known.food} ${end}`).toBeGreaterThanOrEqual(gain - near);
          }
        }
      }
      // given its nodes, a day as small as this is settled
      expect(answer().flatMap(({ notComputed = [], atMost = {} }) => [...notComputed, ...Object.keys(atMost)])).toEqual(
        [],
      );
    },
  );
});
