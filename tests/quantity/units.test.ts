import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { exactIn } from '../../src/quantity/scale';
import { DIMENSIONS, findUnit, pluralOf, UNITS, unitsOf } from '../../src/quantity/units';
import { Decimal } from '../helpers/oracle/decimal';

interface Factor {
  unit: string;
  to: string;
  factor: string;
  exact: boolean;
}
const file = new URL('../../data/quantity/unit-factors.json', import.meta.url);
const { rows } = JSON.parse(readFileSync(file, 'utf8')) as { rows: Factor[] };
/** Two rows are constants that units are made from, not units. */
const CONSTANTS = ['standard gravity', 'pound-force'];
const units = rows.filter(({ unit }) => !CONSTANTS.includes(unit));

describe('NIST SP 811 appendix B and Handbook 44 appendix C, every row as exact decimals', () => {
  test('all rows are here', () => expect(rows).toHaveLength(55));

  test.each(units.filter(({ exact }) => exact))('1 $unit is $factor $to exactly', ({ unit, to, factor }) => {
    expect(exactIn({ value: 1, unit }, to).toString()).toBe(new Decimal(factor).toFixed());
  });

  test.each(units.filter(({ exact }) => !exact))(
    '1 $unit is $factor $to to the digits printed',
    ({ unit, to, factor }) => {
      const digits = new Decimal(factor).precision();
      expect(exactIn({ value: 1, unit }, to).toDigits(digits).toString()).toBe(new Decimal(factor).toFixed());
    },
  );

  test('the pound-force behind the psi is the pound times standard gravity', () => {
    const pound = new Decimal('0.45359237').times('9.80665');
    expect(pound.toFixed()).toBe(rows.find(({ unit }) => unit === 'pound-force')?.factor);
    expect(exactIn({ value: 1, unit: 'psi' }, 'Pa').toDigits(30).toString()).toBe(
      pound.div('0.0254').div('0.0254').toSignificantDigits(30).toFixed(),
    );
  });
});

describe('kitchen relations hold without remainder', () => {
  test.each([
    ['cup', 'tsp', 48],
    ['tbsp', 'tsp', 3],
    ['cup', 'tbsp', 16],
    ['gallon', 'fl oz', 128],
    ['quart', 'pint', 2],
    ['bushel', 'peck', 4],
    ['bushel', 'in3', 2150.42],
    ['gallon', 'in3', 231],
    ['ft3', 'in3', 1728],
    ['lb', 'oz', 16],
    ['short ton', 'lb', 2000],
    ['imperial pint', 'imperial fl oz', 20],
    ['ft', 'in', 12],
    ['day', 'h', 24],
    ['kWh', 'kJ', 3600],
  ])('1 %s is %s %d', (from, to, size) => {
    expect(exactIn({ value: 1, unit: from }, to).toNumber()).toBe(size);
  });
});

describe('spellings', () => {
  test('no spelling stands for two units', () => {
    const seen = new Map<string, string>();
    for (const dimension of DIMENSIONS) {
      if (dimension === 'temperatureDifference') continue; // asked for by name only
      for (const [unit, definition] of Object.entries(UNITS[dimension])) {
        const plural = 'plural' in definition ? [definition.plural as string] : [];
        for (const name of new Set([unit, ...plural, ...(definition.spellings as readonly string[])])) {
          expect(seen.get(name) ?? unit, name).toBe(unit);
          seen.set(name, unit);
        }
      }
    }
  });

  test('a US and an imperial measure never share one', () => {
    for (const name of ['pint', 'pt', 'quart', 'gallon', 'gill', 'cup', 'fl oz', 'fluid ounce', 'bushel']) {
      expect(findUnit(name)?.unit).not.toContain('imperial');
      expect(findUnit(`imperial ${name === 'pt' ? 'pint' : name}`)?.unit).toContain('imperial');
    }
    expect(findUnit('UK pint')?.unit).toBe('imperial pint');
    expect(findUnit('US pint')?.unit).toBe('pint');
  });

  test('case and full stops do not matter, unless two units would be one', () => {
    expect(findUnit('LB')?.unit).toBe('lb');
    expect(findUnit('Tbsp.')?.unit).toBe('tbsp');
    expect(findUnit('  fl   oz ')?.unit).toBe('fl oz');
    expect(findUnit('mpa')?.unit).toBe('MPa');
    expect(findUnit('pA')?.unit).toBe('Pa');
    expect(findUnit('furlong')).toBeUndefined();
  });

  test('degF is a temperature, and an interval only where one is asked for', () => {
    expect(findUnit('degF')?.dimension).toBe('temperature');
    expect(findUnit('degF', 'temperatureDifference')?.unit).toBe('delta degF');
    expect(findUnit('lb', 'temperatureDifference')?.unit).toBe('lb');
  });

  test('plurals', () => {
    expect(pluralOf('cup')).toBe('cups');
    expect(pluralOf('lb')).toBe('lb');
    expect(pluralOf('USD')).toBe('USD');
    expect(unitsOf('length')).toContain('in');
  });
});
