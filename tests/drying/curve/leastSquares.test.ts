import { describe, expect, it } from 'vitest';
import { leastSquares, studentT } from '../../../src/drying/curve/leastSquares';
import file from './strd.json';

interface Certified {
  name: string;
  starts: number[][];
  x: number[];
  y: number[];
  parameters: number[];
  deviations: number[];
  residualDeviation: number;
  sumOfSquares?: number;
}
const { sets } = file as { sets: Certified[] };

type Model = (b: readonly number[]) => (x: number) => number;
const MODELS: Record<string, Model> = {
  norris:
    ([b0 = 0, b1 = 0]) =>
    (x) =>
      b0 + b1 * x,
  misra1a:
    ([b1 = 0, b2 = 0]) =>
    (x) =>
      b1 * (1 - Math.exp(-b2 * x)),
  danwood:
    ([b1 = 0, b2 = 0]) =>
    (x) =>
      b1 * x ** b2,
  rat42:
    ([b1 = 0, b2 = 0, b3 = 0]) =>
    (x) =>
      b1 / (1 + Math.exp(b2 - b3 * x)),
};
/** Certified digits that agree: -log10 of the relative difference. */
const digits = (value: number, certified: number): number =>
  -Math.log10(Math.abs(value - certified) / Math.abs(certified));

// NIST Statistical Reference Datasets, https://www.itl.nist.gov/div898/strd/ (certified values)
describe.each(sets)('certified values of $name', ({ name, starts, x, y, ...certified }) => {
  it.each(starts.map((start) => [start]))('from the start %j', (start) => {
    const fit = leastSquares({ x, y, model: MODELS[name] as Model, start });
    expect(fit.converged).toBe(true);
    fit.parameters.forEach((value, i) => {
      expect(digits(value, certified.parameters[i] as number)).toBeGreaterThan(8);
    });
    fit.sd.forEach((value, i) => {
      expect(digits(value, certified.deviations[i] as number)).toBeGreaterThan(7);
    });
    const residual = Math.sqrt(fit.sse / fit.degreesOfFreedom);
    expect(digits(residual, certified.residualDeviation)).toBeGreaterThan(8);
    if (certified.sumOfSquares !== undefined) expect(digits(fit.sse, certified.sumOfSquares)).toBeGreaterThan(8);
  });
});

describe('leastSquares', () => {
  it('gives no deviations where no points are left over', () => {
    const fit = leastSquares({
      x: [0, 1],
      y: [1, 3],
      model:
        ([a = 0, b = 0]) =>
        (x) =>
          a + b * x,
      start: [0, 0],
    });
    expect(fit.degreesOfFreedom).toBe(0);
    expect(fit.sd).toEqual([]);
    expect(fit.parameters[1]).toBeCloseTo(2, 10);
  });

  it('gives no deviations, and no NaN, for a constant that the model does not use', () => {
    const fit = leastSquares({
      x: [0, 1, 2, 3],
      y: [1, 3, 5, 7],
      model:
        ([a = 0]) =>
        (x) =>
          a * x,
      start: [1, 1],
    });
    expect(fit.sd).toEqual([]);
    expect(fit.parameters.every(Number.isFinite)).toBe(true);
  });

  it('refuses a step that leads nowhere finite', () => {
    const model: Model =
      ([a = 0]) =>
      (x) =>
        a < 0 ? Number.NaN : Math.sqrt(a) * x;
    const fit = leastSquares({ x: [1, 2, 3], y: [0.1, 0.2, 0.3], model, start: [100] });
    expect(fit.parameters[0]).toBeCloseTo(0.01, 8);
  });
});

// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2: upper critical values, 0.95 column (two-sided 90 %)
it.each([
  [1, 6.314],
  [2, 2.92],
  [3, 2.353],
  [4, 2.132],
  [5, 2.015],
  [6, 1.943],
  [10, 1.812],
  [30, 1.697],
])("Student's t with %d degrees of freedom is %d", (degrees, t) => {
  expect(studentT(0.9, degrees)).toBeCloseTo(t, 3);
});
