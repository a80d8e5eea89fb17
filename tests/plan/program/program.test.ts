import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batches, keyOf, promised, raw, readied } from '../../../src/plan/program/decisions';
import { leastFruit, toProgram } from '../../../src/plan/program/program';
import { groupsOf } from '../../../src/plan/program/resources/canners';
import { mustOf } from '../../../src/plan/program/resources/units';
import { stepLines } from '../../../src/plan/program/roundingCuts';
import type { Activity, Canning, Capacity } from '../../../src/plan/request/activity';
import { jarsOf } from '../../../src/plan/request/stock';
import { solve } from '../../../src/plan/solver/solve';
import { randomKitchen } from '../randomKitchen';

const same = (value: number) => ({ low: value, likely: value, high: value });
const canner = { canner: 0, jars: 7, minutes: 60, warmUp: 0 };
const jarred: Activity = {
  product: 0,
  madeOf: 'fruit',
  worth: 2,
  least: 0,
  most: 50,
  stockPerUnit: [{ stock: jarsOf('quart'), amount: 1 }],
  handsPerKg: 1,
  handsPerUnit: 1,
  supplies: [
    { lot: 0, unitsPerKg: { low: 0.8, likely: 1, high: 1.2 }, trimmingsPerKg: same(0.1), readyPerKg: same(0.9) },
  ],
  cook: { litresPerKg: 1, minutes: 30, stirred: false },
  canning: { key: 'k', jar: 'quart', canners: [canner] },
};
const { cook: _, canning: __, ...bare } = jarred;
const [supply] = jarred.supplies as [Activity['supplies'][number]];
const capacity: Capacity = {
  lots: [20],
  days: 1,
  minutes: 600,
  hands: 2,
  burners: 4,
  pots: [5],
  canners: 1,
  lead: 0,
  stock: [{ stock: jarsOf('quart'), amount: 14 }],
  trays: 0,
};

