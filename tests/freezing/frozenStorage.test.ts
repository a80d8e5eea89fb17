import { expect, test } from 'vitest';
import { frozenStorage } from '../../src/freezing/index';
import { expectError } from '../helpers/errors';

test('storage at 0 degF or below; no months for a warmer freezer', () => {
  expect(frozenStorage()).toMatchObject({ months: { low: 8, high: 12 } });
  expect(frozenStorage({ temperature: '-18 degC' })).toMatchObject({ months: { low: 8 } });
  expect(frozenStorage({ temperature: '-10 degF' })).toMatchObject({ months: { low: 8 } });
  expect(frozenStorage({ temperature: '5 degF' })).toMatchObject({
    known: false,
    reason: { code: 'freezer too warm' },
  });
});

test('a freezer has a temperature', () => {
  expectError(() => frozenStorage({ temperature: '20 lb' as never }), 'WRONG_DIMENSION', 'temperature');
});
