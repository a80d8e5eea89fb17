import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batchRecord, labelFields } from '../../src/record/index';
import { expectError } from '../helpers/errors';

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
    expect(labelFields({ name: 'Jam', net, market: rule }).netContents).toBe(text);
  });
  test('never says more than the jar holds', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e4, noNaN: true }), (grams) => {
        const { netContents } = labelFields({ name: 'Jam', net: { value: grams, unit: 'g' }, market: 'EU' });
        expect(Number.parseFloat(netContents)).toBeLessThanOrEqual(grams * (1 + 1e-11));
        expect(Number.parseFloat(netContents)).toBeGreaterThan(grams - 1);
      }),
    );
  });
  test('all the lines', () => {
    const { labelLines, basis } = labelFields({
      name: 'Peach jam',
      net: '8 oz',
      ingredients: [
        { name: 'sugar', mass: '1 kg' },
        { name: 'peaches', mass: '3 lb' },
        { name: 'lemon juice', mass: '50 g' },
      ],
      allergens: ['none'],
      keep: 'Keep cool and dark',
      lotCode: 'A1',
      made: '2026-08-14T10:00',
      useBy: '2027-08-14',
      maker: 'Home kitchen',
      place: 'Hill farm',
    });
    expect(labelLines).toEqual([
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
    expect(labelFields({ name: 'x', net: '8 fl oz', place: 'here' }).maker).toBe('here');
  });
  test('a lot code shows kitchen, name, day and batch, as that of the record', () => {
    const made = { name: 'Äpfel & Birnen', place: 'K 1' };
    const label = labelFields({ ...made, net: '8 oz', made: '2024-12-31', batchOfDay: 12 });
    expect(label.lot).toBe('Lot K-1-ÄPFEL-BIRNEN-2024-366-12');
    const record = batchRecord({ ...made, date: '2024-12-31', batchOfDay: 12, lots: [{ food: 'apple', raw: '1 kg' }] });
    expect(label.lot).toBe(`Lot ${record.lotCode}`);
    expect(record).not.toHaveProperty('batchOfDay');
    expect(label.basis.filter(({ of: path }) => path === 'lot').length).toBeGreaterThan(3);
    expect(labelFields({ name: 'jam', net: '8 oz', made: '2026-01-01', batchOfDay: 1 }).lot).toBe('Lot JAM-2026-001-1');
  });
  test('bad input', () => {
    expectError(
      () => labelFields({ name: 'x', net: '8 oz', made: '2026-08-14', useBy: '2026-08-13' }),
      'CONTRADICTION',
      'useBy',
    );
    expectError(() => labelFields({ name: 'x' } as never), 'MISSING', 'net');
    const good = { name: 'x', net: '8 oz' } as const;
    expectError(() => labelFields({ ...good, batchOfDay: 1 }), 'MISSING', 'made');
    expectError(() => labelFields({ ...good, made: '2026-01-01', batchOfDay: 0 }), 'OUT_OF_RANGE', 'batchOfDay');
    expectError(
      () => labelFields({ ...good, lotCode: 'A', made: '2026-01-01', batchOfDay: 1 }),
      'CONTRADICTION',
      'batchOfDay',
    );
  });
});
