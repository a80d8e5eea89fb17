import { describe, expect, test } from 'vitest';
import { traysOf } from '../../../src/plan/makes/trays';
import { valueIn } from '../../../src/quantity/scale';
import { planOf, productOf } from '../fullKitchen';

const day = (metric: boolean) => ({ massUnit: metric ? 'kg' : 'lb', metric }) as never;
const hours = { low: { value: 6, unit: 'h' }, likely: { value: 9, unit: 'h' }, high: { value: 12, unit: 'h' } };
const loaded = { where: 'dryer', perTrayKg: 0.5, left: { low: 0.1, likely: 0.2, high: 0.3 }, hours } as never;

describe('tray work by hand', () => {
  test('2 kg on 5 trays: 0.4 kg on each, which stop at a fifth of it', () => {
    const work = traysOf(day(true), loaded, { low: 1.6, likely: 1.8, high: 2 }, 5);
    expect(work.perTray).toEqual({ value: expect.closeTo(0.4, 9), unit: 'kg' });
    expect(work.stopWeight?.likely.value).toBeCloseTo(0.08, 9);
    expect(work.stopWeight?.low.value).toBeCloseTo(0.04, 9);
    // dry: the least of the least, the most of the most
    expect(work.dried.low.value).toBeCloseTo(0.16, 9);
    expect(work.dried.high.value).toBeCloseTo(0.6, 9);
  });
  test('never more on a tray than it holds', () => {
    expect(traysOf(day(true), loaded, { low: 4, likely: 4, high: 4 }, 5).perTray.value).toBe(0.5);
  });
  test('a sheet is full or none', () => {
    const sheet = { ...(loaded as object), sheetKg: 0.45 } as never;
    expect(traysOf(day(true), sheet, { low: 0.9, likely: 0.9, high: 0.9 }, 3).perTray.value).toBe(0.45);
  });
  test('a freeze-dryer has no weight to stop at', () => {
    const frozen = { ...(loaded as object), where: 'freeze-dryer' } as never;
    expect(traysOf(day(false), frozen, { low: 1, likely: 1, high: 1 }, 2).stopWeight).toBeUndefined();
  });
});

describe('what the tables of drying say', () => {
  test('temperature and hours of the page', () => {
    const { drying: trays } = productOf('apple', { recipe: 'dried-apple-slices' });
    expect(trays?.temperature).toEqual({ value: 140, unit: 'degF' });
    expect([trays?.hours?.low.value, trays?.hours?.high.value]).toEqual([6, 12]);
    expect(trays?.test).toContain('a piece bends');
  });
  test('a wetter target leaves more', () => {
    const dried = (moisture: number) =>
      valueIn(
        productOf('apple', { make: 'dried', form: 'slices', moisture }).drying?.stopWeight?.likely as never,
        'g',
      ) / valueIn(productOf('apple', { make: 'dried', form: 'slices', moisture }).drying?.perTray as never, 'g');
    // the dry matter is the same: what is left goes with 1 / (1 - moisture)
    expect(dried(0.2) / dried(0.1)).toBeCloseTo(0.9 / 0.8, 6);
  });
  test.each(['dried', 'leather', 'freeze-dried'])('%s wetter than the food is no drying', (make) => {
    const [out] = planOf('apple', { make, moisture: 0.95 }).leftOut;
    expect(out?.reason.code).toBe('too-wet');
  });
  test('hours that the dryer may not run', () => {
    const kitchen = { dryer: { trays: 9, trayArea: '200 in2', hours: '2 h' } };
    const [out] = planOf('apple', { make: 'dried' }, kitchen).leftOut;
    expect(out?.reason.text).toContain('longer than the dryer may run');
  });
});
