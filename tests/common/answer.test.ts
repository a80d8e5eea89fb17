import { expect, test } from 'vitest';
import { answer } from '../../src/common/answer';

test('an answer is a copy through and through', () => {
  const row = { basis: [{ what: 'one' }], value: { low: 1 }, list: ['a'] };
  const copy = answer(row);
  expect(copy).toEqual(row);
  copy.basis[0] = { what: 'other' };
  copy.value.low = 2;
  copy.list.push('b');
  expect(row).toEqual({ basis: [{ what: 'one' }], value: { low: 1 }, list: ['a'] });
});

test.each([
  ['a number that is not finite', { time: { value: Number.NaN } }, /NaN \(at time\.value\)/],
  ['infinity', [1, Number.POSITIVE_INFINITY], /Infinity \(at \[1\]\)/],
  ['an undefined value', { a: [{ b: undefined }] }, /undefined value \(at a\[0\]\.b\)/],
  ['an empty basis', { basis: [] }, /empty list \(at basis\)/],
  ['a function', { a: () => 1 }, /a function \(at a\)/],
  ['an object that is not plain data', { a: new Map() }, /not plain data \(at a\)/],
])('%s stops here', (_, value, message) => {
  expect(() => answer(value)).toThrow(message);
});
