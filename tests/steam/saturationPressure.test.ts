import fc from 'fast-check';
import { expect, test } from 'vitest';
import { saturationPressure, saturationTemperature } from '../../src/steam/index';
import { HIGHEST_PRESSURE, LOWEST_PRESSURE, saturationKelvin, saturationPascals } from '../../src/steam/saturation';
import { codeAndPath as errorOf } from '../helpers/errors';

test('IAPWS-IF97 Tables 35 and 36 to nine digits', () => {
  const digits = (value: number): number => Number(value.toPrecision(9));
  expect(digits(saturationPascals(300) / 1e6)).toBe(0.353658941e-2);
  expect(digits(saturationPascals(600) / 1e6)).toBe(0.123443146e2);
  expect(digits(saturationKelvin(0.1e6))).toBe(372.755919);
  expect(digits(saturationKelvin(10e6))).toBe(584.149488);
});

test('the two equations are one line', () => {
  fc.assert(
    fc.property(fc.double({ min: 273.15, max: 647.096, noNaN: true }), (kelvin) => {
      expect(saturationKelvin(saturationPascals(kelvin))).toBeCloseTo(kelvin, 7);
    }),
  );
});

test('pressure rises with temperature', () => {
  fc.assert(
    fc.property(fc.double({ min: 273.15, max: 647, noNaN: true }), (kelvin) => {
      expect(saturationPascals(kelvin + 0.01)).toBeGreaterThan(saturationPascals(kelvin));
    }),
  );
});

test('the ends of the range can be handed back and forth', () => {
  for (const temperature of ['273.15 K', '32 degF', '647.096 K'] as const) {
    const { pressure } = saturationPressure({ temperature });
    expect(saturationTemperature({ pressure }).temperature.value).toBeTypeOf('number');
  }
  for (const value of [LOWEST_PRESSURE, HIGHEST_PRESSURE]) {
    const { temperature } = saturationTemperature({ pressure: { value, unit: 'Pa' } });
    expect(saturationPressure({ temperature }).pressure.value).toBeCloseTo(value / 1000, 3);
  }
});

test("answers are in the asker's kind of unit", () => {
  expect(saturationPressure({ temperature: '240 degF' }).pressure.unit).toBe('psi');
  expect(saturationPressure({ temperature: '115 degC' }).pressure.unit).toBe('kPa');
  expect(saturationTemperature({ pressure: '25 psi' }).temperature.unit).toBe('degF');
  expect(saturationTemperature({ pressure: '29.9 inHg' }).temperature.unit).toBe('degF');
  expect(saturationTemperature({ pressure: '1 atm' }).temperature.unit).toBe('degC');
});

test('the answer names equation and table', () => {
  expect(saturationPressure({ temperature: '100 degC' }).basis[0]).toMatchObject({
    source: 'iapws-r7-97',
    locator: 'equation 30, Table 34',
  });
  expect(saturationTemperature({ pressure: '1 atm' }).basis[0]).toMatchObject({ locator: 'equation 31, Table 34' });
});

test.each([
  [() => saturationPressure({ temperature: '273.149 K' }), ['OUT_OF_RANGE', 'temperature']],
  [() => saturationPressure({ temperature: '647.097 K' }), ['OUT_OF_RANGE', 'temperature']],
  [() => saturationPressure({ temperature: '-5 degC' }), ['OUT_OF_RANGE', 'temperature']],
  [() => saturationPressure({} as never), ['MISSING', 'temperature']],
])('outside its range it refuses, case %#', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});
