import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseAmount } from '../../src/quantity/amount';
import { parseQuantity } from '../../src/quantity/index';
import { parseMoney } from '../../src/quantity/money';
import { parseShare } from '../../src/quantity/share';
import { codeOf, thrownBy } from '../helpers/errors';

describe('parseAmount', () => {
  test.each([
    ['3/8', 0.375],
    ['1 1/2', 1.5],
    ['2⅔', 8 / 3],
    ['⅞', 0.875],
    ['1,000,000', 1_000_000],
    ['1,234.5', 1234.5],
    ['12345.678', 12345.678],
    ['0.125', 0.125],
    ['-½', -0.5],
    ['1 - 1/2', 1.5],
  ])('%s', (text, value) => expect(parseAmount(text)?.toNumber()).toBeCloseTo(value, 15));

  test.each(['', 'a', '1/0', '1 2', '1/2/3', '½½', '1e3', '--1', '1.2.3', '2.', '٣', '1'.repeat(101)])(
    '%s is no number',
    (text) => expect(parseAmount(text)).toBeUndefined(),
  );

  test.each(['1,000', '1.250', '0,500', '1,5', '1,00', '1.234,5', '1,250 1/2'])('%s is not read silently', (text) =>
    expect(codeOf(() => parseAmount(text))).toBe('NOT_A_QUANTITY'),
  );

  test('a long gap costs no time: each sign is looked at once', () => {
    // a pattern that backtracks needs the square of this: half a minute
    for (const gap of [' ', '\t', '1', '1,', '½']) {
      expect(parseAmount(`1${gap.repeat(1e5)}1/2`)).toBeUndefined();
      expect(codeOf(() => parseQuantity(`1${gap.repeat(1e5)}1/2 cup`))).toBe('NOT_A_QUANTITY');
      expect(codeOf(() => parseMoney(`1${gap.repeat(1e5)} USD`))).toBe('NOT_A_QUANTITY');
      expect(codeOf(() => parseShare(`1${gap.repeat(1e5)} %`))).toBe('NOT_A_QUANTITY');
    }
  });

  test('what is no string is the one error', () => {
    for (const given of [undefined, null, 5, {}, [], Symbol('x')]) {
      expect(codeOf(() => parseAmount(given as string))).toBe('WRONG_TYPE');
    }
  });
});

