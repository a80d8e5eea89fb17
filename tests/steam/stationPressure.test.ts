import { expect, test } from 'vitest';
import { airPressure, stationPressure } from '../../src/steam/index';
import { codeAndPath as errorOf } from '../helpers/errors';

test('the handbook row, read backwards', () => {
  // ASHRAE Handbook chapter 1: a station at 105 m and 17.19 degC with 101,226.5 Pa reports 102,484 Pa
  const { pressure } = stationPressure({
    seaLevelPressure: '102484 Pa',
    elevation: '105 m',
    temperature: '17.19 degC',
  });
  expect(Math.abs(pressure.value - 101226.5)).toBeLessThan(1);
});

test('a usual report is the standard atmosphere, within 0.1 %', () => {
  for (const elevation of ['0 m', '300 m', '1500 m', '2500 m'] as const) {
    const { pressure } = stationPressure({ seaLevelPressure: '101.325 kPa', elevation });
    expect(pressure.value / airPressure({ elevation }).pressure.value).toBeCloseTo(1, 3);
  }
});

test('the answer is in the unit of the report', () => {
  const answer = stationPressure({ seaLevelPressure: '30.1 inHg', elevation: '5000 ft' });
  expect(answer.pressure.unit).toBe('inHg');
  expect(answer.basis[0]?.source).toBe('ashrae-hof-2017');
});

test.each([
  [{ seaLevelPressure: '24.9 inHg', elevation: '5000 ft' }, ['OUT_OF_RANGE', 'seaLevelPressure']],
  [{ seaLevelPressure: '29.9 inHg' }, ['MISSING', 'elevation']],
  [{ seaLevelPressure: '29.9 inHg', elevation: '0 ft', temperature: '100 degC' }, ['OUT_OF_RANGE', 'temperature']],
])('%j is refused', (input, error) => {
  expect(errorOf(() => stationPressure(input as never))).toEqual(error);
});
