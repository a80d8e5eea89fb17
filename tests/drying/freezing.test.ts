import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drynessByWeight, freezeDryCollapse, freezeDryTime, glassTransition } from '../../src/drying/index';
import { freezeDryEnergy, iceVapourPressure } from '../../src/heat/index';
import { errorOf } from './helpers';

const degC = (value: number) => ({ value, unit: 'degC' as const });

describe('freezeDryTime', () => {
  const coffee = {
    thickness: '12.5 mm',
    moisture: '74 %',
    conductivity: 0.035,
    permeability: 2.6252e-8,
    surface: '30 degC',
    condenser: '-40 degC',
  } as const;
  it('goes with the square of the depth, and a front that does not depend on it', () => {
    const thin = freezeDryTime(coffee);
    const thick = freezeDryTime({ ...coffee, thickness: '25 mm' });
    expect(thick.sublimationTime.value / thin.sublimationTime.value).toBeCloseTo(4, 9);
    expect(thick.iceTemperature.value).toBeCloseTo(thin.iceTemperature.value, 9);
    const both = freezeDryTime({ ...coffee, faces: 'both' });
    expect(thin.sublimationTime.value / both.sublimationTime.value).toBeCloseTo(4, 9);
    expect(thin.totalTime.value * 0.6).toBeCloseTo(thin.sublimationTime.value, 9);
  });
  it('balances heat and vapour', () => {
    const { iceTemperature, icePressure } = freezeDryTime(coffee);
    const heat = freezeDryEnergy({ ice: '1 kg', temperature: iceTemperature }).heat.value * 1000;
    const p0 = iceVapourPressure({ temperature: '-40 degC' }).pressure.value;
    const vapour = heat * 2.6252e-8 * (icePressure.value - p0);
    expect(vapour).toBeCloseTo(0.035 * (30 - iceTemperature.value), 6);
  });
  it('takes no vapour at all, and a density', () => {
    const vacuum = freezeDryTime({ ...coffee, condenser: undefined, vapour: '0 Pa', density: '0.5 g/mL' });
    expect(vacuum.iceTemperature.value).toBeLessThan(freezeDryTime(coffee).iceTemperature.value);
    expect(vacuum.sublimationTime.value).toBeLessThan(freezeDryTime(coffee).sublimationTime.value);
  });
  it.each<[string, object, string, string]>([
    ['both pressures', { vapour: '10 Pa' }, 'CONTRADICTION', 'condenser'],
    ['neither pressure', { condenser: undefined }, 'CONTRADICTION', 'condenser'],
    ['a surface colder than the condenser', { surface: '-41 degC' }, 'CONTRADICTION', 'surface'],
    ['a vapour above the triple point', { condenser: undefined, vapour: '700 Pa' }, 'CONTRADICTION', 'surface'],
    ['a layer that lets no vapour out', { permeability: 1e-12 }, 'CONTRADICTION', 'surface'],
    ['a wetter target', { targetMoisture: '80 %' }, 'CONTRADICTION', 'targetMoisture'],
    ['a conductivity of nothing', { conductivity: 0 }, 'OUT_OF_RANGE', 'conductivity'],
  ])('refuses %s', (_, change, code, path) => {
    expect(errorOf(() => freezeDryTime({ ...coffee, ...change } as never))).toMatchObject({ code, path });
  });
});

