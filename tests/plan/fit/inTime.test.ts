import { describe, expect, test } from 'vitest';
import { capped, growing, inTimeOf, lossesOf, worthiest } from '../../../src/plan/fit/inTime';
import type { Planned } from '../../../src/plan/program/decide';
import { keyOf } from '../../../src/plan/program/decisions';
import { prepare } from '../../../src/plan/program/prepare';
import type { Job } from '../../../src/plan/schedule/job';

const prepared = prepare({
  lots: [
    { food: 'peach', raw: '30 lb' },
    { food: 'apple', raw: '20 lb' },
  ],
  kitchen: {
    elevation: '500 m',
    hours: '8 h',
    pots: [{ volume: '12 quarts' }],
    canners: [{ method: 'boiling-water', holds: { quart: 7, pint: 9 } }],
    freezer: { room: '40 L' },
  },
  products: [
    { name: 'halves', make: 'jars', from: 'peach', form: 'halves', pack: 'hot', jar: 'quart', worth: 8, least: 4 },
    { name: 'slices', make: 'frozen', from: 'apple', form: 'slices', worth: 3 },
  ],
});
const planned = prepared.makings.map(
  (making): Planned => ({
    making,
    decided: {
      rawByLot: new Map(),
      rawKg: 10,
      readyKg: { low: 8, likely: 9, high: 10 },
      promised: 8,
      likely: 10,
      ready: 12,
      trays: 0,
    },
  }),
);
const job = (product: string, count: number, more: Partial<Job> = {}): Job => ({
  portions: [
    {
      product,
      what: product,
      raw: { value: 1, unit: 'kg' },
      filled: { count, unit: 'jar' },
      prepare: 1,
      fill: 1,
      drops: [],
    },
  ],
  needs: [],
  ...more,
});
/** Most that may be readied of each product. */
const mosts = ({ bounds }: typeof prepared.program) => bounds.flatMap(({ of, max }) => (of.of === 'most' ? [max] : []));

describe('what found a place', () => {
  test('is what was planned without what is left', () => {
    const inTime = inTimeOf(planned, [job('slices', 5)]);
    expect(inTime.get(0)).toEqual({ units: 12, of: 12 });
    expect(inTime.get(1)).toEqual({ units: 7, of: 12 });
  });
  test('is at least what must be made: 12 readied for each 8 promised, 6 for a must of 4', () => {
    expect(inTimeOf(planned, [job('halves', 12)]).get(0)).toEqual({ units: 6, of: 12 });
  });
  test('counts all loads of one pot', () => {
    const into = { kind: 'can', jars: { count: 2, unit: 'jar' }, lift: 1, canners: [] } as const;
    const more = [{ filled: { count: 2, unit: 'jar' }, fill: 1, into }];
    const together = { hot: 60, more, apart: [] };
    expect(inTimeOf(planned, [job('slices', 3, { together })]).get(1)).toEqual({ units: 7, of: 12 });
  });
});

test('what is left out costs its part of the worth, and a must far more', () => {
  const lossOf = lossesOf(prepared, planned);
  expect(lossOf([])).toBe(0);
  // 8 promised of 12 readied at 3 each
  expect(lossOf([job('slices', 6)])).toBeCloseTo((3 * 8 * 6) / 12, 9);
  expect(lossOf([job('halves', 6)])).toBeCloseTo((8 * 8 * 6) / 12, 9);
  expect(lossOf([job('halves', 7)])).toBeGreaterThan(1e5);
});

test('a program with no more than found a place: of what was late, or of all', () => {
  const inTime = inTimeOf(planned, [job('slices', 5)]);
  const [halves] = mosts(prepared.program);
  expect(mosts(capped(prepared.program, inTime, 'late'))).toEqual([halves, 7]);
  expect(mosts(capped(prepared.program, inTime, 'all'))).toEqual([12, 7]);
  // what was not made at all is not made in place of it
  expect(mosts(capped(prepared.program, new Map(), 'all'))).toEqual([0, 0]);
});

test('a program in which one product may grow', () => {
  expect(mosts(growing(prepared.program, 1, planned, 20))).toEqual([12, 20]);
  expect(mosts(growing(prepared.program, 0, [], 20))).toEqual([20, 0]);
});

test('the product that is worth most for its weight comes first', () => {
  const perKg = prepared.makings.map(
    ({ activity: { worth, supplies } }) => worth * (supplies[0]?.unitsPerKg.likely ?? 0),
  );
  const [first] = worthiest(prepared);
  expect(perKg[first as number]).toBe(Math.max(...perKg));
  expect(worthiest(prepared).length).toBe(2);
  expect(prepared.program.variables.some(({ name }) => name === keyOf({ of: 'units', product: 0 }))).toBe(true);
});