describe('by hand', () => {
  test('14 jars at the rich end are 11.67 kg, of which 9 jars are promised', () => {
    const found = solve(toProgram([jarred], capacity, 'most worth'));
    expect(found).toMatchObject({ feasible: true, optimal: true, worth: 18 });
    expect(found.values.get(keyOf(promised(0)))).toBe(9);
    expect(found.values.get(keyOf(raw(0, 0)))).toBeCloseTo(11.25, 6);
    expect(found.values.get(keyOf(readied(0)))).toBe(14);
  });
  test('two loads of an hour do not fit 100 minutes after the lead', () => {
    const found = solve(toProgram([jarred], { ...capacity, minutes: 130, lead: 30 }, 'most worth'));
    // one load: 7 jars at the rich end, 4 promised
    expect(found.values.get(keyOf(promised(0)))).toBe(4);
  });
  test('least and most the same: as many are readied as that takes', () => {
    const found = solve(toProgram([{ ...jarred, least: 5, most: 5 }], capacity, 'most worth'));
    expect(found.values.get(keyOf(promised(0)))).toBe(5);
    expect(found.values.get(keyOf(readied(0)))).toBe(8); // 5 x 1.2 / 0.8 = 7.5
  });
  test('trimmings are counted at the poor end of what falls', () => {
    const powder: Activity = {
      ...jarred,
      product: 1,
      madeOf: 'trimmings',
      worth: 1,
      stockPerUnit: [],
      supplies: [{ lot: 0, unitsPerKg: same(4), trimmingsPerKg: same(0), readyPerKg: same(1) }],
    };
    const { cook: _, canning: __, ...plain } = powder;
    const found = solve(toProgram([jarred, plain], capacity, 'most worth'));
    expect(found.values.get(keyOf(promised(1)))).toBe(4); // 11.25 kg x 0.1 x 4 = 4.5
  });
  test('least waste uses the fruit up, but starts no product it cannot fill one unit of', () => {
    const found = solve(toProgram([jarred], { ...capacity, stock: [], pots: [20] }, 'least waste'));
    expect(found.worth).toBeCloseTo(20, 6);
    const little = solve(toProgram([jarred], { ...capacity, lots: [1] }, 'least waste'));
    expect(little.worth).toBeCloseTo(0, 6); // 1 kg promises 0.8 of a jar
  });
  test('fewest hours: what the must takes and no more', () => {
    const found = solve(toProgram([{ ...jarred, least: 4 }], capacity, 'fewest hours'));
    expect(found.values.get(keyOf(promised(0)))).toBe(4);
    expect(found.worth).toBeCloseTo(-(5 + 6), 6); // 5 kg and 6 jars, a minute each
  });
  test('freeze-dryer: trays and ice', () => {
    const { cook: _, canning: __, ...plain } = jarred;
    const dried: Activity = { ...plain, stockPerUnit: [], freezeDry: { waterPerKg: 0.8, traysPerKg: 0.5 } };
    const machine = { trays: 4, iceKg: 4, loads: 1 };
    const byIce = solve(toProgram([dried], { ...capacity, freezeDryer: machine }, 'most worth'));
    expect(byIce.values.get(keyOf(promised(0)))).toBe(4); // 5 kg of fruit
    const byTrays = solve(toProgram([dried], { ...capacity, freezeDryer: { ...machine, trays: 2 } }, 'most worth'));
    expect(byTrays.values.get(keyOf(promised(0)))).toBe(3); // 4 kg of fruit
  });
  test('what a unit takes of another lot is that lot’s too', () => {
    const salsa: Activity = { ...jarred, also: [{ lot: 1, kgPerUnit: 0.5 }] };
    const with3kg = solve(toProgram([salsa], { ...capacity, lots: [20, 3] }, 'most worth'));
    // 3 kg of the other lot for 6 jars readied: 4 promised
    expect(with3kg.values.get(keyOf(promised(0)))).toBe(4);
    expect(with3kg.values.get(keyOf(readied(0)))).toBe(6);
    const whole: Activity = { ...bare, product: 1, stockPerUnit: [], supplies: [{ ...supply, lot: 1 }], least: 2 };
    // two units of 0.8 a kg take 2.5 of the 3 kg
    const both = solve(toProgram([salsa, whole], { ...capacity, lots: [20, 3] }, 'most worth'));
    expect(both.values.get(keyOf(readied(0)))).toBeLessThanOrEqual(1);
    const ample = solve(toProgram([salsa], { ...capacity, lots: [20, 300] }, 'most worth'));
    expect(ample.worth).toBe(solve(toProgram([jarred], capacity, 'most worth')).worth);
  });
  test('a load of trays that takes a third of the days leaves the rest to others', () => {
    const dried: Activity = { ...bare, stockPerUnit: [], traysPerKg: 1, most: 99 };
    const promisedOf = (trayShare: number) =>
      solve(toProgram([{ ...dried, trayShare }], { ...capacity, trays: 4 }, 'most worth')).values.get(
        keyOf(promised(0)),
      );
    expect(promisedOf(1)).toBe(3); // 4 kg
    expect(promisedOf(1 / 3)).toBe(9); // 12 kg
  });
});

describe('aims by weights', () => {
  const kitchens = [1, 2, 3].map((seed) => randomKitchen(seed));
  test.each([
    ['most worth', { worth: 1 }],
    ['least waste', { waste: 1, money: 0 }],
    ['fewest hours', { handsHours: 60 }],
  ] as const)('%s is one weight', (word, weights) => {
    for (const { activities, capacity } of kitchens)
      expect(toProgram(activities, capacity, weights)).toEqual(toProgram(activities, capacity, word));
  });
  test('a mix by hand: worth, fruit, money and hours of one day', () => {
    const priced: Activity = {
      ...jarred,
      supplies: jarred.supplies.map((supply) => ({ ...supply, costPerKg: 0.5 })),
      costPerUnit: 0.2,
      cook: { litresPerKg: 1, minutes: 30, stirred: true, costPerBatch: 0.1 },
      canning: { ...(jarred.canning as Canning), canners: [{ ...canner, costPerLoad: 0.4 }] },
    };
    const found = solve(
      toProgram([{ ...priced, least: 4, most: 4 }], capacity, { worth: 10, money: 3, handsHours: 2 }),
    );
    // 5 kg, 6 jars, one load, one batch of 5 L that is stirred for 30 min; a minute for each kg and jar
    const money = 5 * 0.5 + 6 * 0.2 + 0.4 + 0.1;
    expect(found.worth).toBeCloseTo(10 * 4 * 2 - 3 * money - (2 * (5 + 6 + 30)) / 60, 6);
    const byTrays: Activity = { ...bare, stockPerUnit: [], least: 4, most: 4, costPerTray: 0.3, traysPerKg: 0.7 };
    const dried = solve(toProgram([byTrays], { ...capacity, trays: 9 }, { money: 1 }));
    expect(dried.worth).toBeCloseTo(-4 * 0.3, 9); // 5 kg on 3.5 trays
  });
  test('least cost is told for each unit, and asks for one at least', () => {
    const { per, bounds } = toProgram([jarred], capacity, 'least cost');
    expect(per).toEqual([[keyOf(promised(0)), 1]]);
    expect(bounds.find(({ of }) => of.of === 'one unit at least')).toMatchObject({ terms: per, min: 1 });
  });
});

