import { expect, test } from 'vitest';
import { pickleRules } from '../../src/acid/index';

test('every printed rule is listed with its source', () => {
  const rules = pickleRules();
  expect(rules).toHaveLength(14);
  for (const { rule, about, unit, basis } of rules) {
    expect([rule, about, unit].every((text) => text.length > 0)).toBe(true);
    expect(basis.source).toBeTruthy();
  }
  expect(rules.find(({ rule }) => rule === 'pasteurization-start')?.range).toEqual([120, 140]);
});
