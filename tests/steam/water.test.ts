import { expect, test } from 'vitest';
import { liquidDensity, saturatedLiquidDensity, saturatedSteamDensity } from '../../src/steam/water';

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
