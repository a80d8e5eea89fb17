import { expect, test } from 'vitest';
import { saturationTemperature } from '../../src/steam/index';
import { codeAndPath as errorOf } from '../helpers/errors';

test.each([
  [() => saturationTemperature({ pressure: '611.2 Pa' }), ['OUT_OF_RANGE', 'pressure']],
  [() => saturationTemperature({ pressure: '22.065 MPa' }), ['OUT_OF_RANGE', 'pressure']],
  [() => saturationTemperature({ pressure: '-1 psi' }), ['OUT_OF_RANGE', 'pressure']],
  [() => saturationTemperature({ pressure: { value: Number.NaN, unit: 'kPa' } }), ['OUT_OF_RANGE', 'pressure']],
])('outside its range it refuses, case %#', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});
