import { describe, expect, test } from 'vitest';
import { driedStorage } from '../../src/drying/index';
import { useBy } from '../../src/record/index';
import { expectError } from '../helpers/errors';

describe('useBy', () => {
  // University of California: 12 months, 50 to 70 degF; AIB 539: never above 95 degF
  test('jars', () => {
    expect(useBy({ kind: 'jar', made: '2027-03-31', temperature: '70 degF' })).toMatchObject({ useBy: '2028-03-31' });
    expect(useBy({ kind: 'jar', made: '2024-02-29' })).toMatchObject({ useBy: '2025-02-28' });
    expect(useBy({ kind: 'jar', made: '2026-08-14', temperature: '71 degF' })).toMatchObject({ known: false });
    const hot = useBy({ kind: 'jar', made: '2026-08-14', temperature: '96 degF' });
    expect(hot).toMatchObject({
      known: false,
      reason: { code: 'store-too-hot' },
      instead: [{ text: expect.any(String) }],
    });
    expect(!hot.known && hot.reason.text).toContain('95 degF');
  });
  test('dried food follows its own chart', () => {
    const carrots = driedStorage({ food: 'carrots', temperature: '70 degF' });
    if (!carrots.known) throw new Error('carrots are known');
    expect(useBy({ kind: 'dried', food: 'carrots', made: '2026-08-14' })).toMatchObject({
      months: carrots.months,
      useBy: '2026-12-14',
    });
    expect(useBy({ kind: 'dried', food: 'carrots', made: '2026-08-14', temperature: '90 degF' })).toMatchObject({
      known: false,
    });
    const vegetable = driedStorage({ food: 'vegetable', temperature: '70 degF' });
    if (!vegetable.known) throw new Error('vegetables are known');
    expect(useBy({ kind: 'dried', made: '2026-08-14' })).toMatchObject({ months: vegetable.months });
    expectError(() => useBy({ kind: 'dried', food: 'carots', made: '2026-08-14' }), 'UNKNOWN_NAME', 'food');
  });
  test('a food of the pantry without months says that they are not known', () => {
    for (const food of ['beef', 'almond', 'cheese']) {
      const no = useBy({ kind: 'dried', food, made: '2026-08-14' });
      expect(no.known, food).toBe(false);
      expect(!no.known && no.instead[0]?.text, food).toContain('refrigerated or frozen');
    }
  });
  test('frozen food', () => {
    expect(useBy({ kind: 'frozen', made: '2026-12-31' })).toMatchObject({
      months: { low: 8, high: 12 },
      useBy: '2027-08-31',
      latestUseBy: '2027-12-31',
    });
    expect(useBy({ kind: 'frozen', made: '2026-12-31', temperature: '15 degF' })).toMatchObject({ known: false });
  });
  test('a day that is not in the calendar', () => {
    for (const made of ['2026-13-01', '2026-00-10', '2026-04-31', '1900-02-29', '2026-08-14T25:00', 'today']) {
      expectError(() => useBy({ kind: 'jar', made }), 'OUT_OF_RANGE', 'made');
    }
    expect(useBy({ kind: 'jar', made: '2000-02-29T23:59:59.5+02:00' })).toMatchObject({ useBy: '2001-02-28' });
  });
});