describe('drynessByWeight', () => {
  const weigh = (...pairs: [number, number][]) => ({
    weighings: pairs.map(([t, w]) => ({
      time: { value: t, unit: 'h' as const },
      weight: { value: w, unit: 'g' as const },
    })),
  });
  it('is dry only when an hour takes nothing off', () => {
    expect(drynessByWeight(weigh([24, 500], [26, 500])).verdict).toBe('dry');
    expect(drynessByWeight(weigh([24, 500], [26, 499])).verdict).toBe('dry');
    expect(drynessByWeight(weigh([24, 500], [26, 498])).verdict).toBe('not dry');
    expect(drynessByWeight(weigh([24, 500], [24.5, 500])).verdict).toBe('too soon');
    expect(drynessByWeight({ ...weigh([24, 500], [26, 498]), tolerance: '1 %' }).verdict).toBe('dry');
    expect(drynessByWeight(weigh([20, 600], [24, 500], [26, 490]))).toMatchObject({
      lost: { value: 10, unit: 'g' },
      lostShare: 0.02,
    });
  });
  it('refuses weighings out of order', () => {
    expect(errorOf(() => drynessByWeight(weigh([24, 500])))).toMatchObject({ code: 'OUT_OF_RANGE', path: 'weighings' });
    expect(errorOf(() => drynessByWeight(weigh([24, 500], [24, 499]))).path).toBe('weighings[1].time');
    expect(errorOf(() => drynessByWeight(weigh([24, 500], [26, 501]))).path).toBe('weighings[1].weight');
  });
});

describe('glassTransition', () => {
  it('falls as moisture rises, and mostMoisture is where it meets the store', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.constantFrom('kiwifruit', 'sucrose', 'lactose', 'fructose'),
        (moisture, food) => {
          const now = glassTransition({ food, moisture, storage: '-10 degC' });
          expect(now.temperature.value).toBeGreaterThan(
            glassTransition({ food, moisture: moisture + 0.01 }).temperature.value,
          );
          const most = now.mostMoisture ?? 0;
          expect(glassTransition({ food, moisture: most }).temperature.value).toBeCloseTo(-10, 9);
          expect(now.state).toBe(moisture < most ? 'glassy' : 'sticky');
        },
      ),
    );
  });
  it('is never glassy in a store above the dry transition', () => {
    expect(glassTransition({ food: 'fructose', moisture: 0, storage: '70 degF' })).toMatchObject({
      state: 'sticky',
      mostMoisture: 0,
    });
  });
  it('takes a mixture of sugars between its parts, as an estimate', () => {
    const half = glassTransition({ sugars: { sucrose: 1, fructose: 1 }, moisture: 0 });
    expect(half.temperature.value).toBeCloseTo((62 + 5) / 2, 12);
    expect(half.cautions.map(({ id }) => id)).toEqual(expect.arrayContaining(['estimate', 'recalled']));
    // one sugar alone has the correlation's k, within its rounding of the printed one
    const alone = glassTransition({ sugars: { sucrose: 3 }, moisture: 0.1 }).temperature.value;
    expect(alone).toBeCloseTo(glassTransition({ food: 'sucrose', moisture: 0.1 }).temperature.value, 0);
  });
  it('takes constants of your own', () => {
    const own = glassTransition({ solids: { glassTransition: '40.3 degC', k: 4.88 }, moisture: 0.1 });
    expect(own.temperature.value).toBeCloseTo(glassTransition({ food: 'kiwi', moisture: 0.1 }).temperature.value, 12);
  });
  it('refuses two ways or none, no sugar, and an unknown food', () => {
    expect(errorOf(() => glassTransition({ moisture: 0.1 })).code).toBe('CONTRADICTION');
    expect(errorOf(() => glassTransition({ food: 'kiwi', sugars: { sucrose: 1 }, moisture: 0.1 })).code).toBe(
      'CONTRADICTION',
    );
    expect(errorOf(() => glassTransition({ sugars: { sucrose: 0 }, moisture: 0.1 })).code).toBe('MISSING');
    expect(errorOf(() => glassTransition({ food: 'strawberry', moisture: 0.1 })).code).toBe('UNKNOWN_NAME');
  });
});

describe('freezeDryCollapse', () => {
  it('says perhaps within a printed range', () => {
    const at = (t: number) => freezeDryCollapse({ food: 'sweet corn', iceTemperature: degC(t) }).collapses;
    expect([at(-16), at(-15), at(-12), at(-8)]).toEqual(['no', 'perhaps', 'perhaps', 'yes']);
  });
  it('labels what is from memory', () => {
    const ids = (food: string) => freezeDryCollapse({ food, iceTemperature: '-30 degC' }).cautions.map(({ id }) => id);
    expect(ids('tomato')).toContain('recalled');
    expect(ids('potato')).not.toContain('recalled');
  });
});
