import { describe, expect, it } from 'vitest';
import {
  dryingStudy,
  fitDryingCurve,
  moistureRatio,
  slabMoistureRatio,
  type ThinLayerModel,
  timeToMoistureRatio,
} from '../../../src/drying/index';
import { errorOf } from '../helpers';

const h = (value: number) => ({ value, unit: 'h' as const });

describe('moistureRatio and timeToMoistureRatio', () => {
  it('undo one another', () => {
    const { time } = timeToMoistureRatio({ model: 'page', moistureRatio: 0.2, k: 0.3, n: 1.2, per: 'h' });
    expect(moistureRatio({ model: 'page', time, k: 0.3, n: 1.2 }).moistureRatio).toBeCloseTo(0.2, 12);
    expect(timeToMoistureRatio({ model: 'lewis', moistureRatio: Math.exp(-1), k: 0.5, per: 'h' }).time).toEqual(h(2));
    expect(timeToMoistureRatio({ model: 'lewis', moistureRatio: 1, k: 0.5, per: 'min' }).time.value).toBe(0);
  });
  it('ask for the constants of the model, and for finite answers', () => {
    expect(errorOf(() => moistureRatio({ model: 'page', time: '1 h', k: 1 }))).toMatchObject({
      code: 'MISSING',
      path: 'n',
    });
    expect(errorOf(() => timeToMoistureRatio({ model: 'page', moistureRatio: 0.1, k: 1, per: 'h' })).path).toBe('n');
    expect(errorOf(() => moistureRatio({ model: 'lewis', time: '1000 h', k: -1000 }))).toMatchObject({
      code: 'OUT_OF_RANGE',
      path: 'time',
    });
    expect(
      errorOf(() => timeToMoistureRatio({ model: 'page', moistureRatio: 1e-9, k: 1e-9, n: 0.01, per: 'h' })).code,
    ).toBe('OUT_OF_RANGE');
    expect(errorOf(() => moistureRatio({ model: 'spline' as never, time: '1 h' })).code).toBe('UNKNOWN_NAME');
  });
});

describe('fitDryingCurve', () => {
  const CONSTANTS: Record<ThinLayerModel, Record<string, number>> = {
    lewis: { k: 0.3 },
    page: { k: 0.3, n: 1.2 },
    'henderson-pabis': { a: 1.05, k: 0.3 },
    logarithmic: { a: 0.9, k: 0.3, c: 0.1 },
    midilli: { a: 1, k: 0.3, n: 1.1, b: -0.005 },
    'wang-singh': { a: -0.2, b: 0.01 },
  };
  it.each(Object.entries(CONSTANTS))('finds the constants of %s again', (model, constants) => {
    const points = [0, 0.5, 1, 2, 3, 4, 5, 6].map((t) => ({
      time: h(t),
      moistureRatio: moistureRatio({ model: model as ThinLayerModel, time: h(t), ...constants }).moistureRatio,
    }));
    const fit = fitDryingCurve({ points, model: model as ThinLayerModel });
    for (const [key, value] of Object.entries(constants)) expect(fit.constants[key]).toBeCloseTo(value, 6);
    expect(fit.per).toBe('h');
  });
  it('refuses too few points and times that do not rise', () => {
    const points = [1, 0.6, 0.4].map((ratio, i) => ({ time: h(i), moistureRatio: ratio }));
    expect(errorOf(() => fitDryingCurve({ points, model: 'midilli' }))).toMatchObject({
      code: 'OUT_OF_RANGE',
      path: 'points',
    });
    expect(errorOf(() => fitDryingCurve({ points: points.slice(1) })).path).toBe('points');
    const back = [...points, { time: h(2), moistureRatio: 0.3 }];
    expect(errorOf(() => fitDryingCurve({ points: back }))).toMatchObject({
      code: 'CONTRADICTION',
      path: 'points[3].time',
    });
    expect(errorOf(() => fitDryingCurve({ points: [...points, { time: h(3), moistureRatio: 2 }] })).path).toBe(
      'points[3].moistureRatio',
    );
  });
  it('puts the published drying test between its moistures within 10 % of the textbook time', () => {
    // Geankoplis, Problem 9.6-1 (printed answers recalled): 4.1 h from X 0.20 to 0.04, from its 0.26268 at the start
    const time = (x: number) =>
      timeToMoistureRatio({ model: 'page', moistureRatio: x / 0.26268, k: 0.17687, n: 1.37065, per: 'h' }).time.value;
    expect(Math.abs(time(0.04) - time(0.2) - 4.1)).toBeLessThan(0.41);
  });
});

describe('slabMoistureRatio', () => {
  it('falls from one without a step where the series takes over', () => {
    // 2 mm, both faces, D 1e-9 m2/s: Fo 0.05 at 50 s
    const at = (seconds: number) =>
      slabMoistureRatio({ thickness: '2 mm', diffusivity: 1e-9, time: { value: seconds, unit: 's' } }).moistureRatio;
    expect(at(0)).toBe(1);
    expect(at(49.9999999)).toBeCloseTo(at(50), 8);
    expect(at(49)).toBeGreaterThan(at(51));
    const oneFace = slabMoistureRatio({
      thickness: '1 mm',
      faces: 'one',
      diffusivity: 1e-9,
      time: '200 s',
    }).moistureRatio;
    expect(oneFace).toBeCloseTo(at(200), 12);
  });
});

describe('dryingStudy', () => {
  it('gives a diffusivity at a temperature only where the study has an activation energy', () => {
    expect(dryingStudy({ food: 'mango', temperature: '60 degC' }).diffusivity).toBeCloseTo(4.97e-10, 15);
    expect(dryingStudy({ food: 'sweet cherry', temperature: '65 degC' }).diffusivity).toBeUndefined();
    expect(dryingStudy({ food: 'apple' }).diffusivityRange).toBeUndefined();
    expect(dryingStudy({ food: 'onion' }).bestModel).toContain('Page');
  });
  it('refuses a temperature outside the study and an unknown food', () => {
    expect(errorOf(() => dryingStudy({ food: 'mango', temperature: '50 degC' }))).toMatchObject({
      code: 'OUT_OF_RANGE',
      path: 'temperature',
    });
    expect(errorOf(() => dryingStudy({ food: 'bread' })).code).toBe('UNKNOWN_NAME');
  });
});
