import { expect, test } from 'vitest';
import { parseRatio } from '../../src/quantity/ratio';

test.each([
  [0, 0],
  [1, 1],
  [0.855, 0.855],
  ['85.5 %', 0.855],
  ['85.5%', 0.855],
  ['0 %', 0],
])('%s is %d', (given, value) => expect(parseRatio(given)).toBe(value));

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
])('%s: %s', (given, code) => expect(() => parseRatio(given)).toThrow(expect.objectContaining({ code })));
