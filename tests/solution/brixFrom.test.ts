import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brixFrom, refractiveIndex, sucroseDensity, syrupBoilingTemperature } from '../../src/solution/index';
import { codeText as errorOf } from '../helpers/errors';

test('warm samples read low, cold ones high', () => {
  expect(brixFrom({ reading: 62, temperature: '25 degC' }).correction).toBeCloseTo(0.36, 9);
  expect(brixFrom({ reading: 50, temperature: '15 degC' }).correction).toBeCloseTo(-0.38, 9);
});

test('at 20 degC nothing is added, whatever the reading', () => {
  expect(brixFrom({ reading: 2, temperature: '68 degF' }).brix).toBe(2);
});

test('where two tables reach, the range holds both; the newer is followed', () => {
  // 15 degC, 10 %: newer -0.32 (OIV-MA-AS2-02), older -0.27 (CRC Handbook)
  const { brix, brixRange: range, basis } = brixFrom({ reading: 10, temperature: '15 degC' });
  expect(brix).toBeCloseTo(9.68, 9);
  expect(range.low).toBeCloseTo(9.68, 9);
  expect(range.high).toBeCloseTo(9.73, 9);
  expect(basis.map(({ source }) => source)).toEqual(['oiv-as2-02', 'crc-concentrative']);
});

test('between rows and columns on straight lines', () => {
  const mean = (-0.32 - 0.26 - 0.33 - 0.27) / 4; // 15 and 16 degC, 10 and 15 %
  expect(brixFrom({ reading: 12.5, temperature: '15.5 degC' }).correction).toBeCloseTo(mean, 9);
});

test('between the last row of the newer table and the next of the older', () => {
  const { correction } = brixFrom({ reading: 30, temperature: '17.5 degC' });
  expect(correction).toBeLessThan(-0.15);
  expect(correction).toBeGreaterThan(-0.22);
});

test('the correction never falls as the sample warms', () => {
  fc.assert(
    fc.property(fc.double({ min: 10, max: 70, noNaN: true }), fc.integer({ min: 100, max: 299 }), (reading, tenths) => {
      const at = (t: number) =>
        brixFrom({ reading, temperature: { value: t / 10, unit: 'degC' } }).correction ?? Number.NaN;
      return at(tenths + 1) >= at(tenths) - 0.03; // the two tables meet between 17 and 18 degC
    }),
  );
});

test('beyond the tables it says to bring the sample to 20 degC', () => {
  expect(errorOf(() => brixFrom({ reading: 40, temperature: '8 degC' }))).toBe('OUT_OF_RANGE reading');
  expect(errorOf(() => brixFrom({ reading: 80, temperature: '25 degC' }))).toBe('OUT_OF_RANGE reading');
  expect(errorOf(() => brixFrom({ reading: 20, temperature: '4 degC' }))).toBe('OUT_OF_RANGE temperature');
});

test('a share is asked about, and what belongs to another way is refused', () => {
  expect(errorOf(() => brixFrom({}))).toBe('MISSING reading');
  expect(errorOf(() => brixFrom({ baume: 20, specificGravity: 1.1 }))).toBe('CONTRADICTION baume');
  expect(errorOf(() => brixFrom({ baume: 20, temperature: '25 degC' }))).toBe('CONTRADICTION temperature');
  expect(errorOf(() => brixFrom({ reading: 20, elevation: '100 m' }))).toBe('CONTRADICTION elevation');
  expect(errorOf(() => brixFrom({ boiling: '105 degC', temperature: '25 degC' }))).toBe('CONTRADICTION temperature');
  expect(errorOf(() => sucroseDensity({ brix: 0.65, temperature: '20 degC' }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => refractiveIndex({ brix: 0.65, temperature: '20 degC' }))).toBe('OUT_OF_RANGE brix');
  expect(errorOf(() => syrupBoilingTemperature({ brix: 1 }))).toBe('OUT_OF_RANGE brix');
  expect(Math.abs(sucroseDensity({ brix: '0.5 Brix', temperature: '20 degC' }).density.value - 1.0002)).toBeLessThan(
    1e-4,
  ); // CRC Handbook
});

test('the same for every way where the sources do not differ', () => {
  const { brix, brixRange: range } = brixFrom({ specificGravity: 1.1 });
  expect([range.low, range.likely, range.high]).toEqual([brix, brix, brix]);
});
