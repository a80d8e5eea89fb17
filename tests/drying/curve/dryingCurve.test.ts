import { describe, expect, it } from 'vitest';
import { dryingCurve } from '../../../src/drying/index';
import { errorOf } from '../helpers';

const h = (value: number) => ({ value, unit: 'h' as const });
const page = (k: number, n: number) => ({ model: 'page', constants: { k, n }, timeUnit: 'h' }) as const;
const lewis = (k: number) => ({ model: 'lewis', constants: { k }, timeUnit: 'h' }) as const;

describe('dryingCurve of a thin layer', () => {
  it('undoes itself', () => {
    const { time } = dryingCurve({ ...page(0.3, 1.2), moistureRatio: 0.2 });
    expect(dryingCurve({ ...page(0.3, 1.2), time }).moistureRatio).toBeCloseTo(0.2, 12);
    expect(dryingCurve({ ...lewis(0.5), moistureRatio: Math.exp(-1) }).time).toEqual(h(2));
    expect(dryingCurve({ ...lewis(0.5), moistureRatio: 1 }).time.value).toBe(0);
  });
  it('counts in the unit that the constants are for', () => {
    const hours = dryingCurve({ ...lewis(0.5), time: '2 h' });
    expect(dryingCurve({ ...lewis(0.5), time: '120 min' }).moistureRatio).toBeCloseTo(hours.moistureRatio, 12);
    expect(hours.moistureRatio).toBeCloseTo(Math.exp(-1), 12);
  });
  it.each<[string, object, string, string]>([
    [
      'a constant missing',
      { model: 'page', constants: { k: 1 }, timeUnit: 'h', time: '1 h' },
      'MISSING',
      'constants.n',
    ],
    ['no constants', { model: 'lewis', timeUnit: 'h', time: '1 h' }, 'MISSING', 'constants.k'],
    ['no unit', { model: 'lewis', constants: { k: 1 }, time: '1 h' }, 'MISSING', 'timeUnit'],
    ['neither time nor ratio', lewis(1), 'MISSING', 'time'],
    ['both time and ratio', { ...lewis(1), time: '1 h', moistureRatio: 0.5 }, 'CONTRADICTION', 'time'],
    ['no finite answer', { ...lewis(-1000), time: '1000 h' }, 'OUT_OF_RANGE', 'time'],
    ['no finite time', { ...page(1e-9, 0.01), moistureRatio: 1e-9 }, 'OUT_OF_RANGE', 'constants.k'],
    ['a k of nothing', { ...lewis(0), moistureRatio: 0.5 }, 'OUT_OF_RANGE', 'constants.k'],
    ['an n of nothing', { ...page(1, 0), moistureRatio: 0.5 }, 'OUT_OF_RANGE', 'constants.n'],
    [
      'a model without a closed form',
      { model: 'wang-singh', constants: { a: -0.2, b: 0.01 }, timeUnit: 'h', moistureRatio: 0.5 },
      'CONTRADICTION',
      'moistureRatio',
    ],
    ['a thickness', { ...lewis(1), time: '1 h', thickness: '2 mm' }, 'CONTRADICTION', 'thickness'],
    ['an unknown model', { model: 'spline', time: '1 h' }, 'UNKNOWN_NAME', 'model'],
  ])('refuses %s', (_, input, code, path) => {
    expect(errorOf(() => dryingCurve(input as never))).toMatchObject({ code, path });
  });
});

describe('dryingCurve of a slab', () => {
  it('falls from one without a step where the series takes over', () => {
    // 2 mm, both faces, D 1e-9 m2/s: Fo 0.05 at 50 s
    const at = (seconds: number) =>
      dryingCurve({
        model: 'slab',
        thickness: '2 mm',
        diffusivity: 1e-9,
        time: { value: seconds, unit: 's' },
      }).moistureRatio;
    expect(at(0)).toBe(1);
    expect(at(49.9999999)).toBeCloseTo(at(50), 8);
    expect(at(49)).toBeGreaterThan(at(51));
    const oneFace = dryingCurve({
      model: 'slab',
      thickness: '1 mm',
      faces: 1,
      diffusivity: 1e-9,
      time: '200 s',
    }).moistureRatio;
    expect(oneFace).toBeCloseTo(at(200), 12);
  });
  it.each<[string, object, string, string]>([
    ['no thickness', { thickness: undefined }, 'MISSING', 'thickness'],
    ['no diffusivity', { diffusivity: undefined }, 'MISSING', 'diffusivity'],
    ['no time', { time: undefined }, 'MISSING', 'time'],
    ['constants', { constants: { k: 1 } }, 'CONTRADICTION', 'constants'],
    ['a ratio to reach', { moistureRatio: 0.5 }, 'CONTRADICTION', 'moistureRatio'],
  ])('refuses %s', (_, change, code, path) => {
    const input = { model: 'slab', thickness: '2 mm', diffusivity: 1e-9, time: '1 h', ...change };
    expect(errorOf(() => dryingCurve(input as never))).toMatchObject({ code, path });
  });
});
