import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brixFrom, syrupBoilingTemperature } from '../../src/solution/index';
import { boilingTemperature } from '../../src/steam/index';
import { codeText as errorOf } from '../helpers/errors';

test('70 Brix at sea level: 5.0 degC followed, 6.5 by the old handbook, and the range says so', () => {
  const { temperature, temperatureRange: range, rises, boiling, cautions } = syrupBoilingTemperature({ brix: 70 });
  expect(temperature.value).toBeCloseTo(104.96, 2); // Starzak and Peacock
  expect(rises['browne-1912']).toBeCloseTo(6.5, 9);
  expect(rises['batterham-norgate']).toBeCloseTo(6.1, 1);
  expect(range.low).toEqual(temperature);
  expect(range.high.value - boiling.value).toBeCloseTo(6.5, 6);
  expect(cautions).toEqual([]);
});

test('water boils as water does, everywhere', () => {
  const { temperature, temperatureRange: range, cautions } = syrupBoilingTemperature({ brix: 0, elevation: '5000 ft' });
  expect(temperature.unit).toBe('degF');
  expect(temperature.value).toBeCloseTo(boilingTemperature({ elevation: '5000 ft' }).temperature.value, 6);
  expect(range.high.value).toBeCloseTo(range.low.value, 6);
  expect(cautions.length).toBeGreaterThan(0);
});

test('beyond the last Brix of the old table the range goes without it', () => {
  expect(Object.keys(syrupBoilingTemperature({ brix: 83 }).rises)).not.toContain('browne-1912');
});

test('the pressure says the same as the elevation', () => {
  const one = syrupBoilingTemperature({ brix: 65, pressure: '101.325 kPa' }).temperature.value;
  expect(one).toBeCloseTo(syrupBoilingTemperature({ brix: 65 }).temperature.value, 9);
});

test('rises with Brix and falls with elevation; there and back', () => {
  fc.assert(
    fc.property(fc.double({ min: 1.001, max: 93, noNaN: true }), fc.integer({ min: 0, max: 4000 }), (brix, metres) => {
      const elevation = { value: metres, unit: 'm' } as const;
      const here = syrupBoilingTemperature({ brix, elevation }).temperature.value;
      expect(syrupBoilingTemperature({ brix: brix + 1, elevation }).temperature.value).toBeGreaterThan(here);
      expect(
        syrupBoilingTemperature({ brix, elevation: { value: metres + 100, unit: 'm' } }).temperature.value,
      ).toBeLessThan(here);
      expect(brixFrom({ boiling: { value: here, unit: 'degC' }, elevation }).brix).toBeCloseTo(brix, 3);
    }),
    { numRuns: 40 },
  );
});

test('Brix from the thermometer comes with the spread of the sources', () => {
  const { brix, brixRange: range, rise } = brixFrom({ boiling: '220 degF', elevation: '0 ft' });
  expect(rise).toBeCloseTo(4.47, 2);
  expect(brix).toBeCloseTo(68, 0);
  expect(range.low).toBeLessThan(66); // Browne: 65.1
  expect(range.high).toBe(brix);
  // beyond the old table's last rise of 13.9 degC only the equations are left
  expect(brixFrom({ boiling: '118 degC' }).brixRange.low).toBeGreaterThan(85);
});

test('bad input', () => {
  expect(errorOf(() => syrupBoilingTemperature({ brix: 96 }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => syrupBoilingTemperature({ brix: 50, elevation: '9000 m' }))).toBe('OUT_OF_RANGE elevation');
  expect(errorOf(() => syrupBoilingTemperature({ brix: 50, elevation: '0 m', pressure: '90 kPa' }))).toBe(
    'CONTRADICTION pressure',
  );
  expect(errorOf(() => brixFrom({ boiling: '95 degC' }))).toBe('OUT_OF_RANGE boiling');
  expect(errorOf(() => brixFrom({ boiling: '200 degC' }))).toBe('OUT_OF_RANGE boiling');
});
