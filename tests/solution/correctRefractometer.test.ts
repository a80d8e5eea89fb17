import fc from 'fast-check';
import { expect, test } from 'vitest';
import { correctRefractometer } from '../../src/solution/index';
import { codeText as errorOf } from '../helpers/errors';

test('warm samples read low, cold ones high', () => {
  expect(correctRefractometer({ reading: 62, temperature: '25 degC' }).correction).toBeCloseTo(0.36, 9);
  expect(correctRefractometer({ reading: 50, temperature: '15 degC' }).correction).toBeCloseTo(-0.38, 9);
});

test('at 20 degC nothing is added, whatever the reading', () => {
  expect(correctRefractometer({ reading: 2, temperature: '68 degF' }).brix).toBe(2);
});

test('where two tables reach, the range holds both; the newer is followed', () => {
  // 15 degC, 10 %: newer -0.32 (OIV-MA-AS2-02), older -0.27 (CRC Handbook)
  const { brix, range, basis } = correctRefractometer({ reading: 10, temperature: '15 degC' });
  expect(brix).toBeCloseTo(9.68, 9);
  expect(range.low).toBeCloseTo(9.68, 9);
  expect(range.high).toBeCloseTo(9.73, 9);
  expect(basis.map(({ source }) => source)).toEqual(['oiv-as2-02', 'crc-concentrative']);
});

test('between rows and columns on straight lines', () => {
  const mean = (-0.32 - 0.26 - 0.33 - 0.27) / 4; // 15 and 16 degC, 10 and 15 %
  expect(correctRefractometer({ reading: 12.5, temperature: '15.5 degC' }).correction).toBeCloseTo(mean, 9);
});

test('between the last row of the newer table and the next of the older', () => {
  const { correction } = correctRefractometer({ reading: 30, temperature: '17.5 degC' });
  expect(correction).toBeLessThan(-0.15);
  expect(correction).toBeGreaterThan(-0.22);
});

test('the correction never falls as the sample warms', () => {
  fc.assert(
    fc.property(fc.double({ min: 10, max: 70, noNaN: true }), fc.integer({ min: 100, max: 299 }), (reading, tenths) => {
      const at = (t: number) =>
        correctRefractometer({ reading, temperature: { value: t / 10, unit: 'degC' } }).correction;
      return at(tenths + 1) >= at(tenths) - 0.03; // the two tables meet between 17 and 18 degC
    }),
  );
});

test('beyond the tables it says to bring the sample to 20 degC', () => {
  expect(errorOf(() => correctRefractometer({ reading: 40, temperature: '8 degC' }))).toBe('OUT_OF_RANGE reading');
  expect(errorOf(() => correctRefractometer({ reading: 80, temperature: '25 degC' }))).toBe('OUT_OF_RANGE reading');
  expect(errorOf(() => correctRefractometer({ reading: 20, temperature: '4 degC' }))).toBe('OUT_OF_RANGE temperature');
});
