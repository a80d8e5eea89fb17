import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gelTemperature } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('8 degF above boiling, 9 for preserves', () => {
  const { temperature, boiling } = gelTemperature({ elevation: '3400 ft' });
  expect(temperature.value - boiling.value).toBeCloseTo(8, 9);
  const preserves = gelTemperature({ elevation: '3400 ft', spread: 'preserves' });
  expect(preserves.temperature.value - preserves.boiling.value).toBeCloseTo(9, 9);
});

test('beside the printed table, within a degree, to 8,000 ft', () => {
  for (let feet = 0; feet <= 8000; feet += 1000) {
    const { temperature, printedLine: printed } = gelTemperature({ elevation: `${feet} ft`, spread: 'jam' });
    expect(Math.abs(temperature.value - (printed?.temperature.value as number))).toBeLessThan(1);
    expect(printed?.elevation).toEqual({ value: feet, unit: 'ft' });
  }
  expect(gelTemperature({ elevation: '9000 ft' }).printedLine).toBeUndefined();
  expect(gelTemperature({ elevation: '4000 ft', spread: 'preserves' }).printedLine).toBeUndefined();
});

test('in degC for metres', () => {
  expect(gelTemperature({ elevation: '0 m' }).temperature).toMatchObject({ unit: 'degC' });
  expect(gelTemperature({ elevation: '1219.2 m' }).printedLine?.temperature.value).toBeCloseTo(100, 9);
});

test('falls as elevation rises', () => {
  fc.assert(
    fc.property(fc.integer({ min: -499, max: 4900 }), (metres) => {
      const at = (value: number) => gelTemperature({ elevation: { value, unit: 'm' } }).temperature.value;
      return at(metres + 100) < at(metres);
    }),
  );
});

test('bad input', () => {
  expect(errorOf(() => gelTemperature({ elevation: '9000 m' }))).toBe('OUT_OF_RANGE elevation');
  expect(errorOf(() => gelTemperature({ elevation: '0 m', spread: 'candy' as never }))).toBe('UNKNOWN_NAME spread');
});
