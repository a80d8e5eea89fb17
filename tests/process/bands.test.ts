import { expect, test } from 'vitest';
import { bandIndex, bandsOf, bandText } from '../../src/process/bands';

const ends = [1000, 3000, 6000, null];

test('a place belongs to the band that ends at it, in any unit', () => {
  const at = (value: number, unit: 'ft' | 'm' | 'in') => bandIndex({ value, unit }, ends);
  expect([-400, 0, 1000, 1000.0001, 3000, 3001, 6000, 6000.1, 29000].map((value) => at(value, 'ft'))).toEqual([
    0, 0, 0, 1, 1, 2, 2, 3, 3,
  ]);
  // 1 ft is 0.3048 m exactly
  expect([304.8, 304.80000001, 914.4, 1828.8, 1828.9].map((value) => at(value, 'm'))).toEqual([0, 1, 1, 2, 3]);
  expect(at(12000, 'in')).toBe(0);
  expect(bandIndex({ value: 8001, unit: 'ft' }, [2000, 8000])).toBeUndefined();
});

test('in words', () => {
  expect(ends.map((_, index) => bandText(ends, index))).toEqual([
    '0 to 1,000 ft',
    '1,001 to 3,000 ft',
    '3,001 to 6,000 ft',
    'above 6,000 ft',
  ]);
});

test('a row with a number of cells that no table has is a mistake', () => {
  expect(() => bandsOf({ method: 'boiling-water', minutes: [1, 2] })).toThrow();
});
