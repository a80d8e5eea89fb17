import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { driedStorage } from '../../src/drying/index';
import { checkCooling, labelFields, lotCode, netWeightCheck, q10, shelfLifeAt, useBy } from '../../src/record/index';
import { expectError } from '../helpers/errors';

describe('netWeightCheck', () => {
  test('the figures recalled say so', () => {
    for (const rule of ['US', 'EU'] as const) {
      const { basis, cautions } = netWeightCheck({ labelled: '340 g', measured: ['340 g'], rule });
      expect(basis.some(({ kind }) => kind === 'recalled')).toBe(true);
      expect(cautions.map(({ id }) => id)).toEqual(['recalled', 'not-a-sampling-plan', 'label-law-differs']);
    }
  });
  test('the average, each package, and no offset', () => {
    const low = netWeightCheck({ labelled: '340 g', measured: ['339 g', '340 g'], rule: 'US' });
    expect([low.averagePasses, low.individualPasses, low.passes]).toEqual([false, true, false]);
    const one = netWeightCheck({ labelled: '340 g', measured: ['320 g', '400 g'], rule: 'US' });
    expect([one.averagePasses, one.individualPasses, one.passes, one.short]).toEqual([true, false, false, [0]]);
    // just at the least allowed
    expect(netWeightCheck({ labelled: '340 g', measured: ['323.7 g', '400 g'], rule: 'US' }).passes).toBe(true);
    expect(netWeightCheck({ labelled: '340 g', measured: ['323.69 g', '400 g'], rule: 'US' }).passes).toBe(false);
  });
  test('small labels: a tenth', () => {
    expect(netWeightCheck({ labelled: '1 oz', measured: ['1 oz'], rule: 'US' }).allowed).toEqual({
      value: 0.1,
      unit: 'oz',
    });
    expect(netWeightCheck({ labelled: '0.4 kg', measured: ['400 g'], rule: 'US' }).allowed).toEqual({
      value: 0.0181,
      unit: 'kg',
    });
  });
  test('EU: one in forty may be short, none twice as short', () => {
    // 500 g: 3 % is 15 g
    const lot = (count: number, short: `${number} g`) =>
      netWeightCheck({
        labelled: '500 g',
        measured: [short, ...Array.from({ length: count - 1 }, () => '502 g' as const)],
        rule: 'EU',
      });
    expect(lot(40, '484 g').individualPasses).toBe(true);
    expect(lot(39, '484 g').individualPasses).toBe(false);
    expect(lot(40, '469 g').individualPasses).toBe(false);
    expect(netWeightCheck({ labelled: '250 mL', measured: ['250 mL'], rule: 'EU' }).allowed).toEqual({
      value: 9,
      unit: 'mL',
    });
  });
  test('tare comes off each', () => {
    const { mean } = netWeightCheck({ labelled: '340 g', measured: ['540 g', '542 g'], rule: 'EU', tare: '200 g' });
    expect(mean).toEqual({ value: 341, unit: 'g' });
  });
  test('bad input', () => {
    const good = { labelled: '340 g', measured: ['340 g'], rule: 'US' } as const;
    expectError(() => netWeightCheck({ ...good, labelled: '8 fl oz' }), 'WRONG_DIMENSION', 'labelled');
    expectError(() => netWeightCheck({ ...good, measured: ['8 fl oz'] }), 'WRONG_DIMENSION', 'measured[0]');
    expectError(
      () => netWeightCheck({ labelled: '8 fl oz', measured: ['8 oz'], rule: 'EU' }),
      'WRONG_DIMENSION',
      'measured[0]',
    );
    expectError(() => netWeightCheck({ ...good, labelled: '4 lb' }), 'OUT_OF_RANGE', 'labelled');
    expectError(() => netWeightCheck({ ...good, labelled: '4 g', rule: 'EU' }), 'OUT_OF_RANGE', 'labelled');
    expectError(() => netWeightCheck({ ...good, measured: [] }), 'OUT_OF_RANGE', 'measured');
    expectError(() => netWeightCheck({ ...good, tare: '340 g' }), 'CONTRADICTION', 'measured[0]');
  });
});

