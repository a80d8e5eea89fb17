import { expect, test } from 'vitest';
import { decimalReductions } from '../../src/lethality/index';
import { codeAndPath as errorOf } from '../helpers/errors';

test('reductions and their time are each the inverse of the other', () => {
  const { time } = decimalReductions({ dValue: '0.21 min', reductions: 12 });
  expect(time).toEqual({ value: 2.52, unit: 'min' }); // handbook Table 10.10: 12 x 0.21
  expect(decimalReductions({ time, dValue: '12.6 s' }).reductions).toBeCloseTo(12, 9);
});

test.each([
  [() => decimalReductions({ dValue: '0 min', time: '1 min' }), ['OUT_OF_RANGE', 'dValue']],
  [() => decimalReductions({ dValue: '1 min' }), ['MISSING', 'time']],
  [() => decimalReductions({ dValue: '1 min', time: '1 min', reductions: 2 }), ['CONTRADICTION', 'reductions']],
  [() => decimalReductions({ dValue: '1 min', reductions: 0 }), ['OUT_OF_RANGE', 'reductions']],
  [() => decimalReductions({ time: '1 lb' as never, dValue: '1 min' }), ['WRONG_DIMENSION', 'time']],
])('bad input %# is refused', (work, error) => {
  expect(errorOf(work)).toEqual(error);
});
