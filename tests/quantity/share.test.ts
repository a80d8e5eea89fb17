import { expect, test } from 'vitest';
import { parseShare } from '../../src/quantity/share';

test.each([
  [0, 0],
  [1, 1],
  [0.855, 0.855],
  ['85.5 %', 0.855],
  ['85.5%', 0.855],
  ['0 %', 0],
])('%s is %d', (given, value) => expect(parseShare(given)).toBe(value));

test.each<[unknown, string]>([
  [85, 'OUT_OF_RANGE'],
  [-0.1, 'OUT_OF_RANGE'],
  [Number.NaN, 'OUT_OF_RANGE'],
  ['101 %', 'OUT_OF_RANGE'],
  ['-1 %', 'OUT_OF_RANGE'],
  ['85', 'NOT_A_QUANTITY'],
  ['%', 'NOT_A_QUANTITY'],
  [`${'1'.repeat(1000)}%`, 'NOT_A_QUANTITY'],
  [null, 'WRONG_TYPE'],
  [undefined, 'MISSING'],
])('%s: %s', (given, code) => expect(() => parseShare(given)).toThrow(expect.objectContaining({ code })));
