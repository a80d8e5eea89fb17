import fc from 'fast-check';
import { expect, test } from 'vitest';
import { airPressure, boilingTemperature } from '../../src/steam/index';
import { codeAndPath as errorOf } from '../helpers/errors';

test('water boils at 99.974 degC at one atmosphere', () => {
  // IAPWS SR1-86(1992) Table 1: 373.1243 K at 101,325 Pa
  expect(boilingTemperature({ pressure: '1 atm' }).temperature.value).toBeCloseTo(99.9743, 3);
});

test('elevation and the pressure there give the same answer', () => {
  fc.assert(
    fc.property(fc.double({ min: -500, max: 5000, noNaN: true }), (value) => {
      const elevation = { value, unit: 'm' } as const;
      const { pressure } = airPressure({ elevation });
      const there = boilingTemperature({ elevation }).temperature.value;
      expect(boilingTemperature({ pressure }).temperature.value).toBeCloseTo(there, 9);
    }),
  );
});

test('the higher the kitchen, the cooler the boil', () => {
  fc.assert(
    fc.property(fc.double({ min: -500, max: 4990, noNaN: true }), (value) => {
      const at = (metres: number) => boilingTemperature({ elevation: { value: metres, unit: 'm' } }).temperature.value;
      expect(at(value + 10)).toBeLessThan(at(value));
    }),
  );
});

test('degrees follow the unit of the question', () => {
  const unit = (input: Parameters<typeof boilingTemperature>[0]) => boilingTemperature(input).temperature.unit;
  expect(unit({ elevation: '5000 ft' })).toBe('degF');
  expect(unit({ elevation: '1.5 km' })).toBe('degC');
  expect(unit({ pressure: '12 psi' })).toBe('degF');
  expect(unit({ pressure: '850 hPa' })).toBe('degC');
});

test('a pressure is warned of weather reports, an elevation of the weather', () => {
  expect(boilingTemperature({ pressure: '1 atm' }).cautions.map(({ id }) => id)).toEqual(['station-pressure']);
  expect(boilingTemperature({ elevation: '0 m' }).cautions.map(({ id }) => id)).toEqual(['weather-moves-boiling']);
  expect(boilingTemperature({ elevation: '0 m' }).basis.map(({ source }) => source)).toEqual([
    'ussa-1976',
    'iapws-r7-97',
  ]);
});

test.each([
  [{}, ['MISSING', 'elevation']],
  [{ elevation: '0 m', pressure: '1 atm' }, ['CONTRADICTION', 'pressure']],
  [{ elevation: '9000 m' }, ['OUT_OF_RANGE', 'elevation']],
  [{ pressure: '0 kPa' }, ['OUT_OF_RANGE', 'pressure']],
])('%j is refused', (input, error) => {
  expect(errorOf(() => boilingTemperature(input as never))).toEqual(error);
});
