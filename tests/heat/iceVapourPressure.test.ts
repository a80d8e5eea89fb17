import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { iceVapourPressure } from '../../src/heat/index';
import { expectError } from '../helpers/errors';
import { degC } from './helpers';

it('has a pressure that rises with temperature, and a frost point that undoes it', () => {
  fc.assert(
    fc.property(fc.double({ min: -100, max: -0.1, noNaN: true }), (t) => {
      const { pressure } = iceVapourPressure({ temperature: degC(t) });
      expect(pressure.value).toBeLessThan(iceVapourPressure({ temperature: degC(t + 0.1) }).pressure.value);
      expect(iceVapourPressure({ pressure }).temperature.value).toBeCloseTo(t, 8);
    }),
  );
});
it('is refused where there is none', () => {
  expectError(() => iceVapourPressure({ temperature: '40 K' }), 'OUT_OF_RANGE', 'temperature');
  expectError(() => iceVapourPressure({ pressure: '612 Pa' }), 'OUT_OF_RANGE', 'pressure');
});
it('reads the cold of the ice from the gauge of a freeze-dryer', () => {
  // 500 mTorr is 66.7 Pa: between the -25 and the -20 degC of IAPWS R14-08 (63.2736 and 103.239 Pa)
  const { temperature } = iceVapourPressure({ pressure: '66.66 Pa' });
  expect(temperature.unit).toBe('degC');
  expect(temperature.value).toBeGreaterThan(-25);
  expect(temperature.value).toBeLessThan(-24);
});
it('is refused without either, with both, where ice melts, and below the formula', () => {
  expectError(() => iceVapourPressure({ pressure: '612 Pa' }), 'OUT_OF_RANGE', 'pressure');
  expectError(() => iceVapourPressure({ pressure: { value: 1e-60, unit: 'Pa' } }), 'OUT_OF_RANGE', 'pressure');
  expectError(() => iceVapourPressure({}), 'MISSING', 'temperature');
  expectError(() => iceVapourPressure({ temperature: '-20 degC', pressure: '103 Pa' }), 'CONTRADICTION', 'pressure');
});
