import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applianceEnergy } from '../../src/heat/index';
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
  it('refuses what cannot be', () => {
    expectError(() => applianceEnergy({ power: '0 W', time: '1 h' }), 'OUT_OF_RANGE', 'power');
    expectError(() => applianceEnergy({ power: '1 kWh' as never, time: '1 h' }), 'WRONG_DIMENSION', 'power');
    expectError(() => applianceEnergy({ power: '1 kW', time: '1 h', duty: 1.2 }), 'OUT_OF_RANGE', 'duty');
    expectError(() => applianceEnergy({ power: '1 kW' } as never), 'MISSING', 'time');
  });
});
