import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applianceEnergy } from '../../src/heat/applianceEnergy';
import { expectError } from '../helpers/errors';
import { ends } from './helpers';

describe('applianceEnergy', () => {
  it('is power x time x duty, and sure', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 5000, noNaN: true }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        (duty, watts, hours) => {
          const { energy } = applianceEnergy({
            power: { value: watts, unit: 'W' },
            time: { value: hours, unit: 'h' },
            duty,
          });
          const [low, likely, high] = ends(energy) as [number, number, number];
          expect(likely).toBeCloseTo((watts * hours * duty) / 1000, 8);
          expect([low, high]).toEqual([likely, likely]);
        },
      ),
    );
  });
  it('adds up the phases of a run, or takes the meter, and shares it over the water', () => {
    const metered = applianceEnergy({ metered: '9 MJ', waterRemoved: '1 kg' });
    expect(metered.energy.likely.value).toBeCloseTo(2.5, 12);
    expect(metered.perKilogramWater?.value).toBeCloseTo(2.5, 12);
    // 2,357.65 kJ/kg at 60 degC (IAPWS-95)
    expect(metered.efficiency).toBeCloseTo(2357.65 / 9000, 4);
    expect(applianceEnergy({ metered: '1 kWh' }).efficiency).toBeUndefined();
    const phases = [
      { power: '500 W', time: '3 h' },
      { power: '500 W', time: '3 h', duty: '50 %' },
    ] as const;
    expect(applianceEnergy({ phases: [...phases] }).energy.high).toEqual({ value: 2.25, unit: 'kWh' });
  });
  it('takes one way and not two', () => {
    const phases = [{ power: '1 kW', time: '1 h' }] as const;
    expectError(() => applianceEnergy({}), 'MISSING', 'power');
    expectError(() => applianceEnergy({ duty: 0.5 }), 'MISSING', 'power');
    expectError(() => applianceEnergy({ metered: '1 kWh', phases: [...phases] }), 'CONTRADICTION', 'metered');
    expectError(() => applianceEnergy({ power: '1 kW', time: '1 h', phases: [...phases] }), 'CONTRADICTION', 'phases');
    expectError(() => applianceEnergy({ duty: 0.5, metered: '1 kWh' }), 'CONTRADICTION', 'metered');
    expectError(() => applianceEnergy({ metered: '1 kWh', latentHeat: 2300 }), 'MISSING', 'waterRemoved');
  });
  it('refuses what cannot be', () => {
    expectError(() => applianceEnergy({ power: '0 W', time: '1 h' }), 'OUT_OF_RANGE', 'power');
    expectError(() => applianceEnergy({ power: '1 kWh' as never, time: '1 h' }), 'WRONG_DIMENSION', 'power');
    expectError(() => applianceEnergy({ power: '1 kW', time: '1 h', duty: 1.2 }), 'OUT_OF_RANGE', 'duty');
    expectError(() => applianceEnergy({ power: '1 kW' } as never), 'MISSING', 'time');
  });
});
