import { expect, it } from 'vitest';
import { frostPoint } from '../../src/heat/index';
import { expectError } from '../helpers/errors';

it('reads the cold of the ice from the gauge of a freeze-dryer', () => {
  // 500 mTorr is 66.7 Pa: between the -25 and the -20 degC of IAPWS R14-08 (63.2736 and 103.239 Pa)
  const { temperature } = frostPoint({ pressure: '66.66 Pa' });
  expect(temperature.unit).toBe('degC');
  expect(temperature.value).toBeGreaterThan(-25);
  expect(temperature.value).toBeLessThan(-24);
});
it('is refused where ice melts, and below the formula', () => {
  expectError(() => frostPoint({ pressure: '612 Pa' }), 'OUT_OF_RANGE', 'pressure');
  expectError(() => frostPoint({ pressure: { value: 1e-60, unit: 'Pa' } }), 'OUT_OF_RANGE', 'pressure');
});
