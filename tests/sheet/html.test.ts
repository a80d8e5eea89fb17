import { describe, expect, test } from 'vitest';
import { runSheet } from '../../src/sheet/index';
import { DAY_NAMES, planOf } from './days';

const VOID = new Set(['meta', 'br']);

/** Tags that do not close, or close another one. */
function unbalanced(page: string): string[] {
  const open: string[] = [];
  const wrong: string[] = [];
  for (const [, end, name = ''] of page.replace(/<style>.*<\/style>/s, '').matchAll(/<(\/?)([a-z0-9]+)[^>]*>/g)) {
    if (VOID.has(name)) continue;
    if (end === '') open.push(name);
    else if (open.pop() !== name) wrong.push(name);
  }
  return [...wrong, ...open];
}

describe.each(DAY_NAMES)('%s', (name) => {
  const page = runSheet(planOf(name), { as: 'html', date: '2026-08-15' });
  test('is well formed', () => {
    expect(page.startsWith('<!DOCTYPE html>\n<html lang="en">')).toBe(true);
    expect(unbalanced(page)).toEqual([]);
    expect(page.match(/&(?!(amp|lt|gt|quot|#39);)/g)).toBeNull();
  });
  test('needs nothing else: no script, link, image or address', () => {
    expect(page).not.toMatch(/<script|<link|<img|<iframe|src=|href=|url\(|@import|https?:|javascript:/i);
    expect(page).not.toMatch(/ on[a-z]+=/i);
  });
});
test('every card, and every row of the front, is on the page', () => {
  const plan = planOf('the example');
  const page = runSheet(plan, { as: 'html' });
  if (!plan.feasible) throw new Error('no plan');
  expect(page.match(/<article /g)?.length).toBe(plan.products.length);
  const rows = runSheet(plan)
    .split('\n')
    .filter((line) => line.startsWith('| ')).length;
  expect(page.match(/<tr/g)?.length).toBe(rows);
});
test('prints the front on a page by itself, and leaves nothing cut off', () => {
  const page = runSheet(planOf('the example'), { as: 'html' });
  expect(page).toContain('@media print');
  expect(page).toContain('.front{break-after:page');
  expect(page).not.toContain('overflow:hidden');
});