describe('labelFields', () => {
  test.each([
    ['12 oz', 'US', 'Net Wt 12 oz (340 g)'],
    ['1 lb', 'US', 'Net Wt 16 oz (1 lb) 453 g'],
    ['20.5 oz', 'US', 'Net Wt 20.5 oz (1 lb 4.5 oz) 581 g'],
    ['340.9 g', 'US', 'Net Wt 12 oz (340 g)'],
    ['4 lb', 'US', 'Net Wt 64 oz (1814 g)'],
    ['5.25 g', 'US', 'Net Wt 0.18 oz (5.2 g)'],
    ['8 fl oz', 'US', 'Net 8 fl oz (236 mL)'],
    ['340.9 g', 'EU', '340 g'],
  ] as const)('%s for the %s: %s', (net, rule, text) => {
    expect(labelFields({ product: 'Jam', net, rule }).netContents).toBe(text);
  });
  test('never says more than the jar holds', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e4, noNaN: true }), (grams) => {
        const { netContents } = labelFields({ product: 'Jam', net: { value: grams, unit: 'g' }, rule: 'EU' });
        expect(Number.parseFloat(netContents)).toBeLessThanOrEqual(grams * (1 + 1e-11));
        expect(Number.parseFloat(netContents)).toBeGreaterThan(grams - 1);
      }),
    );
  });
  test('all the lines', () => {
    const { lines, basis } = labelFields({
      product: 'Peach jam',
      net: '8 oz',
      ingredients: [
        { name: 'sugar', mass: '1 kg' },
        { name: 'peaches', mass: '3 lb' },
        { name: 'lemon juice', mass: '50 g' },
      ],
      allergens: ['none'],
      keep: 'Keep cool and dark',
      lot: 'A1',
      made: '2026-08-14T10:00',
      useBy: '2027-08-14',
      maker: 'Home kitchen',
      place: 'Hill farm',
    });
    expect(lines).toEqual([
      'Peach jam',
      'Net Wt 8 oz (226 g)',
      'Ingredients: peaches, sugar, lemon juice',
      'Contains: none',
      'Keep cool and dark',
      'Lot A1',
      'Made 2026-08-14',
      'Best used by 2027-08-14',
      'Home kitchen, Hill farm',
    ]);
    expect(basis.some(({ kind }) => kind === 'recalled')).toBe(true);
    expect(labelFields({ product: 'x', net: '8 fl oz', place: 'here' }).maker).toBe('here');
  });
  test('bad input', () => {
    expectError(
      () => labelFields({ product: 'x', net: '8 oz', made: '2026-08-14', useBy: '2026-08-13' }),
      'CONTRADICTION',
      'useBy',
    );
    expectError(() => labelFields({ product: 'x' } as never), 'MISSING', 'net');
  });
});

