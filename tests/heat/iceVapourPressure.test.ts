import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { frostPoint, iceVapourPressure } from '../../src/heat/index';
import { expectError } from '../helpers/errors';
import { degC } from './helpers';

it('has a pressure that rises with temperature, and a frost point that undoes it', () => {
  fc.assert(
    fc.property(fc.double({ min: -100, max: -0.1, noNaN: true }), (t) => {
      const { pressure } = iceVapourPressure({ temperature: degC(t) });
      expect(pressure.value).toBeLessThan(iceVapourPressure({ temperature: degC(t + 0.1) }).pressure.value);
      expect(frostPoint({ pressure }).temperature.value).toBeCloseTo(t, 8);
    }),
  );
});
it('is refused where there is none', () => {
  expectError(() => iceVapourPressure({ temperature: '40 K' }), 'OUT_OF_RANGE', 'temperature');
  expectError(() => frostPoint({ pressure: '612 Pa' }), 'OUT_OF_RANGE', 'pressure');
});
