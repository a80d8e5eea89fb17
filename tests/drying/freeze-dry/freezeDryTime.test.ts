import { describe, expect, it } from 'vitest';
import { freezeDryTime } from '../../../src/drying/index';
import { sublimationEnthalpy } from '../../../src/heat/ice';
import { iceVapourPressure } from '../../../src/heat/index';
import { errorOf } from '../helpers';

describe('freezeDryTime', () => {
  const coffee = {
    thickness: '12.5 mm',
    moisture: '74 %',
    conductivity: 0.035,
    permeability: 2.6252e-8,
    surfaceTemperature: '30 degC',
    condenserTemperature: '-40 degC',
  } as const;
  it('goes with the square of the depth, and a front that does not depend on it', () => {
    const thin = freezeDryTime(coffee);
    const thick = freezeDryTime({ ...coffee, thickness: '25 mm' });
    expect(thick.sublimationTime.value / thin.sublimationTime.value).toBeCloseTo(4, 9);
    expect(thick.iceTemperature.value).toBeCloseTo(thin.iceTemperature.value, 9);
    const both = freezeDryTime({ ...coffee, faces: 2 });
    expect(thin.sublimationTime.value / both.sublimationTime.value).toBeCloseTo(4, 9);
    expect(thin.totalTime.value * 0.6).toBeCloseTo(thin.sublimationTime.value, 9);
  });
  it('balances heat and vapor', () => {
    const { iceTemperature, icePressure } = freezeDryTime(coffee);
    const heat = sublimationEnthalpy(iceTemperature.value + 273.15) * 1000;
    const p0 = iceVapourPressure({ temperature: '-40 degC' }).pressure.value;
    const vapor = heat * 2.6252e-8 * (icePressure.value - p0);
    expect(vapor).toBeCloseTo(0.035 * (30 - iceTemperature.value), 6);
  });
  it('takes no vapor at all, and a density', () => {
    const vacuum = freezeDryTime({
      ...coffee,
      condenserTemperature: undefined,
      vaporPressure: '0 Pa',
      density: '0.5 g/mL',
    });
    expect(vacuum.iceTemperature.value).toBeLessThan(freezeDryTime(coffee).iceTemperature.value);
    expect(vacuum.sublimationTime.value).toBeLessThan(freezeDryTime(coffee).sublimationTime.value);
  });
  it.each<[string, object, string, string]>([
    ['both pressures', { vaporPressure: '10 Pa' }, 'CONTRADICTION', 'condenserTemperature'],
    ['neither pressure', { condenserTemperature: undefined }, 'CONTRADICTION', 'condenserTemperature'],
    ['a surface colder than the condenser', { surfaceTemperature: '-41 degC' }, 'CONTRADICTION', 'surfaceTemperature'],
    [
      'a vapor above the triple point',
      { condenserTemperature: undefined, vaporPressure: '700 Pa' },
      'CONTRADICTION',
      'surfaceTemperature',
    ],
    ['a layer that lets no vapor out', { permeability: 1e-12 }, 'CONTRADICTION', 'surfaceTemperature'],
    ['a wetter target', { targetMoisture: '80 %' }, 'CONTRADICTION', 'targetMoisture'],
    ['a conductivity of nothing', { conductivity: 0 }, 'OUT_OF_RANGE', 'conductivity'],
  ])('refuses %s', (_, change, code, path) => {
    expect(errorOf(() => freezeDryTime({ ...coffee, ...change } as never))).toMatchObject({ code, path });
  });
});
