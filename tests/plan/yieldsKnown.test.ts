import { describe, expect, test } from 'vitest';
import { type FeasibleDay, type PlanDayInput, planDay } from '../../src/plan/index';

const day = (lot: object = {}, more: Partial<PlanDayInput> = {}): FeasibleDay => {
  const plan = planDay({
    lots: [{ produce: 'peach', raw: '20 kg', ...lot } as PlanDayInput['lots'][number]],
    kitchen: { elevation: '100 m', hours: '10 h', freezer: { room: '500 L' } },
    products: [{ make: 'frozen', from: 'peach', form: 'slices', size: '500 g', worth: 1 }],
    ...more,
  });
  if (!plan.feasible) throw new Error(plan.reason);
  return plan;
};

describe('what it would add to know a yield', () => {
  test('the worth of the plan with that yield given, less the worth of this one', () => {
    // slices of 20 kg of peaches in packs of 500 g: so many as each end of the published range gives
    const plan = day();
    const ends = { low: 0.76, high: 0.88 };
    const packs = (share: number) => Math.floor((20 * share) / 0.5 + 1e-9);
    expect(plan.products[0]?.units.promised).toBe(packs(ends.low));
    const [peach] = plan.yields;
    expect(peach?.produce).toBe('peach');
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
  test('only fruit that is used is told of', () => {
    const plan = day(
      {},
      {
        lots: [
          { produce: 'peach', raw: '20 kg' },
          { produce: 'apple', raw: '20 kg' },
        ],
      },
    );
    expect(plan.yields.map(({ produce }) => produce)).toEqual(['peach']);
  });
});
