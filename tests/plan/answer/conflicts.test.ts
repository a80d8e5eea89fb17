import { expect, test } from 'vitest';
import { impossible } from '../../../src/plan/answer/conflicts';
import type { PlanDayInput } from '../../../src/plan/index';
import { planDay } from '../../../src/plan/index';
import { prepare } from '../../../src/plan/program/prepare';

const day = (leasts: readonly number[], jars = 100): PlanDayInput => ({
  lots: [{ food: 'peach', raw: '30 lb' }],
  kitchen: {
    elevation: '100 m',
    hours: '20 h',
    hands: 4,
    pots: [{ volume: '20 quarts', count: 2 }],
    canners: [{ method: 'boiling-water', holds: { quart: 7 }, count: 3 }],
    jars: [{ jar: 'quart', count: jars }],
    freezer: { room: '200 L' },
    dryer: { trays: 20, trayArea: '200 in2' },
  },
  products: [
    { make: 'jars', from: 'peaches', form: 'halves', pack: 'hot', jar: 'quart', least: leasts[0] ?? 0 },
    { make: 'frozen', from: 'peaches', packSize: '1 lb', least: leasts[1] ?? 0 },
    { make: 'dried', from: 'peaches', packSize: '4 oz', least: leasts[2] ?? 0 },
    { make: 'jars', from: 'peaches', form: 'slices', pack: 'hot', jar: 'quart', least: leasts[3] ?? 0 },
  ],
});
const conflicts = (input: PlanDayInput) => {
  const plan = planDay(input);
  return plan.feasible ? 'feasible' : plan.conflicts.map((text) => text.replace(/^at least \d+ of peach /, ''));
};

test('musts that can be met are', () => expect(conflicts(day([2, 2, 1]))).toBe('feasible'));
test('one must too much alone is named alone', () => {
  expect(conflicts(day([2, 50, 1]))).toEqual(['slices, frozen']);
  expect(conflicts(day([8, 0, 1], 5))).toEqual(['halves in quarts']);
});
test('two that cannot be met together are named, the third is not', () => {
  // 30 lb gives at the poor end 10 quarts (3 lb each) or some 22 lb frozen
  expect(conflicts(day([6, 18, 1]))).toEqual(['halves in quarts', 'slices, frozen']);
});
test('three that are too much only together are all named', () => {
  // 4 and 4 quarts take 24 lb, 8 packs of 1 lb some 11 lb: each pair fits 30 lb, all three do not
  const three = day([4, 8, 0, 4]);
  expect(conflicts(three)).toEqual(['halves in quarts', 'slices, frozen', 'slices in quarts']);
});
test('a must on what is not tested cannot be met', () => {
  const plan = planDay({
    ...day([1]),
    products: [{ make: 'jars', from: 'peaches', form: 'sauce', jar: 'quart', least: 2 }],
  });
  expect(plan).toMatchObject({
    feasible: false,
    reason: { code: 'cannot-be-made', text: 'this kitchen cannot make what you require' },
    most: [{ name: 'peach sauce in quarts', least: 2, count: 0, proven: true }],
  });
  expect(!plan.feasible && plan.conflicts[0]).toMatch(
    /^at least 2 of peach sauce in quarts: no tested process for peach as sauce/,
  );
});
test('a search that ended early says that it does not know', () => {
  const unsure = { feasible: false, optimal: false, gap: 0, worth: 0, values: new Map() };
  expect(impossible(prepare(day([1, 1])), unsure)).toMatchObject({
    reason: { code: 'not-found', text: 'the search found no way to make everything you require' },
    conflicts: { length: 2 },
  });
});
test('many musts: a set from which none can be left out', () => {
  const input = day([]);
  const products = Array.from({ length: 13 }, (_, index) => ({
    make: 'frozen' as const,
    from: 'peach',
    name: `pack ${index}`,
    packSize: '1 lb' as const,
    least: 2,
  }));
  const plan = planDay({ ...input, products });
  expect(plan.feasible).toBe(false);
  if (plan.feasible) return;
  expect(plan.conflicts.length).toBeGreaterThan(8);
  const kept = products.filter(({ name }) => plan.conflicts.some((text) => text.endsWith(name)));
  expect(planDay({ ...input, products: kept }).feasible).toBe(false);
  expect(planDay({ ...input, products: kept.slice(1) }).feasible).toBe(true);
});
