import { expect, test } from 'vitest';
import { recordRules } from '../../src/record/index';
import { LABEL_RULES, RECORD_RULES, RECORD_TOPICS } from '../../src/record/tables';
import { expectError } from '../helpers/errors';

test('every rule is served, with its basis', () => {
  const { rules, cautions } = recordRules();
  expect(rules).toHaveLength(RECORD_RULES.length + LABEL_RULES.length);
  for (const topic of [...RECORD_TOPICS, 'label'] as const)
    expect(recordRules({ topic }).rules.length).toBeGreaterThan(0);
  for (const rule of rules) expect(rule.basis).toHaveLength(1);
  expect(cautions.map(({ id }) => id)).toContain('recalled');
  expect(recordRules({ topic: 'filing' }).cautions.map(({ id }) => id)).not.toContain('recalled');
  expect(rules.filter(({ figure }) => figure !== undefined).every(({ unit }) => unit !== undefined)).toBe(true);
});

// 21 CFR 114.100(e): 3 years from the day of making
test('until when a record is kept', () => {
  expect(recordRules({ made: '2024-02-29' }).keepUntil).toBe('2027-02-28');
  const { rules, keepUntil, basis } = recordRules({ topic: 'filing', made: '2026-08-14T10:00' });
  expect(keepUntil).toBe('2029-08-14');
  expect(rules.every(({ topic }) => topic === 'filing')).toBe(true);
  expect(basis[0]).toMatchObject({ of: 'keepUntil', source: 'cfr-114', locator: '114.100(e)' });
  expect(recordRules()).not.toHaveProperty('keepUntil');
});

test('bad input', () => {
  expectError(() => recordRules({ topic: 'bees' } as never), 'UNKNOWN_NAME', 'topic');
  expectError(() => recordRules({ made: '2026-02-29' }), 'OUT_OF_RANGE', 'made');
});
