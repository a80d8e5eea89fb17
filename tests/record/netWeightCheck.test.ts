import { describe, expect, test } from 'vitest';
import { netWeightCheck } from '../../src/record/index';
import { expectError } from '../helpers/errors';

describe('netWeightCheck', () => {
  test('the figures recalled say so', () => {
    for (const market of ['US', 'EU'] as const) {
      const { basis, cautions } = netWeightCheck({ labeled: '340 g', contents: ['340 g'], market });
      expect(basis.some(({ kind }) => kind === 'recalled')).toBe(true);
      expect(cautions.map(({ id }) => id)).toEqual(['recalled', 'not-a-sampling-plan', 'label-law-differs']);
    }
  });
  test('the average, each package, and no offset', () => {
    const low = netWeightCheck({ labeled: '340 g', contents: ['339 g', '340 g'], market: 'US' });
    expect([low.averagePasses, low.individualPasses, low.passes]).toEqual([false, true, false]);
    const one = netWeightCheck({ labeled: '340 g', contents: ['320 g', '400 g'], market: 'US' });
    expect([one.averagePasses, one.individualPasses, one.passes, one.shortPackages]).toEqual([true, false, false, [0]]);
    // just at the least allowed
    expect(netWeightCheck({ labeled: '340 g', contents: ['323.7 g', '400 g'], market: 'US' }).passes).toBe(true);
    expect(netWeightCheck({ labeled: '340 g', contents: ['323.69 g', '400 g'], market: 'US' }).passes).toBe(false);
  });
  test('small labels: a tenth', () => {
    expect(netWeightCheck({ labeled: '1 oz', contents: ['1 oz'], market: 'US' }).allowed).toEqual({
      value: 0.1,
      unit: 'oz',
    });
    expect(netWeightCheck({ labeled: '0.4 kg', contents: ['400 g'], market: 'US' }).allowed).toEqual({
      value: 0.0181,
      unit: 'kg',
    });
  });
  test('EU: one in forty may be short, none twice as short', () => {
    // 500 g: 3 % is 15 g
    const lot = (count: number, short: `${number} g`) =>
      netWeightCheck({
        labeled: '500 g',
        contents: [short, ...Array.from({ length: count - 1 }, () => '502 g' as const)],
        market: 'EU',
      });
    expect(lot(40, '484 g').individualPasses).toBe(true);
    expect(lot(39, '484 g').individualPasses).toBe(false);
    expect(lot(40, '469 g').individualPasses).toBe(false);
    expect(netWeightCheck({ labeled: '250 mL', contents: ['250 mL'], market: 'EU' }).allowed).toEqual({
      value: 9,
      unit: 'mL',
    });
  });
  test('tare comes off each', () => {
    const { averageContents } = netWeightCheck({
      labeled: '340 g',
      contents: ['540 g', '542 g'],
      market: 'EU',
      tare: '200 g',
    });
    expect(averageContents).toEqual({ value: 341, unit: 'g' });
  });
  test('bad input', () => {
    const good = { labeled: '340 g', contents: ['340 g'], market: 'US' } as const;
    expectError(() => netWeightCheck({ ...good, labeled: '8 fl oz' }), 'WRONG_DIMENSION', 'labeled');
    expectError(() => netWeightCheck({ ...good, contents: ['8 fl oz'] }), 'WRONG_DIMENSION', 'contents[0]');
    expectError(
      () => netWeightCheck({ labeled: '8 fl oz', contents: ['8 oz'], market: 'EU' }),
      'WRONG_DIMENSION',
      'contents[0]',
    );
    expectError(() => netWeightCheck({ ...good, labeled: '4 lb' }), 'OUT_OF_RANGE', 'labeled');
    expectError(() => netWeightCheck({ ...good, labeled: '4 g', market: 'EU' }), 'OUT_OF_RANGE', 'labeled');
    expectError(() => netWeightCheck({ ...good, contents: [] }), 'OUT_OF_RANGE', 'contents');
    expectError(() => netWeightCheck({ ...good, tare: '340 g' }), 'CONTRADICTION', 'contents[0]');
  });
});
