import { expect, test } from 'vitest';
import { notRecommended } from '../../src/process/index';

test('notRecommended lists every food with its reason, and its basis', () => {
  const { notCanned, basis } = notRecommended();
  expect(basis.length).toBe(notCanned.length);
  for (const { reason, instead } of notCanned) {
    expect(reason.code).toBe('not canned');
    expect(`${reason.text}${instead[0]?.text}`.length).toBeGreaterThan(20);
    expect(instead.some(({ keep }) => keep !== undefined)).toBe(true);
  }
});

test('the list of foods that are not canned speaks of these tables', () => {
  for (const { reason, instead } of notRecommended().notCanned) {
    expect(`${reason.text} ${instead[0]?.text}`).not.toMatch(/\b(?:is|are) published\b/);
    if (/no tested|no process/.test(reason.text)) expect(reason.text).toMatch(/in these tables/);
  }
});
