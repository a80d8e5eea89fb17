import { expect, test } from 'vitest';
import { syrupForLoad } from '../../src/sugar/index';
import { codeText as errorOf } from '../helpers/errors';

test('the printed loads, and others in proportion', () => {
  const cups = (load: Parameters<typeof syrupForLoad>[0]['load']) => {
    const { sugar, water } = syrupForLoad({ strength: 'heavy', load });
    return [sugar.value, water.value];
  };
  expect(cups('9 pints')).toEqual([3.25, 5]);
  expect(cups('7 quarts')).toEqual([5.25, 7.75]);
  expect(cups('14-quart')).toEqual([10.5, 15.5]);
  expect(cups('4 quarts')).toEqual([3.25, 5]);
  expect(cups('2 quarts')).toEqual([1.625, 2.5]);
  expect(cups('18 pints')).toEqual([6.5, 10]);
});

test('Brix by mass is said beside the printed percentage', () => {
  const { brix, printedPercent, volume, sugarMass, waterMass } = syrupForLoad({ strength: 'heavy', load: '7 quarts' });
  expect(printedPercent).toBe(40);
  expect(brix).toBeCloseTo(36.5, 1);
  expect(brix).toBeCloseTo((100 * sugarMass.value) / (sugarMass.value + waterMass.value), 9);
  expect(volume.value).toBeLessThan(13);
});

test('bad loads', () => {
  for (const load of ['', 'seven quarts', '7 gallons', '-1 pints', 'x'.repeat(10_000)]) {
    expect(errorOf(() => syrupForLoad({ strength: 'light', load: load as never }))).toBe('NOT_A_QUANTITY load');
  }
  expect(errorOf(() => syrupForLoad({ strength: 'light', load: '0 pints' }))).toBe('OUT_OF_RANGE load');
  expect(errorOf(() => syrupForLoad({ strength: 'light', load: 7 as never }))).toBe('WRONG_TYPE load');
  expect(errorOf(() => syrupForLoad({ strength: 'light' } as never))).toBe('MISSING load');
});
