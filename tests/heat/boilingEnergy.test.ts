import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boilingEnergy, boilOffEnergy } from '../../src/heat/index';
import { expectError } from '../helpers/errors';
import { ends, expectRising } from './helpers';

const minutes = fc.double({ min: 1, max: 600, noNaN: true });

describe('boilingEnergy', () => {
  it('takes a quarter to 70 % of the burner, or the share given', () => {
    expect(ends(boilingEnergy({ time: '2 h', burnerPower: '2 kW' }).energy)).toEqual([1, 1.6, 2.8]);
    expect(ends(boilingEnergy({ time: '2 h', burnerPower: '2 kW', holding: '50 %' }).energy)).toEqual([2, 2, 2]);
    expect(boilingEnergy({ time: '2 h', burnerPower: '2 kW' }).basis[1]?.kind).toBe('common-practice');
    expect(boilingEnergy({ time: '2 h', burnerPower: '2 kW', holding: 0.5 }).basis[1]?.kind).toBe('measured');
  });
  it('is the energy of the water that boils away', () => {
    const byWater = boilingEnergy({ time: '90 min', evaporationPerHour: '2 L', elevation: '5000 ft' });
    expect(byWater).toEqual(boilOffEnergy({ water: '3 kg', elevation: '5000 ft' }));
  });
  it('rises with time and power', () => {
    fc.assert(
      fc.property(minutes, minutes, fc.double({ min: 0.1, max: 10, noNaN: true }), (time, more, power) => {
        const asked = { burnerPower: { value: power, unit: 'kW' as const } };
        const one = boilingEnergy({ time: { value: time, unit: 'min' }, ...asked });
        expectRising(one);
        const longer = boilingEnergy({ time: { value: time + more, unit: 'min' }, ...asked });
        expect(longer.energy.high.value).toBeGreaterThan(one.energy.high.value);
        // never more than the burner full on
        expect(one.energy.high.value).toBeLessThan((power * time) / 60);
      }),
    );
  });
  it('refuses neither and both', () => {
    expectError(() => boilingEnergy({ time: '1 h' } as never), 'MISSING', 'burnerPower');
    const both = { time: '1 h', burnerPower: '2 kW', evaporationPerHour: '1 L' };
    expectError(() => boilingEnergy(both as never), 'CONTRADICTION', 'burnerPower');
    const share = { time: '1 h', evaporationPerHour: '1 L', holding: 0.4 };
    expectError(() => boilingEnergy(share as never), 'CONTRADICTION', 'holding');
    const efficiency = { time: '1 h', burnerPower: '2 kW', efficiency: 0.5 };
    expectError(() => boilingEnergy(efficiency as never), 'CONTRADICTION', 'efficiency');
    expectError(() => boilingEnergy({ time: '0 h', burnerPower: '2 kW' }), 'OUT_OF_RANGE', 'time');
    expectError(() => boilingEnergy({ time: '1 h', burnerPower: '2 kW', holding: 0 }), 'OUT_OF_RANGE', 'holding');
  });
});
