import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sharedOut } from '../../../src/plan/fit/cannedJobs';
import { evenly } from '../../../src/plan/fit/portion';

const product = (ready: number) => ({ decided: { ready } }) as never;
/** The jars of each load, product by product. */
const jars = (counts: readonly number[], places: readonly number[]) =>
  sharedOut(counts.map(product), places).map((load) => load.map((part) => part.jars));

test('a whole number in even parts', () => {
  expect(evenly(7, 3)).toEqual([3, 2, 2]);
  expect(evenly(2, 3)).toEqual([1, 1, 0]);
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