describe('a number that two readers would read differently', () => {
  test.each([
    ['1,250 kg', '"1.25 kg" or "1250 kg"'],
    ['1.250 kg', '"1250 kg" or "1.25 kg"'],
    ['1.036 m', '"1036 m" or "1.0360 m"'],
    ['1,036 m', '"1.0360 m" or "1036 m"'],
    ['0,500 L', 'write "0.5 L"'],
    ['0,500 cup', 'write "0.5 cup"'],
    ['1,5 kg', 'write "1.5 kg"'],
    ['1.234,5 g', 'write "1234.5 g"'],
    ['1,500 mL', '"1.5 mL" or "1500 mL"'],
    ['2 lb 1,250 g', '"1.25 g" or "1250 g"'],
  ])('%s shows both', (text, message) => {
    const { code, message: shown } = thrownBy(() => parseQuantity(text));
    expect(code).toBe('NOT_A_QUANTITY');
    expect(shown).toContain(message);
    expect(shown).toContain(JSON.stringify(text));
  });

  test('what it shows can be read', () => {
    const digits = fc.stringMatching(/^1[.,][0-9]{3}$/);
    fc.assert(
      fc.property(digits, fc.constantFrom('kg', 'mL', 'm'), (text, unit) => {
        let shown: string[] = [];
        try {
          parseQuantity(`${text} ${unit}`);
        } catch (error) {
          shown = [...String(error).matchAll(/"([^"]+)"/g)].map(([, quoted]) => quoted ?? '').slice(0, 2);
          const [comma, point] = shown.map((each) => parseQuantity(each).value);
          expect([comma, point]).toEqual([
            Number(text.replace(/\./g, '').replace(',', '.')),
            Number(text.replace(/,/g, '')),
          ]);
        }
        expect(shown).toHaveLength(2);
      }),
    );
  });

  test.each([
    ['3,400 ft', 3400],
    ['1,250 lb', 1250],
    ['1.125 in', 1.125],
    ['0.500 L', 0.5],
    ['1,000,000 mL', 1_000_000],
    ['1,234.5 g', 1234.5],
    ['101.325 kPa', 101.325],
    ['121.111 degC', 121.111],
    ['3.955 kg', 3.955],
    ['1.050 g/mL', 1.05],
    ['1,500 W', 1500],
  ])('%s has one reading', (text, value) => expect(parseQuantity(text).value).toBe(value));

  test('money and shares', () => {
    expect(thrownBy(() => parseMoney('1,250 EUR')).message).toContain('"1.25 EUR" or "1250 EUR"');
    expect(codeOf(() => parseMoney('1.250 EUR'))).toBe('NOT_A_QUANTITY');
    expect(codeOf(() => parseMoney('24,50 EUR'))).toBe('NOT_A_QUANTITY');
    expect(parseMoney('1,250 USD')).toEqual({ value: 1250, unit: 'USD' });
    expect(codeOf(() => parseShare('12,5 %'))).toBe('NOT_A_QUANTITY');
    expect(codeOf(() => parseShare('0,500 %'))).toBe('NOT_A_QUANTITY');
    expect(codeOf(() => parseShare('1.250 %', '', 100))).toBe('NOT_A_QUANTITY');
    expect(parseShare('12.345 %')).toBe(0.12345);
  });

  // The two readers, said again in their own words: groups of three behind one sign, the part of one behind the other.
  const reader = (group: string, point: string) => (text: string) => {
    const [whole = '', part, ...more] = text.split(point);
    if (more.length > 0 || part === '' || /\D/.test(part ?? '')) return undefined;
    const groups = whole.split(group);
    const grouped = groups.length > 1;
    if (grouped && (groups[0] === '0' || groups[0]?.startsWith('0'))) return undefined;
    if (
      groups.some(
        (digits, at) => !/^\d+$/.test(digits) || (grouped && (at === 0 ? digits.length > 3 : digits.length !== 3)),
      )
    )
      return undefined;
    return Number(`${groups.join('')}.${part ?? '0'}`);
  };
  const american = reader(',', '.');
  const european = reader('.', ',');
  const digits = fc.stringMatching(/^[0-9]{1,4}([.,][0-9]{1,4}){0,2}$/);
  type Usual = readonly [scale: number, least: number, most: number];
  const USUAL: Readonly<Record<string, Usual>> = {
    g: [1e-3, 1e-3, 2e3],
    kg: [1, 1e-3, 2e3],
    mL: [1e-3, 1e-4, 2e3],
    L: [1, 1e-4, 2e3],
    mm: [1e-3, 1e-4, 9e3],
    m: [1, 1e-4, 9e3],
    kPa: [1, 0.1, 2e3],
    degC: [1, -100, 400],
    min: [1 / 60, 1e-3, 1e5],
    W: [1, 10, 1e5],
    kWh: [1, 1e-3, 1e4],
  };
  const metric = fc.constantFrom(...Object.keys(USUAL));

  test('is never read without an error', () => {
    let refused = 0;
    let read = 0;
    fc.assert(
      fc.property(digits, metric, (text, unit) => {
        const us = american(text);
        const eu = european(text);
        let value: number | undefined;
        try {
          value = parseQuantity(`${text} ${unit}`).value;
        } catch {
          refused += 1;
          return;
        }
        read += 1;
        expect(value).toBeCloseTo(us as number, 9);
        if (eu === undefined || eu === us) return;
        // else the other reading has a size that nobody writes down: in units of kg, L, m, kPa, degC, h, W or kWh
        const [scale, least, most] = USUAL[unit] as Usual;
        expect(eu * scale < least || eu * scale > most, `${text} ${unit}`).toBe(true);
      }),
      { numRuns: 20_000 },
    );
    expect(refused).toBeGreaterThan(1000);
    expect(read).toBeGreaterThan(1000);
  });
});
