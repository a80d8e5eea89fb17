import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hours, kilowattHours, price, volume, weight, weights } from '../../src/sheet/amounts';

describe('weights', () => {
  test.each([
    [{ value: 2.1875, unit: 'lb' }, 'nearest', '2 lb 3 oz'],
    [{ value: 2.19, unit: 'lb' }, 'up', '2 lb 4 oz'],
    [{ value: 0.4, unit: 'lb' }, 'nearest', '6 1/2 oz'],
    [{ value: 0.4, unit: 'lb' }, 'down', '6 1/4 oz'],
    [{ value: 1, unit: 'lb' }, 'nearest', '1 lb'],
    [{ value: 0.75, unit: 'lb' }, 'nearest', '12 oz'],
    [{ value: 42.1, unit: 'lb' }, 'up', '42 1/2 lb'],
    [{ value: 0.3401, unit: 'kg' }, 'down', '340 g'],
    [{ value: 81.7, unit: 'g' }, 'down', '81 g'],
    [{ value: 1254, unit: 'g' }, 'up', '1.26 kg'],
    [{ value: 21.43, unit: 'kg' }, 'nearest', '21.4 kg'],
  ] as const)('%j %s', (mass, rounding, text) => expect(weight(mass, rounding)).toBe(text));
  test.each([
    [14, 15, 'oz', '14 to 15 oz'],
    [31.6, 36.9, 'lb', '31 1/2 to 37 lb'],
    [5, 10.1, 'lb', '5 lb to 10 lb 2 oz'],
    [2, 2, 'lb', '2 lb'],
    [0.6, 1.2, 'kg', '600 g to 1.2 kg'],
  ] as const)('%f to %f %s', (low, high, unit, text) =>
    expect(weights({ low: { value: low, unit }, high: { value: high, unit } })).toBe(text),
  );
});
test.each([
  [{ value: 27, unit: 'cup' }, 'nearest', '6 3/4 quarts'],
  [{ value: 2.26, unit: 'cup' }, 'up', '2 3/8 cups'],
  [{ value: 0.375, unit: 'cup' }, 'nearest', '6 tbsp'],
  [{ value: 0.5, unit: 'cup' }, 'nearest', '1/2 cup'],
  [{ value: 2.5, unit: 'tbsp' }, 'nearest', '2 1/2 tbsp'],
  [{ value: 1, unit: 'tsp' }, 'nearest', '1 tsp'],
  [{ value: 7.6, unit: 'fl oz' }, 'down', '7 1/2 fl oz'],
  [{ value: 532.3, unit: 'mL' }, 'up', '535 mL'],
  [{ value: 4.12, unit: 'L' }, 'down', '4.1 L'],
] as const)('volume %j %s', (amount, rounding, text) => expect(volume(amount, rounding)).toBe(text));

test('what is rounded up is never less, what is rounded down never more', () => {
  const number = (text: string) => Number(text.split(' ')[0]);
  fc.assert(
    fc.property(fc.double({ min: 1, max: 90_000, noNaN: true }), (grams) => {
      const scale = (text: string) => number(text) * (text.endsWith('kg') ? 1000 : 1);
      expect(scale(weight({ value: grams, unit: 'g' }, 'up'))).toBeGreaterThanOrEqual(grams - 1e-9);
      expect(scale(weight({ value: grams, unit: 'g' }, 'down'))).toBeLessThanOrEqual(grams + 1e-9);
      const litres = (text: string) => number(text) * (text.endsWith('mL') ? 1 : 1000);
      expect(litres(volume({ value: grams, unit: 'mL' }, 'up'))).toBeGreaterThanOrEqual(grams - 1e-9);
    }),
  );
});
test('prices and the clock', () => {
  expect(price({ value: 3, unit: 'EUR' })).toBe('3.00 EUR');
  expect(hours(361)).toBe('6 1/4 h');
});
test('energy in kilowatt-hours, its ends rounded outwards', () => {
  const kWh = (value: number) => ({ value, unit: 'kWh' as const });
  expect(kilowattHours({ low: kWh(3.49), likely: kWh(5.64), high: kWh(9.71) })).toBe('3.4 to 9.8 kWh, likely 5.6');
  expect(kilowattHours({ low: kWh(9.99), likely: kWh(28.4), high: kWh(46.1) })).toBe('9.9 to 47 kWh, likely 28');
  expect(kilowattHours({ low: kWh(2), likely: kWh(2), high: kWh(2) })).toBe('2 kWh');
  const joules = { value: 3_600_000, unit: 'J' as const };
  expect(kilowattHours({ low: joules, likely: joules, high: joules })).toBe('1 kWh');
});
