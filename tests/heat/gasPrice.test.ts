import { expect, test } from 'vitest';
import { gasPrice } from '../../src/heat/gasPrice';
import { convert } from '../../src/quantity/index';
import { codeText } from '../helpers/errors';

test('a therm is 29.3071 kWh of gas or of propane', () => {
  for (const fuel of ['gas', 'propane'] as const) {
    expect(gasPrice(1.5, { value: 1, unit: 'therm' }, fuel).perKwh).toBeCloseTo(1.5 / 29.3071, 6);
    expect(gasPrice(0.2, { value: 2, unit: 'kWh' }, fuel).perKwh).toBeCloseTo(0.1, 12);
  }
});
test('propane by hand: 91,333 Btu a gallon is 26.767 kWh; 49,700 kJ a kg is 13.806 kWh', () => {
  expect(gasPrice(3, { value: 1, unit: 'gallon' }, 'propane').perKwh).toBeCloseTo(3 / 26.7673, 5);
  expect(gasPrice(3, { value: 1, unit: 'kg' }, 'propane').perKwh).toBeCloseTo(3 / 13.8056, 5);
  expect(gasPrice(20, { value: 20, unit: 'lb' }, 'propane').perKwh).toBeCloseTo(1 / 6.26209, 5);
  expect(gasPrice(1, { value: 1, unit: 'L' }, 'propane').perKwh).toBeCloseTo(3.785411784 / 26.7673, 5);
});
test('the two figures agree within 2 % at the liquid weight of half a kg to the liter', () => {
  const [liter, kilogram] = [{ value: 1, unit: 'L' } as const, { value: 1, unit: 'kg' } as const];
  const density = gasPrice(1, kilogram, 'propane').perKwh / gasPrice(1, liter, 'propane').perKwh;
  expect(density).toBeGreaterThan(0.5);
  expect(density).toBeLessThan(0.52);
  expect(convert('1 therm', 'kWh').value).toBeCloseTo(29.3071, 4);
});
test('each says where the heat of the gas comes from', () => {
  const source = (unit: 'therm' | 'gallon' | 'lb') =>
    gasPrice(1, { value: 1, unit } as never, 'propane').basis.map((each) => each.source);
  expect(source('therm')).toEqual(['nist-sp811']);
  expect(source('gallon')).toEqual(['cfr16-305']);
  expect(source('lb')).toEqual(['cga-b149-2']);
});
test('gas of the main is not sold by weight or as a liquid', () => {
  const wrong = () => gasPrice(1, { value: 1, unit: 'lb' }, 'gas', 'kitchen.utilities.gasPer');
  expect(codeText(wrong)).toBe('WRONG_DIMENSION kitchen.utilities.gasPer');
});
