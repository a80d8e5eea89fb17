import { expect, test } from 'vitest';
import { compare } from './compare';

const paths = (one: unknown, other: unknown, most?: number) =>
  compare(one, other, most).differences.map(({ path }) => path);

test('the same answer has no difference', () => {
  const answer = { jars: { low: 7, high: 9.5 }, basis: [{ source: 'derived' }], none: null };
  expect(compare(answer, structuredClone(answer))).toEqual({ differences: [], apart: 0 });
});
test('numbers may be apart in their last digits', () => {
  const { differences, apart } = compare({ k: 0.3 }, { k: 0.1 + 0.2 });
  expect(differences).toEqual([]);
  expect(apart).toBeGreaterThan(0);
  expect(paths({ k: 1 }, { k: 1 + 1e-11 })).toEqual(['.k']);
  expect(paths({ k: 1 }, { k: 1 + 1e-11 }, 1e-9)).toEqual([]);
  expect(paths([0], [1e-300])).toEqual(['.0']);
});
test('numbers inside of a text are numbers, and words are words', () => {
  expect(paths('M0.3 12', `M${0.1 + 0.2} 12`)).toEqual([]);
  expect(paths('boil 10 min', 'boil 15 min')).toEqual(['']);
  expect(paths('boil 10 min', 'boil 10 h')).toEqual(['']);
});
test('a field more, a field less, another order and another kind are differences', () => {
  expect(paths({ a: 1 }, { a: 1, b: 2 })).toEqual(['']);
  expect(paths({ a: 1, b: 2 }, { b: 2, a: 1 })).toEqual(['']);
  expect(paths({ a: [1, 2] }, { a: [1] })).toEqual(['.a']);
  expect(paths({ a: [] }, { a: {} })).toEqual(['.a']);
  expect(paths({ a: 1 }, { a: '1' })).toEqual(['.a']);
  expect(paths({ a: true }, { a: false })).toEqual(['.a']);
});
