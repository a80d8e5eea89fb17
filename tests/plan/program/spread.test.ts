import { describe, expect, test } from 'vitest';
import { type FeasibleDay, type PlanDayInput, planDay } from '../../../src/plan/index';
import { withSpread } from '../../../src/plan/program/spread';
import type { Activity } from '../../../src/plan/request/activity';
import type { KnownLot } from '../../../src/plan/request/lots';

const lot = (low: number, high: number) => ({ spread: { low, high } }) as KnownLot;
const range = (likely: number) => ({ low: likely / 2, likely, high: 2 * likely });
const activity: Activity = {
  product: 0,
  madeOf: 'fruit',
  supplies: [0, 1].map((place) => ({
    lot: place,
    unitsPerKg: range(2),
    trimmingsPerKg: range(0.1),
    readyPerKg: range(0.8),
    energyPerKg: { stove: range(1) },
  })),
  worth: 1,
  least: 0,
  most: 9,
  stockPerUnit: [],
  pantry: { sugar: { perUnit: 1, perReadyKg: 2, perRawKg: 4 }, vinegar: { perUnit: 1, perReadyKg: 0 } },
  handsPerKg: 3,
  handsPerUnit: 2,
  cook: { litresPerKg: 1, minutes: 30, stirred: true, energyPerBatch: range(4) },
  traysPerKg: 5,
  freezeDry: { waterPerKg: 0.7, traysPerKg: 6 },
};

describe('by hand', () => {
  const wide = withSpread(activity, [lot(0.5, 1.5), lot(1, 1)]);
  test('what a kg gives is wider for the lot that nobody weighed, and the same for the other', () => {
    const [first, second] = wide.supplies;
    expect(first?.unitsPerKg).toEqual({ low: 0.5, likely: 2, high: 6 });
    expect(first?.readyPerKg).toEqual({ low: 0.4 * 0.5, likely: 0.8, high: 1.6 * 1.5 });
    expect(first?.trimmingsPerKg).toEqual({ low: 0.05 * 0.5, likely: 0.1, high: 0.2 * 1.5 });
    expect(first?.energyPerKg).toEqual({ stove: { low: 0.25, likely: 1, high: 3 } });
    expect(second).toEqual(activity.supplies[1]);
  });
  test('hands, pots and trays hold at the most any of its lots may weigh; a batch and a unit stay the same', () => {
    expect(wide).toMatchObject({
      handsPerKg: 4.5,
      handsPerUnit: 2,
      pantry: { sugar: { perUnit: 1, perReadyKg: 2, perRawKg: 6 }, vinegar: { perUnit: 1, perReadyKg: 0 } },
      cook: { litresPerKg: 1.5, minutes: 30, energyPerBatch: range(4) },
      traysPerKg: 7.5,
      freezeDry: { waterPerKg: 0.7 * 1.5, traysPerKg: 9 },
    });
  });
  test('lots that were weighed change nothing', () => {
    expect(withSpread(activity, [lot(1, 1), lot(1, 1)])).toBe(activity);
  });
});

describe('a day with lots as people buy them', () => {
  const day = (raw: string, more: object = {}): PlanDayInput => ({
    lots: [{ food: 'apple', raw: raw as '1 lb', ...more }],
    kitchen: { elevation: '900 ft', hours: '12 h', hands: 4, freezer: { room: '900 L' } },
    products: [{ make: 'frozen', from: 'apples', form: 'slices', packSize: '1 lb' }],
  });
  const units = (raw: string, more?: object) => {
    const plan = planDay(day(raw, more)) as FeasibleDay;
    return plan.products[0]?.units ?? { promised: 0, likely: 0, ready: 0 };
  };
  test('a bushel promises what 40 lb do, and readies for 50', () => {
    const { promised, likely, ready } = units('1 bushel');
    expect(promised).toBe(units('40 lb').promised);
    expect(likely).toBe(units('48 lb').likely);
    expect(ready).toBe(units('50 lb').ready);
    expect(promised).toBeLessThan(units('48 lb').promised);
  });
  test('what is kept and what is not sound go into nothing, and the plan says how much they are', () => {
    const plan = planDay(day('40 lb', { sound: 0.9, keepFresh: '6 lb' })) as FeasibleDay;
    expect(plan.keptFresh).toEqual([{ lot: 'apple', food: 'apple', raw: { value: expect.closeTo(6, 9), unit: 'lb' } }]);
    expect(plan.notSound).toEqual([{ lot: 'apple', food: 'apple', raw: { value: expect.closeTo(4, 9), unit: 'lb' } }]);
    expect(plan.products[0]?.units).toEqual(units('30 lb'));
    const used = plan.products[0]?.raw.value ?? 0;
    expect(used + (plan.leftFresh[0]?.raw.value ?? 0)).toBeCloseTo(30, 6);
  });
  test('where all is kept fresh nothing is made', () => {
    const plan = planDay(day('2 bushels', { keepFresh: '2 bushels' })) as FeasibleDay;
    expect(plan.feasible).toBe(true);
    expect(plan.products).toEqual([]);
    expect(plan.leftFresh).toEqual([]);
    expect(plan.keptFresh[0]?.raw.value).toBeCloseTo(96, 6);
  });
  test('the plan says where the weight comes from, and that it is no weighing', () => {
    const plan = planDay(day('1 bushel')) as FeasibleDay;
    expect(plan.basis.some(({ of, note }) => of === 'products[].raw' && note === 'net weight of a bushel')).toBe(true);
    expect(plan.cautions.map(({ id }) => id)).toContain('bought-by-measure');
    expect((planDay(day('48 lb')) as FeasibleDay).cautions.map(({ id }) => id)).not.toContain('bought-by-measure');
  });
});
