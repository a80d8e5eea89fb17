import { expect, test } from 'vitest';
import type { PlannedProduct } from '../../src/plan/request/plannedProduct';
import { measureIn } from '../../src/sheet/measure';
import { called, counted, depthOf, likelyOf, unitsText } from '../../src/sheet/pen';

const product = (given: object) => given as PlannedProduct;

test('a count before a size that begins with a figure is kept apart from it', () => {
  expect(counted(8, '500 mL jars')).toBe('8 × 500 mL jars');
  expect(counted(8, 'pint jars')).toBe('8 pint jars');
  const jars = product({ units: { unit: '500 mL jar', plural: '500 mL jars', likely: 1, ready: 1 } });
  expect(unitsText({ count: 80, unit: '500 mL jar' }, jars)).toBe('80 × 500 mL jars');
});
test('of a load as many are likely as of the whole product', () => {
  const of = (likely: number, ready: number) => product({ units: { likely, ready } });
  expect(likelyOf(17, of(10, 17))).toBe(10);
  expect(likelyOf(6, of(10, 17))).toBe(4);
  expect(likelyOf(1, of(1, 9))).toBe(1);
  expect(likelyOf(7, of(7, 7))).toBe(7);
});
test('jars are counted: its name does not say them again', () => {
  expect(called(product({ name: 'peach halves in quarts', canning: { jar: 'quart' } }))).toBe('peach halves');
  expect(called(product({ name: 'plums, whole, in pints', canning: { jar: 'pint' } }))).toBe('plums, whole');
  expect(called(product({ name: 'pear halves', canning: { jar: 'pint' } }))).toBe('pear halves');
  expect(called(product({ name: 'plum leather' }))).toBe('plum leather');
});

test('the depth that a page spreads to', () => {
  expect(depthOf('fruit-leather', measureIn('us'))).toBe('1/8 in');
  expect(depthOf('fruit-leather', measureIn('metric'))).toBe('1/8 in (3 mm)');
  expect(depthOf('apple-sauce', measureIn('us'))).toBeUndefined();
});
