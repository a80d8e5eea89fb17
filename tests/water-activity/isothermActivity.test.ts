import { describe, expect, test } from 'vitest';
import { isothermActivity } from '../../src/water-activity/index';
import { known } from '../helpers/known';

const activityOf = (input: Parameters<typeof isothermActivity>[0]) => known(isothermActivity(input));

describe('the inverses as printed', () => {
  const X = 0.12;
  test('GAB: the quadratic', () => {
    const { M0, C, K } = { M0: 0.1, C: 10, K: 0.9 };
    const [a, b, c] = [(K * (1 - C)) / (M0 * C), (C - 2) / (M0 * C) - 1 / X, 1 / (M0 * C * K)];
    const root = (-b - Math.sqrt(b * b - 4 * a * c)) / (2 * a);
    expect(activityOf({ parameters: { M0, C, K }, moisture: X }).waterActivity).toBeCloseTo(root, 9);
  });
  test('Oswin, Halsey, Henderson, Smith', () => {
    const activity = (parameters: Record<string, number | string>) =>
      activityOf({ parameters, moisture: X }).waterActivity;
    expect(activity({ model: 'Oswin', A: 0.15, B: 0.4 })).toBeCloseTo((X / 0.15) ** 2.5 / (1 + (X / 0.15) ** 2.5), 9);
    expect(activity({ model: 'Halsey', A: 0.05, B: 1.2 })).toBeCloseTo(Math.exp(-0.05 / X ** 1.2), 9);
    expect(activity({ model: 'Henderson', A: 5, B: 1.1 })).toBeCloseTo(1 - Math.exp(-5 * X ** 1.1), 9);
    expect(activity({ model: 'Smith', A: 0.03, B: 0.1 })).toBeCloseTo(1 - Math.exp((0.03 - X) / 0.1), 9);
  });
  test('with temperature: Henderson, Halsey, Oswin, Chung-Pfost', () => {
    const temperature = '30 degC' as const;
    const activity = (parameters: Record<string, number | string>) =>
      activityOf({ parameters, temperature, moisture: X }).waterActivity;
    expect(activity({ model: 'modified Henderson', A: 0.05, B: 1.1, C: 50 })).toBeCloseTo(
      1 - Math.exp(-0.05 * 80 * X ** 1.1),
      9,
    );
    expect(activity({ model: 'modified Halsey', A: -3, B: -0.01, C: 1.3 })).toBeCloseTo(
      Math.exp(-Math.exp(-3.3) * X ** -1.3),
      9,
    );
    expect(activity({ model: 'modified Oswin', A: 0.2, B: -0.001, C: 2.5 })).toBeCloseTo(
      1 / ((0.17 / X) ** 2.5 + 1),
      9,
    );
    expect(activity({ model: 'modified Chung-Pfost', A: 400, B: 20, C: 60 })).toBeCloseTo(
      Math.exp((-400 / 90) * Math.exp(-20 * X)),
      9,
    );
  });
});

test('the basis stands behind the water activity', () => {
  const { basis } = activityOf({ food: 'potato', moisture: 0.2, temperature: '45 degC' });
  expect(new Set(basis.map(({ of }) => of))).toEqual(new Set(['waterActivity']));
});
