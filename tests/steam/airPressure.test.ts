import fc from 'fast-check';
import { expect, test } from 'vitest';
import { geopotential, standardAirTemperature, standardElevation, standardPressure } from '../../src/steam/atmosphere';
import { airPressure } from '../../src/steam/index';
import { codeAndPath as errorOf } from '../helpers/errors';

// U.S. Standard Atmosphere 1976, Part 4 Table I, rows by geopotential height
test.each([
  [0, 101325, 0.5],
  [1000, 89874.6, 0.05],
  [5000, 54019.9, 0.05],
  [11000, 22632, 0.5],
])('the formula gives the printed pressure at geopotential height %d m', (height, printed, tolerance) => {
  const elevation = (6356766 * height) / (6356766 - height);
  expect(geopotential(elevation)).toBeCloseTo(height, 6);
  expect(Math.abs(standardPressure(elevation) - printed)).toBeLessThan(tolerance);
});

// ASHRAE Handbook Fundamentals 2017, Table 1, past the elevations that the library serves (height as geopotential)
test.each([
  [20000, 6.758, -12.3],
  [30000, 4.371, -47.8],
])('the formula follows the handbook at %d ft', (feet, psi, degF) => {
  const height = feet * 0.3048;
  const elevation = (6356766 * height) / (6356766 - height);
  expect(Math.abs(standardPressure(elevation) / 6894.757293168 - psi)).toBeLessThan(0.02);
  expect((standardAirTemperature(elevation) * 9) / 5 - 459.67).toBeCloseTo(degF, 0);
});

test('a place is geometric: 1,000 m of elevation is less than 1,000 m of geopotential height', () => {
  // recalled row of Table I by geometric height: 89,876 Pa; the geopotential row is 89,874.6 Pa
  expect(airPressure({ elevation: '1000 m' }).pressure.value).toBeCloseTo(89.8763, 3);
});

test('pressure falls all the way up, and the height is found again', () => {
  fc.assert(
    fc.property(fc.double({ min: -500, max: 4999, noNaN: true }), (elevation) => {
      expect(standardPressure(elevation + 1)).toBeLessThan(standardPressure(elevation));
      expect(standardElevation(standardPressure(elevation))).toBeCloseTo(elevation, 5);
    }),
  );
});

test('the answer says where it comes from and that the weather moves it', () => {
  const answer = airPressure({ elevation: '3,400 ft' });
  expect(answer.pressure.unit).toBe('kPa');
  expect(answer.basis).toEqual([expect.objectContaining({ source: 'ussa-1976', kind: 'equation' })]);
  expect(answer.cautions.map(({ id }) => id)).toEqual(['weather-moves-boiling']);
});

test.each([
  [{ elevation: '5001 m' }, ['OUT_OF_RANGE', 'elevation']],
  [{ elevation: '-501 m' }, ['OUT_OF_RANGE', 'elevation']],
  [{}, ['MISSING', 'elevation']],
  [{ elevation: '3 psi' }, ['WRONG_DIMENSION', 'elevation']],
  [{ elevation: 300 }, ['WRONG_TYPE', 'elevation']],
  [{ elevation: '300 m', temperature: '20 degC' }, ['CONTRADICTION', 'temperature']],
])('%j is refused', (input, error) => {
  expect(errorOf(() => airPressure(input as never))).toEqual(error);
});

test('the handbook row, read backwards', () => {
  // ASHRAE Handbook chapter 1: a station at 105 m and 17.19 degC with 101,226.5 Pa reports 102,484 Pa
  const { pressure } = airPressure({
    seaLevelPressure: '102484 Pa',
    elevation: '105 m',
    temperature: '17.19 degC',
  });
  expect(Math.abs(pressure.value - 101226.5)).toBeLessThan(1);
});

test('a usual report is the standard atmosphere, within 0.1 %', () => {
  for (const elevation of ['0 m', '300 m', '1500 m', '2500 m'] as const) {
    const { pressure } = airPressure({ seaLevelPressure: '101.325 kPa', elevation });
    expect(pressure.value / airPressure({ elevation }).pressure.value).toBeCloseTo(1, 3);
  }
});

test('the answer is in the unit of the report', () => {
  const answer = airPressure({ seaLevelPressure: '30.1 inHg', elevation: '5000 ft' });
  expect(answer.pressure.unit).toBe('inHg');
  expect(answer.basis[0]?.source).toBe('ashrae-hof-2017');
});

test.each([
  [{ seaLevelPressure: '24.9 inHg', elevation: '5000 ft' }, ['OUT_OF_RANGE', 'seaLevelPressure']],
  [{ seaLevelPressure: '29.9 inHg' }, ['MISSING', 'elevation']],
  [{ seaLevelPressure: '29.9 inHg', elevation: '0 ft', temperature: '100 degC' }, ['OUT_OF_RANGE', 'temperature']],
])('%j is refused', (input, error) => {
  expect(errorOf(() => airPressure(input as never))).toEqual(error);
});
