import { expect, test } from 'vitest';
import { between, solveRising } from '../../src/solution/table';

test('straight lines between points, nothing outside them', () => {
  const points = [
    [0, 0],
    [10, 5],
    [20, 25],
  ] as const;
  expect([0, 5, 10, 15, 20].map((x) => between(points, x))).toEqual([0, 2.5, 5, 15, 25]);
  expect([between(points, -1), between(points, 21), between([], 1)]).toEqual([undefined, undefined, undefined]);
});

test('solves a rising function', () => {
  expect(solveRising((x) => x * x, 2, 0, 2)).toBeCloseTo(Math.SQRT2, 11);
});
