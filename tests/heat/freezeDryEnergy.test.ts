import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freezeDryLoad } from '../../src/drying/index';
import { freezeDryEnergy } from '../../src/heat/freezeDryEnergy';
import { expectError } from '../helpers/errors';
import { ends, expectRising, kg } from './helpers';

describe('freezeDryEnergy', () => {
  it('subliming takes what freezeDryLoad says, and the machine some ten times as much', () => {
    const load = freezeDryLoad({
      fresh: '10 kg',
      moisture: '85 %',
      machine: { iceCapacity: '5 kg', trayArea: '1 m2' },
    });
    const { heat, energy } = freezeDryEnergy({ ice: load.ice.likely });
    expect(heat.value / 3600).toBeCloseTo(load.energy.likely.value, 9);
    expect(ends(energy)).toEqual([0.6, 0.2, 0.12].map((share) => expect.closeTo((2 * heat.value) / 3600 / share, 9)));
  });
  it('hardly changes with the cold of the ice', () => {
    const at = (temperature: '-40 degC' | '-5 degC') => freezeDryEnergy({ ice: '3 kg', temperature }).heat.value;
    expect(freezeDryEnergy({ ice: '3 kg' }).heat.value).toBeCloseTo(8513.7, 1);
    expect(Math.abs(at('-40 degC') / at('-5 degC') - 1)).toBeLessThan(0.002);
  });
  it('rises with the ice and falls as the efficiency rises', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        (ice, share) => {
          const one = freezeDryEnergy({ ice: kg(ice) });
          expectRising(one);
          expect(freezeDryEnergy({ ice: kg(ice * 2) }).energy.low.value).toBeGreaterThan(one.energy.low.value);
          const at = (efficiency: number) => freezeDryEnergy({ ice: kg(ice), efficiency }).energy.likely.value;
          expect(at(share)).toBeGreaterThan(at(2 * share));
        },
      ),
    );
  });
  it('refuses what cannot be', () => {
    expectError(() => freezeDryEnergy({ ice: '-1 kg' }), 'OUT_OF_RANGE', 'ice');
    expectError(() => freezeDryEnergy({ ice: '1 kg', efficiency: 0 }), 'OUT_OF_RANGE', 'efficiency');
    expectError(() => freezeDryEnergy({ ice: '1 kg', temperature: '5 degC' }), 'OUT_OF_RANGE', 'temperature');
  });
});
