import { describe, expect, test } from 'vitest';
import { checkSchedule, type FeasibleDay, type PlanDayInput, planDay } from '../../../src/plan/index';
import { workedBy } from '../../../src/plan/schedule/hours';
import type { Quantity } from '../../../src/quantity/index';
import { valueIn } from '../../../src/quantity/scale';
import { randomDay } from '../randomDay';
import { clashes } from '../schedule/randomJobs';

/** The hours of a plan over two days: five eighths on the first. */
function overTwoDays(request: PlanDayInput): PlanDayInput {
  const hours = valueIn(request.kitchen.hours as Quantity<'time'>, 'h');
  const day = (share: number) => ({ value: hours * share, unit: 'h' }) as const;
  return { ...request, kitchen: { ...request.kitchen, hours: [day(5 / 8), day(3 / 8)] } };
}

/** What each resource of a random day's kitchen can do at once. */
function capacityOf({ kitchen }: PlanDayInput): Map<string, number> {
  return new Map<string, number>([
    ['hands', (kitchen.hands as number | undefined) ?? 1],
    ['burners', kitchen.burners ?? 4],
    ['dryer trays', kitchen.dryer?.trays ?? 0],
    ['freeze-dryer', 1],
    ['freezer', Number.POSITIVE_INFINITY],
    ['12 quart pot', 1],
    ['6 L pot 1', 1],
    ['6 L pot 2', 1],
    ['boiling-water canner', 1],
    ['weighted-gauge canner', 1],
  ]);
}

/** What must hold of a plan's order of work, by the answer alone. */
function broken(input: PlanDayInput, plan: FeasibleDay): string[] {
  const { products, schedule } = plan;
  const { tasks, windows, makespan } = schedule;
  const wrong = [
    ...clashes(tasks, capacityOf(input), windows),
    ...checkSchedule(plan).broken.map(({ rule, text }) => `${rule}: ${text}`),
  ];
  const must = (holds: boolean, what: string) => {
    if (!holds) wrong.push(what);
  };
  const last = windows[windows.length - 1] as (typeof windows)[number];
  must(makespan <= last.endMinute, `late: ${makespan}`);
  for (const { kind, startMinute: start, endMinute: end, unattended } of tasks) {
    if (!unattended)
      must(
        windows.some(({ startMinute: from, endMinute: to }) => from <= start && end <= to),
        `${kind} outside the hours`,
      );
  }
  for (const product of products) {
    const { name, units, canning: jars, cooking: pots, drying: trays, raw, handsMinutes } = product;
    const own = (kind: string) => tasks.filter((task) => task.kind === kind && task.forProducts.includes(name));
    const cut = own('prepare').reduce((sum, task) => sum + valueIn(task.raw as Quantity<'mass'>, 'kg'), 0);
    must(Math.abs(cut - valueIn(raw, 'kg')) < 1e-6 || handsMinutes.prepare === 0, `${name}: prepared ${cut} kg`);
    if (jars !== undefined) {
      const filled = own('fill').reduce((sum, { units: each }) => sum + (each?.count ?? 0), 0);
      must(filled === units.ready, `${name}: ${filled} filled of ${units.ready}`);
      for (const can of own('can')) {
        must(can.endMinute - can.startMinute >= jars.minutes, `${name}: a load shorter than its process`);
        const holds = input.kitchen.canners?.find((each) =>
          can.uses.some(({ resource }) => resource.startsWith(each.method)),
        );
        must((can.units?.count ?? 99) <= (holds?.holds[jars.jar] ?? 0), `${name}: ${can.units?.count} jars in a load`);
      }
      const loads = jars.loads.reduce((sum, { count }) => sum + count, 0);
      must(loads === own('can').length, `${name}: loads`);
    }
    if (pots !== undefined) {
      const batches = pots.batches.reduce((sum, { count }) => sum + count, 0);
      must(batches === own('cook').length, `${name}: batches`);
      must(
        // a full pot takes longer to heat up than a small one
        own('cook').every(({ startMinute: start, endMinute: end }) => end - start >= pots.leastEach - 1e-6),
        `${name}: cooked short`,
      );
    }
    if (trays !== undefined) {
      const loaded = own(trays.where === 'dryer' ? 'dry' : 'freeze-dry');
      const count = loaded.reduce((sum, { units: each }) => sum + (each?.count ?? 0), 0);
      must(trays.where === 'freeze-dryer' ? count >= trays.trays : count === trays.trays, `${name}: ${count} trays`);
      const longest = Math.ceil(valueIn(trays.hours?.high as Quantity<'time'>, 'min'));
      must(
        loaded.every(({ startMinute: start, endMinute: end }) => end - start >= longest),
        `${name}: dried short`,
      );
    }
    if (product.packs !== undefined) must(own('freeze').length > 0, `${name}: not frozen`);
    if (product.trimmings === undefined) {
      const first = Math.min(...own('prepare').map(({ startMinute: start }) => start));
      const before = tasks.some(
        ({ kind, endMinute: end, what }) => kind === 'prepare' && end <= first && !what.startsWith('trim'),
      );
      must(before, `${name}: made before anything fell off`);
    }
  }
  return wrong;
}

