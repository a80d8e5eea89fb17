import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Activity, Capacity } from '../../src/plan/activity';
import { groupsOf, leastFruit, promised, raw, readied, stepLines, toProgram } from '../../src/plan/program';
import { solve } from '../../src/plan/solve';
import { randomKitchen } from './randomKitchen';

const same = (value: number) => ({ low: value, likely: value, high: value });
const jarred: Activity = {
  product: 0,
  madeOf: 'fruit',
  worth: 2,
  least: 0,
  most: 50,
  stockPerUnit: { 'jar quart': 1 },
  handsPerKg: 1,
  handsPerUnit: 1,
  supplies: [
    { lot: 0, unitsPerKg: { low: 0.8, likely: 1, high: 1.2 }, trimmingsPerKg: same(0.1), readyPerKg: same(0.9) },
  ],
  cook: { litresPerKg: 1, minutes: 30, stirred: false },
  canning: { key: 'k', jar: 'quart', canners: [{ canner: 0, jars: 7, minutes: 60 }] },
};
const capacity: Capacity = {
  lots: [20],
  minutes: 600,
  hands: 2,
  burners: 4,
  pots: [5],
  canners: 1,
  lead: 0,
  stock: { 'jar quart': 14 },
  trays: 0,
};

describe('by hand', () => {
  test('14 jars at the rich end are 11.67 kg, of which 9 jars are promised', () => {
    const found = solve(toProgram([jarred], capacity, 'most worth'));
    expect(found).toMatchObject({ feasible: true, optimal: true, worth: 18 });
    expect(found.values.get(promised(0))).toBe(9);
    expect(found.values.get(raw(0, 0))).toBeCloseTo(11.25, 6);
    expect(found.values.get(readied(0))).toBe(14);
  });
  test('two loads of an hour do not fit 100 minutes after the lead', () => {
    const found = solve(toProgram([jarred], { ...capacity, minutes: 130, lead: 30 }, 'most worth'));
    // one load: 7 jars at the rich end, 4 promised
    expect(found.values.get(promised(0))).toBe(4);
  });
  test('least and most the same: as many are readied as that takes', () => {
    const found = solve(toProgram([{ ...jarred, least: 5, most: 5 }], capacity, 'most worth'));
    expect(found.values.get(promised(0))).toBe(5);
    expect(found.values.get(readied(0))).toBe(8); // 5 x 1.2 / 0.8 = 7.5
  });
  test('trimmings are counted at the poor end of what falls', () => {
    const powder: Activity = {
      ...jarred,
      product: 1,
      madeOf: 'trimmings',
      worth: 1,
      stockPerUnit: {},
      supplies: [{ lot: 0, unitsPerKg: same(4), trimmingsPerKg: same(0), readyPerKg: same(1) }],
    };
    const { cook: _, canning: __, ...plain } = powder;
    const found = solve(toProgram([jarred, plain], capacity, 'most worth'));
    expect(found.values.get(promised(1))).toBe(4); // 11.25 kg x 0.1 x 4 = 4.5
  });
  test('least waste uses the fruit up, but starts no product it cannot fill one unit of', () => {
    const found = solve(toProgram([jarred], { ...capacity, stock: {}, pots: [20] }, 'least waste'));
    expect(found.worth).toBeCloseTo(20, 6);
    const little = solve(toProgram([jarred], { ...capacity, lots: [1] }, 'least waste'));
    expect(little.worth).toBeCloseTo(0, 6); // 1 kg promises 0.8 of a jar
  });
  test('fewest hours: what the must takes and no more', () => {
    const found = solve(toProgram([{ ...jarred, least: 4 }], capacity, 'fewest hours'));
    expect(found.values.get(promised(0))).toBe(4);
    expect(found.worth).toBeCloseTo(-(5 + 6), 6); // 5 kg and 6 jars, a minute each
  });
  test('freeze-dryer: trays and ice', () => {
    const { cook: _, canning: __, ...plain } = jarred;
    const dried: Activity = { ...plain, stockPerUnit: {}, freezeDry: { waterPerKg: 0.8, traysPerKg: 0.5 } };
    const machine = { trays: 4, iceKg: 4, loads: 1 };
    const byIce = solve(toProgram([dried], { ...capacity, freezeDryer: machine }, 'most worth'));
    expect(byIce.values.get(promised(0))).toBe(4); // 5 kg of fruit
    const byTrays = solve(toProgram([dried], { ...capacity, freezeDryer: { ...machine, trays: 2 } }, 'most worth'));
    expect(byTrays.values.get(promised(0))).toBe(3); // 4 kg of fruit
  });
});

test('products of one process share their loads', () => {
  const groups = groupsOf([
    jarred,
    { ...jarred, product: 1 },
    { ...jarred, product: 2, canning: { key: 'other', jar: 'pint', canners: [] } },
  ]);
  expect([...groups].map(([key, group]) => [key, group.length])).toEqual([
    ['k', 2],
    ['other', 1],
  ]);
});
test('the second objective is less fruit', () => {
  expect([...leastFruit(toProgram([jarred], capacity, 'most worth'))]).toEqual([[raw(0, 0), -1]]);
});
test('the lines under the steps never pass a step, and touch the first and the last', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 4, noNaN: true }), fc.integer({ min: 1, max: 60 }), (perUnit, most) => {
      const step = (n: number) => Math.ceil(perUnit * n - 1e-6);
      const lines = stepLines(step, most);
      const under = (n: number) => Math.max(...lines.map(([slope, offset]) => slope * n + offset));
      for (let n = 0; n <= most; n++) expect(under(n)).toBeLessThanOrEqual(step(n) + 1e-9);
      expect(under(0)).toBeCloseTo(0, 9);
      expect(under(most)).toBeCloseTo(step(most), 9);
    }),
  );
});
test('more units than the cuts look at: none are added', () => {
  const huge = toProgram([{ ...jarred, most: 5000 }], { ...capacity, lots: [9000], stock: {} }, 'most worth');
  expect(huge.bounds.some(({ name }) => name.startsWith('rounded'))).toBe(false);
  expect(
    toProgram(randomKitchen(1).activities, randomKitchen(1).capacity, 'most worth').bounds.some(({ name }) =>
      name.startsWith('rounded'),
    ),
  ).toBe(true);
  const none = { ...jarred, supplies: jarred.supplies.map((supply) => ({ ...supply, unitsPerKg: same(0) })) };
  expect(toProgram([none], capacity, 'most worth').bounds.some(({ name }) => name.startsWith('rounded'))).toBe(false);
});
