import { describe, expect, it, test } from 'vitest';
import * as z from 'zod';
import { DRYER } from '../../src/heat/dryEnergy';
import { dryingHeat, iceVapourPressure } from '../../src/heat/index';
import { figure } from '../../src/heat/needed';
import { convert } from '../../src/quantity/index';
import { latentHeat as steamLatentHeat } from '../../src/steam/index';
import { checkTables, readTable, sourced } from '../helpers/tables';

const ends = z.tuple([z.number(), z.number()]);

checkTables('heat', {
  'energy-figures': z.strictObject({
    id: z.string(),
    quantity: z.string(),
    value: z.number().positive(),
    unit: z.enum(['kJ/(kg K)', 'kWh', 'MJ', '']),
    ...sourced,
  }),
  'ice-formulas': z.strictObject({
    quantity: z.string(),
    formula: z.string(),
    Tt_K: z.number().optional(),
    pt_Pa: z.number().optional(),
    a: z.array(z.number()).optional(),
    b: z.array(z.number()).optional(),
    range_K: ends.optional(),
    check: z.strictObject({ T_K: z.number(), p_Pa: z.number() }).optional(),
    ...sourced,
  }),
  ice: z.strictObject({
    t_degC: z.number(),
    p_IAPWS_Pa: z.number(),
    p_MurphyKoop_Pa: z.number(),
    dHsub_MurphyKoop_kJ_per_kg: z.number(),
    dHsub_IAPWS_kJ_per_kg: z.number().nullable(),
    ...sourced,
  }),
  'drying-constants': z.strictObject({
    quantity: z.string(),
    value: z.number().positive(),
    unit: z.string(),
    ...sourced,
  }),
  'water-vaporization': z.strictObject({
    t_degC: z.number(),
    pSat_kPa: z.number(),
    hVap_kJ_per_kg: z.number(),
    ...sourced,
  }),
});

test('the range of dryers spans what is printed', () => {
  for (const id of ['dryer-diesel', 'dryer-gas']) {
    expect(figure(id).value).toBeGreaterThan(DRYER.low);
    expect(figure(id).value).toBeLessThan(DRYER.likely);
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
  it('of the latent heats agrees with the printed constants', () => {
    const constant = (start: string) =>
      (readTable('heat', 'drying-constants').rows as { quantity: string; value: number }[]).find(({ quantity }) =>
        quantity.startsWith(start),
      )?.value ?? 0;
    const boiling = (readTable('heat', 'water-vaporization').rows as { t_degC: number; hVap_kJ_per_kg: number }[]).find(
      ({ t_degC }) => t_degC === 100,
    );
    expect(Math.abs((boiling?.hVap_kJ_per_kg ?? 0) / constant('latent heat of vaporization') - 1)).toBeLessThan(1e-3);
    const cold = (readTable('heat', 'ice').rows as { t_degC: number; dHsub_IAPWS_kJ_per_kg: number }[]).find(
      ({ t_degC }) => t_degC === -20,
    );
    expect(Math.abs((cold?.dHsub_IAPWS_kJ_per_kg ?? 0) - constant('latent heat of sublimation'))).toBeLessThan(0.5);
    // every row, and between the rows, against the equations of the saturation line, IAPWS SR1-86
    const produce = (t: number) =>
      dryingHeat({
        fresh: '1 kg',
        moisture: 0.5,
        targetMoisture: 0,
        start: { value: t, unit: 'degC' },
        temperature: { value: t, unit: 'degC' },
      }).heat.value * 2;
    for (let t = 20; t <= 100; t += 2.5) {
      const { energy: heat } = steamLatentHeat({ temperature: { value: t, unit: 'degC' } });
      expect(Math.abs(produce(t) - heat.value)).toBeLessThan(0.25);
    }
  });
});
