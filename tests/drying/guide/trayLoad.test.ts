import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { trayLoad } from '../../../src/drying/index';
import { errorOf } from '../helpers';

describe('trayLoad', () => {
  it('is in proportion to area, thickness and cover', () => {
    const one = trayLoad({ area: '0.1 m2', thickness: '6 mm', cover: 0.5, density: '1 g/mL' }).perTray.likely;
    expect(one.value).toBeCloseTo(0.3, 12);
    expect(one.unit).toBe('kg');
    expect(trayLoad({ area: '0.2 m2', thickness: '6 mm', cover: 1 }).perTray.low.value).toBeCloseTo(1.2, 12);
    expect(trayLoad({ area: '100 in2' }).perTray.low.unit).toBe('lb');
  });
  it('holds all of the ready produce on the trays it asks for', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 100, max: 3000 }), (lb, in2) => {
        const answer = trayLoad({ area: { value: in2, unit: 'in2' }, ready: { value: lb, unit: 'lb' } });
        const { perTray, traysNeeded } = answer;
        expect((traysNeeded?.high ?? 0) * perTray.low.value).toBeGreaterThanOrEqual(lb * (1 - 1e-9));
        expect(((traysNeeded?.high ?? 0) - 1) * perTray.low.value).toBeLessThan(lb);
        expect(traysNeeded?.low).toBeLessThanOrEqual(traysNeeded?.high ?? 0);
      }),
    );
  });
  it('counts loads, and keeps an oven to its printed 4 lb', () => {
    const dryer = trayLoad({ area: '1 ft2', ready: '12 lb', trays: 8, cover: 0.75 });
    expect(dryer.loads).toEqual({ low: 2, likely: 2, high: 2 });
    const oven = trayLoad({ area: '2 ft2', ready: '12 lb', trays: 4, dryIn: 'oven' });
    expect(oven.ovenLoad).toMatchObject({ low: { value: 4, unit: 'lb' }, high: { value: 6, unit: 'lb' } });
    expect(oven.loads?.likely).toBe(3);
  });
  it('refuses trays without produce, and a cover of nothing', () => {
    expect(errorOf(() => trayLoad({ area: '1 ft2', trays: 3 }))).toMatchObject({ code: 'MISSING', path: 'ready' });
    expect(errorOf(() => trayLoad({ area: '1 ft2', cover: 0 })).code).toBe('OUT_OF_RANGE');
    expect(errorOf(() => trayLoad({ area: '1 ft2', ready: '1 lb', trays: 0 })).path).toBe('trays');
  });
});
