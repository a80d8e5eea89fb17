import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boilOffEnergy } from '../../src/heat/index';
import { expectError } from '../helpers/errors';
import { ends, expectRising, kg } from './helpers';

describe('boilOffEnergy', () => {
  it('takes the latent heat at the boil of the elevation: more heat where water boils cooler', () => {
    const heatAt = (elevation: '0 ft' | '3000 m') => boilOffEnergy({ water: '1 kg', elevation }).heat.value;
    expect(heatAt('0 ft')).toBeCloseTo(boilOffEnergy({ water: '1 kg' }).heat.value, 9);
    expect(heatAt('0 ft')).toBeCloseTo(2256.7, 1);
    // saturated steam at 90 degC: 2,282.6 kJ/kg; 3,000 m boils at 89.9 degC
    expect(Math.abs(heatAt('3000 m') - 2282.8)).toBeLessThan(0.5);
  });
  it('rises with the water, in proportion, and with the losses', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        (water, share) => {
          const one = boilOffEnergy({ water: kg(water) });
          expectRising(one);
          const twice = boilOffEnergy({ water: kg(2 * water) });
          expect(twice.energy.high.value / one.energy.high.value).toBeCloseTo(2, 9);
          const [low, , high] = ends(boilOffEnergy({ water: kg(water), efficiency: share }).energy);
          expect(low).toBe(high);
          expect(low).toBeGreaterThan(boilOffEnergy({ water: kg(water), efficiency: 2 * share }).energy.low.value);
        },
      ),
    );
  });
  it('refuses what cannot be', () => {
    expectError(() => boilOffEnergy({ water: '0 kg' }), 'OUT_OF_RANGE', 'water');
    expectError(() => boilOffEnergy({ water: '1 L' as never }), 'WRONG_DIMENSION', 'water');
    expectError(() => boilOffEnergy({ water: '1 kg', elevation: '9000 m' }), 'OUT_OF_RANGE', 'elevation');
    expectError(() => boilOffEnergy({ water: '1 kg', efficiency: '101 %' }), 'OUT_OF_RANGE', 'efficiency');
  });
});