describe('smallest batches', () => {
  const of = (smallest: number, more: object = {}) =>
    solve(toProgram([{ ...jarred, smallest, ...more }], capacity, 'most worth'));
  test('9 jars can be promised: a smallest batch of 9 is made, one of 10 is not', () => {
    expect(of(9).values.get(keyOf(promised(0)))).toBe(9);
    expect(of(10)).toMatchObject({ feasible: true, optimal: true, worth: 0 });
    expect(of(10).values.get(keyOf(readied(0)))).toBe(0);
  });
  test('a must is a smallest batch at least', () => {
    expect(mustOf({ ...jarred, least: 3, smallest: 8 })).toBe(8);
    expect(mustOf({ ...jarred, least: 9, smallest: 8 })).toBe(9);
    expect(mustOf({ ...jarred, smallest: 8 })).toBe(0);
    const least = solve(toProgram([{ ...jarred, least: 3, smallest: 8 }], capacity, 'fewest hours'));
    expect(least.values.get(keyOf(promised(0)))).toBe(8);
    expect(of(10, { least: 1 })).toMatchObject({ feasible: false, optimal: true });
  });
  test('as many are readied as a smallest batch takes at the rich end', () =>
    expect(of(8, { most: 8 }).values.get(keyOf(promised(0)))).toBe(8)); // 12 jars to ready
});

describe('a batch for each load', () => {
  const large = { ...capacity, pots: [50], stock: [] };
  const batchesOf = (activities: readonly Activity[], day: Capacity = large) => {
    const { values } = solve(toProgram(activities, day, 'most worth'));
    return activities.map(({ product }) => values.get(keyOf(batches(product, 0))) ?? 0);
  };
  test('16 jars promised are 24 to ready and four loads: four batches, though one pot would hold all', () => {
    expect(batchesOf([jarred])).toEqual([4]);
    expect(batchesOf([{ ...bare, cook: { litresPerKg: 1, minutes: 30, stirred: false } }])).toEqual([1]);
  });
  test('pot minutes for three batches are three loads', () => {
    const found = solve(toProgram([jarred], { ...large, minutes: 100, canners: 2 }, 'most worth'));
    expect(found.values.get(keyOf(batches(0, 0))) ?? 0).toBeLessThanOrEqual(3);
    expect(found.values.get(keyOf(readied(0))) ?? 0).toBeLessThanOrEqual(21);
  });
  test('raw packed jars in the same loads ask for no batch', () => {
    const { cook: _, ...rawPack } = jarred;
    const [hot = 0, none = 0] = batchesOf(
      [
        { ...jarred, most: 7, worth: 5 },
        { ...rawPack, product: 1 },
      ],
      large,
    );
    expect([hot, none]).toEqual([1, 0]);
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
  expect([...leastFruit(toProgram([jarred], capacity, 'most worth'))]).toEqual([[keyOf(raw(0, 0)), -1]]);
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
  const huge = toProgram([{ ...jarred, most: 5000 }], { ...capacity, lots: [9000], stock: [] }, 'most worth');
  expect(huge.bounds.some(({ of }) => of.of === 'rounded')).toBe(false);
  expect(
    toProgram(randomKitchen(1).activities, randomKitchen(1).capacity, 'most worth').bounds.some(
      ({ of }) => of.of === 'rounded',
    ),
  ).toBe(true);
  const none = { ...jarred, supplies: jarred.supplies.map((supply) => ({ ...supply, unitsPerKg: same(0) })) };
  expect(toProgram([none], capacity, 'most worth').bounds.some(({ of }) => of.of === 'rounded')).toBe(false);
});
