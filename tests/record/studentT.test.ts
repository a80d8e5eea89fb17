import { describe, expect, test } from 'vitest';
import { ninetyPercentT, tailOfT } from '../../src/record/studentT';

// NIST/SEMATECH e-Handbook 1.3.6.7.2, upper critical values of Student's t; read in a copy
describe("Student's t", () => {
  test.each([
    [1, 6.314],
    [2, 2.92],
    [3, 2.353],
    [4, 2.132],
    [5, 2.015],
    [6, 1.943],
    [7, 1.895],
    [8, 1.86],
    [9, 1.833],
    [10, 1.812],
    [14, 1.761],
    [20, 1.725],
    [30, 1.697],
    [60, 1.671],
    [100, 1.66],
  ])('%d degrees: %d', (degrees, t) => {
    expect(Math.abs(ninetyPercentT(degrees) - t)).toBeLessThan(5.1e-4);
  });
  test.each([
    [5, 2.571, 0.025],
    [10, 2.764, 0.01],
    [20, 3.552, 0.001],
    [1, 3.078, 0.1],
    [30, 1.31, 0.1],
  ])('the tail of %d degrees above %d is %d', (degrees, t, tail) => {
    expect(Math.abs(tailOfT(t, degrees) / tail - 1)).toBeLessThan(2e-3);
  });
  test('ends at the normal', () => {
    expect(ninetyPercentT(1e7)).toBeCloseTo(1.6448536, 5);
  });
});
