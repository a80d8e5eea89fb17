import { expect, test } from 'vitest';
import * as z from 'zod';
import { DRYER } from '../../src/heat/dryEnergy';
import { figure } from '../../src/heat/needed';
import { convert } from '../../src/quantity/index';
import { checkTables, sourced } from '../helpers/tables';

checkTables('plan', {
  'energy-figures': z.strictObject({
    id: z.string(),
    quantity: z.string(),
    value: z.number().positive(),
    unit: z.enum(['kJ/(kg K)', 'kWh', 'MJ', '']),
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
