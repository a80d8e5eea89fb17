import { describe, expect, test } from 'vitest';
import { measureIn, spanText } from '../../src/sheet/measure';

const [us, metric] = [measureIn('us'), measureIn('metric')];
const lb = (value: number) => ({ value, unit: 'lb' }) as const;
const kg = (value: number) => ({ value, unit: 'kg' }) as const;

describe('a batch as a cook weighs it, never less than it is', () => {
  test.each([
    [lb(40.2), '41 lb'],
    [lb(21.6), '22 lb'],
    [lb(6.1), '6 1/2 lb'],
    [lb(2.3), '2 1/2 lb'],
    [lb(0.9037), '15 oz'],
    [lb(14.001), '14 lb'],
    [kg(10), '22 1/2 lb'],
  ])('%j: %s', (mass, text) => expect(us.batch(mass)).toBe(text));
  test.each([
    [kg(12.2), '12.5 kg'],
    [kg(4.03), '4.1 kg'],
    [kg(0.55), '550 g'],
    [lb(2.2046226218), '1 kg'],
  ])('%j: %s', (mass, text) => expect(metric.batch(mass)).toBe(text));
});
test('volumes, lengths, temperatures, pressures and elevations in either', () => {
  expect(us.volume({ value: 1, unit: 'L' })).toBe('4 1/4 cups');
  expect(metric.volume({ value: 2, unit: 'cup' })).toBe('475 mL');
  expect(metric.length({ value: 0.5, unit: 'in' })).toBe('1/2 in (13 mm)');
  expect(us.temperature({ value: 60, unit: 'degC' })).toBe('140 °F');
  expect(metric.temperature({ value: 140, unit: 'degF' })).toBe('60 °C');
  // never less than the table has it
  expect(metric.pressure({ value: 10, unit: 'psi' })).toBe('10 psi (69 kPa)');
  expect(us.elevation({ value: 500, unit: 'm' })).toBe('1,640 ft');
});
test.each([
  [undefined, { value: 21, unit: 'day' }, '3 weeks'],
  [{ value: 240, unit: 'day' }, { value: 365, unit: 'day' }, '8 to 12 months'],
  [{ value: 7, unit: 'day' }, { value: 10, unit: 'day' }, '7 to 10 days'],
  [undefined, { value: 30, unit: 'h' }, '1 days'],
  [undefined, { value: 8, unit: 'h' }, '8 h'],
] as const)('%j to %j: %s', (low, high, text) => expect(spanText(low, high)).toBe(text));
