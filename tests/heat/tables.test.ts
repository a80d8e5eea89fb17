import { describe, expect, it, test } from 'vitest';
import { iceVapourPressure } from '../../src/heat/index';
import { figure, figureRow, iceFormulaRow, practiceRow, usual } from '../../src/heat/tables';
import { convert } from '../../src/quantity/index';
import { checkTables, readTable } from '../helpers/tables';

checkTables('heat', {
  figures: figureRow(),
  practice: practiceRow(),
  'ice-formulas': iceFormulaRow(),
});

test('each row has its own id, and the ends of what is usual rise', () => {
  for (const name of ['figures', 'practice', 'ice-formulas']) {
    const ids = readTable('heat', name).rows.map((row: { id: string }) => row.id);
    expect(new Set(ids).size).toBe(ids.length);
  }
  for (const { id } of readTable('heat', 'practice').rows as { id: string }[]) {
    const { low, likely, high } = usual(id);
    expect(low).toBeLessThanOrEqual(likely);
    expect(likely).toBeLessThanOrEqual(high);
  }
  expect(() => usual('no-such-row')).toThrow('no-such-row');
});
test('the range of dryers spans what is printed', () => {
  for (const id of ['dryer-diesel', 'dryer-gas']) {
    expect(figure(id).value).toBeGreaterThan(usual('dryer-share').low);
    expect(figure(id).value).toBeLessThan(usual('dryer-share').likely);
  }
});
test('the therm of the units is that of the table, 0.024 % above the one of US gas bills', () => {
  expect(convert('1 therm', 'MJ').value).toBe(figure('therm').value);
  expect(figure('therm').value / figure('therm-us').value - 1).toBeCloseTo(0.00024, 5);
});

describe('a second reading', () => {
  it('of the ice formulas agrees with the others', () => {
    const [sublimation, eq7, eq2, eq8] = readTable('heat', 'ice-formulas').rows as {
      check: { T_K: number; p_Pa: number };
    }[];
    expect(eq7 && eq2 && eq8).toBeTruthy();
    const { T_K, p_Pa } = (sublimation as { check: { T_K: number; p_Pa: number } }).check;
    const at = (kelvin: number) => iceVapourPressure({ temperature: { value: kelvin, unit: 'K' } }).pressure.value;
    expect(Math.abs(at(T_K) / p_Pa - 1)).toBeLessThan(1e-6);
    for (let kelvin = 180; kelvin <= 273; kelvin += 10) {
      const p = at(kelvin);
      // Murphy and Koop (2005): Eq. 7, its simple form Eq. 2, and the frost point Eq. 8
      const full = Math.exp(9.550426 - 5723.265 / kelvin + 3.53068 * Math.log(kelvin) - 0.00728332 * kelvin);
      expect(Math.abs(full / p - 1)).toBeLessThan(1e-3);
      expect(Math.abs(Math.exp(28.9074 - 6143.7 / kelvin) / p - 1)).toBeLessThan(0.02);
      expect((1.814625 * Math.log(p) + 6190.134) / (29.12 - Math.log(p))).toBeCloseTo(kelvin, 1);
    }
  });
});
