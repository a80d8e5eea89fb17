import { describe, expect, test } from 'vitest';
import { answer, fixedLines } from '../../src/common/answer';

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

describe('a line that is said twice', () => {
  const line = (of: string, note: string) => ({ of, kind: 'published', note });
  test('is said once, where it stands last', () => {
    const basis = [line('a', '1'), line('b', '1'), line('a', '1'), line('a', '2')];
    expect(answer({ basis }).basis).toEqual([line('b', '1'), line('a', '1'), line('a', '2')]);
  });
  test('also in a long list', () => {
    const many = Array.from({ length: 50 }, (_, index) => line('a', String(index)));
    expect(answer({ basis: [...many, ...many.slice(0, 3)] }).basis).toEqual([...many.slice(3), ...many.slice(0, 3)]);
  });
  test('a caution as it is said first, the dangers before the rest', () => {
    const [note, danger, other] = [
      { id: 'n', severity: 'note', text: 'first' },
      { id: 'd', severity: 'danger', text: 'd' },
      { id: 'n', severity: 'note', text: 'second' },
    ] as const;
    expect(answer({ cautions: [note, danger, other] }).cautions).toEqual([danger, note]);
  });
});

describe('lines that never change', () => {
  let made = 0;
  const lines = fixedLines(() => {
    made += 1;
    return [{ of: 'a' }, { of: 'b' }, { of: 'a' }];
  });
  test('are made once, each line once', () => {
    expect(lines()).toEqual([{ of: 'b' }, { of: 'a' }]);
    expect(lines()).toBe(lines());
    expect(made).toBe(1);
  });
  test('are copied into every answer', () => {
    const basis = answer({ basis: lines() }).basis as { of: string }[];
    basis.push({ of: 'c' });
    Object.assign(basis[0] ?? {}, { of: 'd' });
    expect(answer({ basis: lines() }).basis).toEqual([{ of: 'b' }, { of: 'a' }]);
  });
  test('are of text, and never none', () => {
    expect(() => fixedLines(() => [{ of: 1 }])()).toThrow('of text only');
    expect(() => answer({ basis: fixedLines(() => [])() })).toThrow('an empty list (at basis)');
  });
});
