import fc from 'fast-check';
import { expect, test } from 'vitest';
import { latentHeat } from '../../src/steam/index';
import { vaporizationHeat } from '../../src/steam/water';
import { codeAndPath as errorOf } from '../helpers/errors';

test('latent heat falls to nothing towards the critical point', () => {
  expect(vaporizationHeat(647) / vaporizationHeat(373.15)).toBeLessThan(0.1);
  fc.assert(
    fc.property(fc.double({ min: 273.16, max: 470, noNaN: true }), (kelvin) => {
      expect(vaporizationHeat(kelvin + 0.5)).toBeLessThan(vaporizationHeat(kelvin));
    }),
  );
});

test('latent heat of a mass, in the units of the mass', () => {
  const one = latentHeat({ temperature: '60 degC' }).energy;
  expect(latentHeat({ temperature: '60 degC', mass: '3 kg' }).energy.value).toBeCloseTo(3 * one.value, 6);
  // 1 kJ/kg = 0.429923 BTU/lb
  const pound = latentHeat({ temperature: '140 degF', mass: '1 lb' }).energy;
  expect(pound.unit).toBe('BTU');
  expect(pound.value).toBeCloseTo(one.value * 0.4299226, 3);
  expect(one.unit).toBe('kJ');
});

test.each([
  [() => latentHeat({ temperature: '-1 degC' }), ['OUT_OF_RANGE', 'temperature']],
  [() => latentHeat({ temperature: '20 degC', mass: '0 kg' }), ['OUT_OF_RANGE', 'mass']],
])('outside its range it refuses, case %#', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});
