import fc from 'fast-check';
import { expect, test } from 'vitest';
import { waterDensity } from '../../src/steam/index';
import { codeAndPath as errorOf } from '../helpers/errors';

test('water is densest near 4 degC and thins out above, without a step', () => {
  const at = (value: number) => waterDensity({ temperature: { value, unit: 'degC' } }).density.value;
  expect(at(3.98)).toBeGreaterThan(at(3));
  expect(at(3.98)).toBeGreaterThan(at(5));
  fc.assert(
    fc.property(fc.double({ min: 4.1, max: 149.9, noNaN: true }), (degrees) => {
      expect(at(degrees + 0.1)).toBeLessThan(at(degrees));
    }),
  );
  expect(at(102) - at(102.01)).toBeGreaterThan(0);
  expect(at(102) - at(102.01)).toBeLessThan(0.02);
});

test('each answer names the equation that gave it', () => {
  const source = (temperature: `${number} degC`) => waterDensity({ temperature }).basis[0]?.source;
  expect(source('20 degC')).toBe('iapws-sr6-08');
  expect(source('102 degC')).toBe('iapws-sr6-08');
  expect(source('102.1 degC')).toBe('iapws-sr1-86');
});

test.each([
  [() => waterDensity({ temperature: '-21 degC' }), ['OUT_OF_RANGE', 'temperature']],
  [() => waterDensity({ temperature: '151 degC' }), ['OUT_OF_RANGE', 'temperature']],
  [() => waterDensity({ temperature: '20' as never }), ['NOT_A_QUANTITY', 'temperature']],
])('outside its range it refuses, case %#', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});
