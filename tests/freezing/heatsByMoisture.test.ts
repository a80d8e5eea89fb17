import { describe, expect, test } from 'vitest';
import { heatsByMoisture } from '../../src/freezing/heatsByMoisture';
import { correlation, THERMAL_TEXTBOOK, THERMAL_VEGETABLES } from '../../src/freezing/tables';

describe('heats by moisture', () => {
  // Earle, Appendix 7, apple of 84 % water
  test('an apple: 3.654 and 1.898 kJ/(kg K), 281.4 kJ/kg', () => {
    const { above, below, latent, basis } = heatsByMoisture(0.84);
    expect([above, below, latent].map((value) => Number(value.toFixed(3)))).toEqual([3.654, 1.898, 281.4]);
    expect(basis.map(({ locator }) => locator)).toEqual(['Appendix 7', 'Appendix 7', 'Appendix 7']);
  });

  test('pure water freezes with 335 kJ/kg, dry matter with none', () => {
    expect(heatsByMoisture(1).latent).toBe(335);
    expect(heatsByMoisture(0)).toMatchObject({ latent: 0, above: 0.84, below: 0.84 });
  });

  // handbook, Table 3: the latent heat is 334 kJ/kg times the share of water, to within rounding
  test.each(THERMAL_VEGETABLES)('latent heat of $printed', ({ water, latentHeat }) => {
    expect(Math.abs(334 * (water / 100) - latentHeat)).toBeLessThan(1);
    expect(Math.abs(heatsByMoisture(water / 100).latent - latentHeat)).toBeLessThan(2);
    expect(correlation('siebel-latent').formula).toBe('L = 334 w');
  });

  // the textbook's own figures against its own equations; fish is an oddity of the source
  test.each(THERMAL_TEXTBOOK.filter(({ food }) => food !== 'fish'))('heats of $printed', (row) => {
    const { above, below, latent } = heatsByMoisture(row.water / 100);
    expect(Math.abs(latent - row.latentHeat)).toBeLessThan(10);
    expect(Math.abs(above - row.specificHeatAbove)).toBeLessThan(0.2);
    expect(Math.abs(below - row.specificHeatBelow)).toBeLessThan(0.2);
  });

  // Siebel is recalled: his two lines are within a tenth of those of Earle for what is mostly water
  test.each([0.6, 0.7, 0.8, 0.9])('Siebel agrees at %d', (w) => {
    const { above, below } = heatsByMoisture(w);
    expect(Math.abs(0.837 + 3.349 * w - above)).toBeLessThan(0.1);
    expect(Math.abs(0.837 + 1.256 * w - below)).toBeLessThan(0.1);
    expect(correlation('siebel-cp-above').formula).toBe('cp = 0.837 + 3.349 w');
    expect(correlation('siebel-cp-below').formula).toBe('cp = 0.837 + 1.256 w');
  });
});