describe('on seeded random days, on one day and on two', () => {
  const gaps: number[] = [];
  const smaller: number[] = [];
  test.each(Array.from({ length: 50 }, (_, index) => index + 1))(
    'day %i',
    (seed) => {
      for (const input of [randomDay(seed), overTwoDays(randomDay(seed))]) {
        const plan = planDay(input);
        if (!plan.feasible) {
          expect((input.products ?? []).some(({ least = 0 }) => least > 0)).toBe(true);
          continue;
        }
        expect(broken(input, plan)).toEqual([]);
        const { gap, makespan, lowerBound, windows } = plan.schedule;
        expect(lowerBound).toBeLessThanOrEqual(makespan);
        if (lowerBound > 0) {
          gaps.push(gap);
          expect(gap).toBeCloseTo(workedBy(makespan, windows) / workedBy(lowerBound, windows) - 1, 9);
        }
        if (!plan.provenBest) smaller.push(seed);
        expect(plan.gap).toBeGreaterThanOrEqual(0);
        expect(plan.provenBest).toBe(plan.gap === 0 && plan.products.length > 0);
      }
    },
    30_000,
  );
  test('orders near their bound, and few plans that had to be smaller than the sums allow', () => {
    const sorted = gaps.toSorted((one, other) => one - other);
    expect(sorted.length).toBeGreaterThan(60);
    // half of them end near the bound: it knows neither what a second day's dryer has left over nor a pot's heating up
    expect(sorted[sorted.length >> 1]).toBeLessThan(0.05);
    // that no jar waits over 20 minutes, and that a pot heats up by its weight, takes time which the sums do not know
    expect(smaller.length).toBeLessThan(gaps.length / 3);
  });
});

test('trimmings fall off also where preparing takes no time of its own', () => {
  const plan = planDay({
    lots: [{ food: 'apple', raw: '20 lb' }],
    kitchen: {
      elevation: '100 m',
      hours: '6 h',
      dryer: { trays: 12, trayArea: '200 in2' },
      freezer: { room: '60 L' },
    },
    products: [
      { make: 'frozen', from: 'apple', form: 'slices', minutesPerPound: 0, worth: 2 },
      { make: 'powder', from: 'apple', packSize: '1 oz', worth: 1, least: 1 },
    ],
  });
  expect(plan.feasible && plan.products.map(({ makes }) => makes)).toEqual(['frozen', 'powder']);
});

test('what fits in no order is not made, where nothing must be', () => {
  // 1 ft3 of freezer freezes 2 lb a day: a pack of 3 lb is within the sum of two days, but not within one
  const day = (least: number): PlanDayInput => ({
    lots: [{ food: 'peach', raw: '20 lb' }],
    kitchen: { elevation: '100 m', hours: ['4 h', '4 h'], freezer: { room: '60 L', volume: '1 ft3' } },
    products: [{ make: 'frozen', from: 'peach', form: 'slices', packSize: '3 lb', least }],
    learned: [{ food: 'peach', form: 'slices', yield: { low: 0.8, likely: 0.8, high: 0.8 } }],
  });
  expect(planDay(day(0))).toMatchObject({ feasible: true, products: [], schedule: { tasks: [] } });
  expect(planDay(day(1))).toMatchObject({
    feasible: false,
    reason: { code: 'no-order-of-work', text: 'no order of work was found for what you require' },
    conflicts: ['at least 1 of peach slices, frozen'],
  });
});