describe('useBy', () => {
  // University of California: 12 months, 50 to 70 degF; AIB 539: never above 95 degF
  test('jars', () => {
    expect(useBy({ kind: 'jar', made: '2027-03-31', temperature: '70 degF' })).toMatchObject({ useBy: '2028-03-31' });
    expect(useBy({ kind: 'jar', made: '2024-02-29' })).toMatchObject({ useBy: '2025-02-28' });
    expect(useBy({ kind: 'jar', made: '2026-08-14', temperature: '71 degF' })).toMatchObject({ tested: false });
    const hot = useBy({ kind: 'jar', made: '2026-08-14', temperature: '96 degF' });
    expect('reason' in hot && hot.reason).toContain('95 degF');
  });
  test('dried food follows its own chart', () => {
    const carrots = driedStorage({ food: 'carrots', temperature: '70 degF' });
    if (!carrots.known) throw new Error('carrots are known');
    expect(useBy({ kind: 'dried', food: 'carrots', made: '2026-08-14' })).toMatchObject({
      months: carrots.months,
      useBy: '2026-12-14',
    });
    expect(useBy({ kind: 'dried', food: 'carrots', made: '2026-08-14', temperature: '90 degF' })).toMatchObject({
      tested: false,
    });
    const vegetable = driedStorage({ food: 'vegetable', temperature: '70 degF' });
    if (!vegetable.known) throw new Error('vegetables are known');
    expect(useBy({ kind: 'dried', made: '2026-08-14' })).toMatchObject({ months: vegetable.months });
    expectError(() => useBy({ kind: 'dried', food: 'carots', made: '2026-08-14' }), 'UNKNOWN_NAME', 'food');
  });
  test('frozen food', () => {
    expect(useBy({ kind: 'frozen', made: '2026-12-31' })).toMatchObject({
      months: { low: 8, high: 12 },
      useBy: '2027-08-31',
      latest: '2027-12-31',
    });
    expect(useBy({ kind: 'frozen', made: '2026-12-31', temperature: '15 degF' })).toMatchObject({ tested: false });
  });
  test('a day that is not in the calendar', () => {
    for (const made of ['2026-13-01', '2026-00-10', '2026-04-31', '1900-02-29', '2026-08-14T25:00', 'today']) {
      expectError(() => useBy({ kind: 'jar', made }), 'OUT_OF_RANGE', 'made');
    }
    expect(useBy({ kind: 'jar', made: '2000-02-29T23:59:59.5+02:00' })).toMatchObject({ useBy: '2001-02-28' });
  });
});

describe('lotCode', () => {
  test('tells kitchen, product, day and batch', () => {
    expect(lotCode({ product: 'Äpfel & Birnen', date: '2024-12-31', batch: 12, place: 'K 1' }).code).toBe(
      'K-1-ÄPFEL-BIRNEN-2024-366-12',
    );
    expect(lotCode({ product: 'jam', date: '2026-01-01', batch: 1 }).code).toBe('JAM-2026-001-1');
    expectError(() => lotCode({ product: 'jam', date: '2026-01-01', batch: 0 }), 'OUT_OF_RANGE', 'batch');
  });
});

describe('checkCooling', () => {
  const log = (...readings: readonly (readonly [hours: number, degF: number])[]) =>
    checkCooling({
      log: readings.map(([hours, degF]) => ({
        time: { value: hours, unit: 'h' } as const,
        temperature: { value: degF, unit: 'degF' } as const,
      })),
    });
  test('the clock runs from the last reading at 135 degF', () => {
    expect(log([0, 180], [1, 140], [2.9, 69], [6, 40]).stages.map(({ hours }) => Number(hours?.toFixed(3)))).toEqual([
      1.9, 5,
    ]);
  });
  test('a log too short, or begun too late, cannot tell', () => {
    expect(log([0, 140], [1, 100]).verdict).toBe('open');
    expect(log([0, 140], [1, 69], [3, 50]).verdict).toBe('open');
    expect(log([0, 100], [1, 69], [3, 40]).verdict).toBe('open');
  });
  test('never cold in time is broken', () => {
    expect(log([0, 140], [3, 100]).verdict).toBe('broken');
    expect(log([0, 140], [1, 69], [7, 50]).verdict).toBe('broken');
  });
  test('times out of order', () => {
    expectError(() => log([0, 140], [0, 100]), 'CONTRADICTION', 'log[1].time');
  });
});

describe('Q10', () => {
  test('bad input', () => {
    const cooler = { life: '20 weeks', temperature: '20 degC' } as const;
    expectError(() => q10({ cooler, warmer: cooler }), 'CONTRADICTION', 'warmer.temperature');
    expectError(
      () => q10({ cooler, warmer: { life: '1 min', temperature: '22 degC' } }),
      'OUT_OF_RANGE',
      'cooler.life',
    );
    expectError(() => shelfLifeAt({ known: cooler, temperature: '100 degC', q10: 2 }), 'OUT_OF_RANGE', 'temperature');
  });
  test('there and back', () => {
    const known = { life: '20 weeks', temperature: '20 degC' } as const;
    const { life } = shelfLifeAt({ known, temperature: '35 degC', q10: 3 });
    expect(q10({ cooler: known, warmer: { life, temperature: '35 degC' } }).q10).toBeCloseTo(3, 9);
  });
});
