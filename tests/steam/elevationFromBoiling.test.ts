import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boilingTemperature } from '../../src/steam/index';
import { codeAndPath as errorOf } from '../helpers/errors';

test('an observed boiling point leads back to the elevation', () => {
  fc.assert(
    fc.property(fc.double({ min: -499, max: 4999, noNaN: true }), (value) => {
      const { temperature } = boilingTemperature({ elevation: { value, unit: 'm' } });
      const { low, likely, high } = boilingTemperature({ temperature }).elevation;
      expect(likely.value).toBeCloseTo(value, 3);
      expect(low.value).toBeLessThan(value);
      expect(high.value).toBeGreaterThan(value);
    }),
  );
});

test('a better thermometer narrows the range, and the unit is kept', () => {
  const rough = boilingTemperature({ temperature: '203 degF' }).elevation;
  const fine = boilingTemperature({ temperature: '203 degF', doubt: '0.2 degF' }).elevation;
  expect(rough.likely.unit).toBe('ft');
  expect(fine.high.value - fine.low.value).toBeLessThan((rough.high.value - rough.low.value) / 4);
  // the range is what the doubt makes of the temperature
  const edge = boilingTemperature({ elevation: rough.high as { value: number; unit: 'ft' } }).temperature.value;
  expect(edge).toBeCloseTo(202, 6);
  expect(boilingTemperature({ temperature: '95 degC' }).elevation.likely.unit).toBe('m');
  expect(boilingTemperature({ temperature: '95 degC' }).cautions.map(({ id }) => id)).toContain('elevation-from-map');
});

test.each([
  [{ temperature: '230 degF' }, ['OUT_OF_RANGE', 'temperature']],
  [{ temperature: '150 degF' }, ['OUT_OF_RANGE', 'temperature']],
  [{ temperature: '203 degF', doubt: '20 degF' }, ['OUT_OF_RANGE', 'doubt']],
  [{ temperature: '203 degF', doubt: '0 degF' }, ['OUT_OF_RANGE', 'doubt']],
])('no elevation boils water so: %j', (input, error) => {
  expect(errorOf(() => boilingTemperature(input as never))).toEqual(error);
});