describe('musts that fit the hours as sums only', () => {
  // two loads of 7 quarts: the canner's minutes are enough, but not the wait for its water and for the first load
  const day = (hours: number): PlanDayInput => ({
    lots: [{ food: 'peach', raw: '60 lb' }],
    kitchen: {
      elevation: '100 m',
      hours: { value: hours, unit: 'h' },
      pots: [{ volume: '14 quarts' }],
      burners: 2,
      canners: [{ method: 'boiling-water', holds: { quart: 7 } }],
    },
    products: [{ make: 'jars', from: 'peach', form: 'halves', pack: 'hot', jar: 'quart', least: 7 }],
  });
  const enough = [4, 5, 6, 7, 8, 9].find((hours) => planDay(day(hours)).feasible) as number;
  const late = Array.from({ length: 30 }, (_, index) => enough - (4 * index) / 60).flatMap((hours) => {
    const plan = planDay(day(hours));
    return !plan.feasible && plan.reason.text.includes('no order of work was found') ? [{ hours, plan }] : [];
  });
  test('are no plan, and the answer says by how much they run late', () => {
    expect(late.length).toBeGreaterThan(0);
    for (const { plan } of late) {
      expect(plan.reason.text).toMatch(/ends \d+ min late$/);
      expect(plan.conflicts).toEqual(['at least 7 of peach halves in quarts']);
    }
  });
  test('so many minutes more are enough', () => {
    const [{ hours, plan }] = late as [(typeof late)[number]];
    const over = Number(/ends (\d+) min/.exec(plan.reason.text)?.[1]);
    expect(planDay(day(hours + over / 60 + 1e-6)).feasible).toBe(true);
  });
});

describe('hours of several days', () => {
  const request = randomDay(7);
  const answer = (hours: unknown) => {
    try {
      planDay({ ...request, kitchen: { ...request.kitchen, hours: hours as '6 h' } });
      return 'ok';
    } catch (error) {
      return `${(error as { code: string }).code} at ${(error as { path: string }).path}`;
    }
  };
  test.each([
    ['OUT_OF_RANGE at kitchen.hours', []],
    ['TOO_MUCH at kitchen.hours', Array(8).fill('3 h')],
    ['OUT_OF_RANGE at kitchen.hours[1]', ['5 h', '0 h']],
    ['OUT_OF_RANGE at kitchen.hours[0]', ['21 h', '3 h']],
    ['WRONG_DIMENSION at kitchen.hours[1]', ['5 h', '5 lb']],
    ['OUT_OF_RANGE at kitchen.hours', '49 h'],
    ['ok', ['5 h', '3 h']],
  ])('%s', (expected, hours) => expect(answer(hours)).toBe(expected));
  test('the dryer can be loaded on each of them', () => {
    const trays = (hours: unknown, food = 'apple') => {
      const plan = planDay({
        lots: [{ food, raw: '60 lb' }],
        kitchen: { elevation: '100 m', hours: hours as '8 h', hands: 4, dryer: { trays: 4, trayArea: '200 in2' } },
        products: [{ make: 'dried', from: food, form: 'slices', packSize: '1 oz' }],
      });
      return plan.feasible && plan.provenBest ? plan.products[0]?.drying?.trays : undefined;
    };
    expect(trays('8 h')).toBe(4);
    expect(trays(['4 h', '4 h'])).toBe(8);
    // pears dry for 24 to 36 h: what is loaded on the first day is not done on the second
    expect(trays('8 h', 'pear')).toBe(4);
    expect(trays(['4 h', '4 h'], 'pear')).toBe(4);
  });
});
