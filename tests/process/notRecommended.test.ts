import { expect, test } from 'vitest';
import { notRecommended } from '../../src/process/index';

test('notRecommended lists every food with its reason, and its basis', () => {
  const { notCanned, basis } = notRecommended();
  expect(basis.length).toBe(notCanned.length);
  for (const { reason, instead } of notCanned) expect(`${reason}${instead}`.length).toBeGreaterThan(20);
});

test('the list of foods that are not canned speaks of these tables', () => {
  for (const { reason, instead } of notRecommended().notCanned) {
    expect(`${reason} ${instead}`).not.toMatch(/\b(?:is|are) published\b/);
    if (/no tested|no process/.test(reason)) expect(reason).toMatch(/in these tables/);
  }
});
