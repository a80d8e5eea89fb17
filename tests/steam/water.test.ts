import fc from 'fast-check';
import { expect, test } from 'vitest';
import { latentHeat, waterDensity } from '../../src/steam/index';
import { liquidDensity, saturatedLiquidDensity, saturatedSteamDensity, vaporizationHeat } from '../../src/steam/water';
import { codeAndPath as errorOf } from '../helpers/errors';

test('IAPWS SR6-08(2011) Table 8 to nine digits', () => {
  expect(Number(liquidDensity(260).toPrecision(9))).toBe(997.06836);
  expect(Number(liquidDensity(298.15).toPrecision(9))).toBe(997.047013);
});

test('the slope of the volume, SR6-08 Table 8', () => {
  for (const [kelvin, slope] of [
    [260, -3.86550941e-7],
    [298.15, 2.58054178e-7],
  ] as const) {
    const step = 0.001;
    const rise = (1 / liquidDensity(kelvin + step) - 1 / liquidDensity(kelvin - step)) / (2 * step);
    expect(rise / slope).toBeCloseTo(1, 6);
  }
});

test('IAPWS SR1-86(1992) Table 1', () => {
  expect(Number(saturatedLiquidDensity(273.16).toPrecision(6))).toBe(999.789);
  expect(Number(saturatedLiquidDensity(373.1243).toPrecision(6))).toBe(958.365);
  expect(Number(saturatedSteamDensity(273.16).toPrecision(6))).toBe(0.00485426);
  expect(Number(saturatedSteamDensity(373.1243).toPrecision(6))).toBe(0.597586);
});

test('the two density equations meet', () => {
  expect(Math.abs(liquidDensity(375.15) - saturatedLiquidDensity(375.15))).toBeLessThan(0.003);
});

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
  [() => waterDensity({ temperature: '-21 degC' }), ['OUT_OF_RANGE', 'temperature']],
  [() => waterDensity({ temperature: '151 degC' }), ['OUT_OF_RANGE', 'temperature']],
  [() => waterDensity({ temperature: '20' as never }), ['NOT_A_QUANTITY', 'temperature']],
  [() => latentHeat({ temperature: '-1 degC' }), ['OUT_OF_RANGE', 'temperature']],
  [() => latentHeat({ temperature: '20 degC', mass: '0 kg' }), ['OUT_OF_RANGE', 'mass']],
])('outside its range it refuses, case %#', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});
