import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sharedOut } from '../../../src/plan/fit/cannedJobs';
import { evenly, sharedBy } from '../../../src/plan/fit/portion';
import { valueIn } from '../../../src/quantity/scale';
import { runSheet } from '../../../src/sheet/index';
import { planOf } from '../fullKitchen';

const product = (ready: number) => ({ decided: { ready } }) as never;
/** The jars of each load, product by product. */
const jars = (counts: readonly number[], places: readonly number[]) =>
  sharedOut(counts.map(product), places).map((load) => load.map((part) => part.jars));

test('a whole number in even parts', () => {
  expect(evenly(7, 3)).toEqual([3, 2, 2]);
  expect(evenly(2, 3)).toEqual([1, 1, 0]);
});

test('a whole number in the parts of another (property)', () => {
  expect(sharedBy(18, [2, 1])).toEqual([12, 6]);
  expect(sharedBy(7, [1, 1, 1])).toEqual([2, 3, 2]);
  const parts = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 99 }), parts, (whole, each) => {
      expect(sharedBy(whole, each).reduce((sum, some) => sum + some, 0)).toBe(whole);
    }),
  );
});

describe('what is made one batch at a time', () => {
  const counts = (plan: ReturnType<typeof planOf>, kind: string) =>
    plan.schedule.tasks.flatMap((task) => (task.kind === kind ? [task.units?.count] : []));
  test('refrigerator jam: each pot is one printed batch of 6 half-pints', () => {
    const plan = planOf('strawberry', { recipe: 'mixed-berry-jam', most: 24 });
    expect(plan.schedule.tasks.filter(({ kind }) => kind === 'cook')).toHaveLength(4);
    expect(counts(plan, 'fill')).toEqual([6, 6, 6, 6]);
    const cooking = plan.products[0]?.cooking;
    expect(cooking?.batches.reduce((sum, { count }) => sum + count, 0)).toBe(4);
  });
  test.each(['berry-jam-no-added-pectin', 'mixed-berry-jam'])(
    '%s of quarts nobody weighed: no batch is in part',
    (recipe) => {
      const plan = planOf('raspberry', { recipe, jar: 'half-pint' }, {}, '16 quarts');
      const prepared = plan.schedule.tasks.flatMap(({ kind, raw }) =>
        kind === 'prepare' && raw !== undefined ? [valueIn(raw, 'lb')] : [],
      );
      expect(prepared.length).toBeGreaterThan(1);
      for (const each of prepared) expect(each).toBeCloseTo(prepared[0] as number, 6);
      expect(new Set(counts(plan, 'fill')).size).toBe(1);
      expect(plan.schedule.tasks.filter(({ kind }) => kind === 'cook')).toHaveLength(prepared.length);
      const [jam] = plan.products;
      const least = recipe === 'mixed-berry-jam' ? 6 : 3;
      expect(jam?.units.promised).toBe(least * prepared.length);
    },
  );
  test('jam that sets in its jar for a day is filled on the day it is made', () => {
    const plan = planOf('strawberry', { recipe: 'freezer-berry-jam-powdered-pectin', most: 12 }, { hours: ['6 h'] });
    expect(counts(plan, 'fill')).toEqual([6, 6]);
  });
});

describe('work between the pot and the packs', () => {
  test('kernels are cut off after the ears are blanched, in minutes of hands', () => {
    const plan = planOf('sweet corn', { recipe: 'frozen-corn-kernels' }, { hands: 1 });
    const of = (kind: string) => plan.schedule.tasks.filter((task) => task.kind === kind);
    const minutes = (kind: string) => of(kind).reduce((sum, task) => sum + task.endMinute - task.startMinute, 0);
    const packs = plan.products[0]?.units.ready ?? 0;
    // a pack takes 1 to 2.5 min, and the ears of a pack longer than that to cut
    expect(minutes('fill')).toBeGreaterThan(4 * packs);
    const carrots = planOf('carrot', { recipe: 'frozen-carrot-slices' }, { hands: 1 });
    const filled = carrots.schedule.tasks.filter(({ kind }) => kind === 'fill');
    const each = filled.reduce((sum, task) => sum + task.endMinute - task.startMinute, 0);
    expect(each).toBeLessThan(4 * (carrots.products[0]?.units.ready ?? 0));
    expect(runSheet(plan)).toMatch(/Cut off the kernels · Pack up to \d+ packs/);
  });
  test('before they go on trays too', () => {
    const plan = planOf('sweet corn', { recipe: 'dried-corn-kernels' });
    const order = plan.schedule.tasks.map(({ kind }) => kind);
    expect(order.indexOf('fill')).toBeGreaterThan(order.indexOf('blanch'));
    expect(order.indexOf('dry')).toBeGreaterThan(order.indexOf('fill'));
    expect(runSheet(plan)).toContain('Cut off the kernels, then into the dryer');
  });
});

describe('jars over canner loads', () => {
  test('one product: evenly, in no more loads than it takes', () => {
    expect(jars([21], [9, 9, 9])).toEqual([[7], [7], [7]]);
    expect(jars([9], [9, 9])).toEqual([[9]]);
    expect(jars([16], [9, 9])).toEqual([[8], [8]]);
  });
  test('two products of one process: whole loads of each, what is left over together', () => {
    expect(jars([12, 5], [9, 9])).toEqual([[9], [5, 3]]);
    expect(jars([9, 9], [9, 9])).toEqual([[9], [9]]);
  });
  test('left-overs that do not fit so are shared out one after the other', () => {
    // 5, 5 and 5 jars in two loads of 8: 8 and 7, one product split
    expect(jars([5, 5, 5], [8, 8])).toEqual([
      [5, 3],
      [2, 5],
    ]);
  });
  test('canners of two sizes: the large one is filled', () => {
    expect(jars([10], [4, 9])).toEqual([[4], [6]]);
    expect(jars([13], [4, 9])).toEqual([[4], [9]]);
  });
  test('every jar has its place and no load is too full (property)', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 4 }), (counts) => {
        const all = counts.reduce((sum, each) => sum + each, 0);
        const places = new Array<number>(Math.ceil(all / 9)).fill(9);
        const loads = jars(counts, places);
        expect(loads.flat().reduce((sum, each) => sum + each, 0)).toBe(all);
        for (const load of loads) expect(load.reduce((sum, each) => sum + each, 0)).toBeLessThanOrEqual(9);
      }),
    );
  });
});
