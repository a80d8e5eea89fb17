import { expect, test } from 'vitest';
import { parseMoney, toCents } from '../../src/quantity/money';

test.each([
  ['24.50 USD', 24.5, 'USD'],
  ['1,200 USD', 1200, 'USD'],
  ['0 GBP', 0, 'GBP'],
  [{ value: 3, unit: 'CAD' }, 3, 'CAD'],
])('%s', (given, value, unit) => expect(parseMoney(given)).toEqual({ value, unit }));

test.each<[unknown, string]>([
  ['$24.50', 'NOT_A_QUANTITY'],
  ['24.50', 'NOT_A_QUANTITY'],
  ['24.50 usd', 'NOT_A_QUANTITY'],
  ['-1 USD', 'OUT_OF_RANGE'],
  [`${'9'.repeat(50)} USD`, 'NOT_A_QUANTITY'],
  [{ value: 1, unit: 'dollars' }, 'NOT_A_QUANTITY'],
  [{ value: '1', unit: 'USD' }, 'WRONG_TYPE'],
  [{ value: Number.POSITIVE_INFINITY, unit: 'USD' }, 'OUT_OF_RANGE'],
  [12, 'WRONG_TYPE'],
  [undefined, 'MISSING'],
])('%s: %s', (given, code) => expect(() => parseMoney(given)).toThrow(expect.objectContaining({ code })));

test('cents are rounded half up', () => {
  expect(toCents(1.005)).toBe(1.01);
  expect(toCents(2.675)).toBe(2.68);
});
test('or to one side, where the noise of arithmetic makes no cent', () => {
  expect(toCents(1.001, 'up')).toBe(1.01);
  expect(toCents(1.009, 'down')).toBe(1);
  expect(toCents(0.1 + 0.2, 'up')).toBe(0.3);
  expect(toCents(1 - 1e-12, 'down')).toBe(1);
});
