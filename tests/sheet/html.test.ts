import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { planDay } from '../../src/plan/index';
import { runSheet } from '../../src/sheet/index';
import { exampleDay } from '../helpers/plans';
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
test('each cell of a row is as wide as the empty ones after it', () => {
  const page = runSheet(planOf('the example'), { as: 'html' });
  const [front = ''] = page.split('</section>');
  const columns = front.match(/<th>/g)?.length ?? 0;
  const widths = [...front.matchAll(/<tr[^>]*>(.*?)<\/tr>/gs)].map(([, row = '']) =>
    [...row.matchAll(/<t[dh](?=[ >])([^>]*)>/g)].reduce(
      (sum, [, attributes = '']) => sum + Number(/colspan="(\d+)"/.exec(attributes)?.[1] ?? 1),
      0,
    ),
  );
  expect(widths.length).toBeGreaterThan(20);
  expect(new Set(widths)).toEqual(new Set([columns]));
  expect(front).toMatch(/<td class="hands" colspan="\d">/);
  expect(front).not.toContain('<td data-label="STOVE"></td>');
});
// a busy day of one page is set smaller, and a day of several has a page a day rather than small type
describe('the shipped days print at 8 points or more, one of many rows at 7', () => {
  const folder = new URL('../../examples/', import.meta.url);
  const kitchens = readdirSync(new URL('kitchens/', folder)).map((name) => `kitchens/${name}`);
  test.each(['day.json', 'day-metric.json', ...kitchens])('%s', (name) => {
    const page = runSheet(planDay(exampleDay(name)), { as: 'html' });
    const [, size = ''] = /<section class="front (\w+)">/.exec(page) ?? [];
    const [, points] = new RegExp(`\\.front\\.${size}\\{font-size:([\\d.]+)pt\\}`).exec(page) ?? [];
    expect(Number(points)).toBeGreaterThanOrEqual(name === 'day-metric.json' ? 7 : 8);
  });
});

test('days that do not fit a page begin a new one, each with its heads; a day never goes over two', () => {
  const page = (name: string) => runSheet(planDay(exampleDay(name)), { as: 'html' });
  expect(page('kitchens/tomatoes-two-days.json').match(/<tr class="day turn">/g)?.length).toBe(1);
  expect(page('day.json')).not.toContain('day turn');
  // seven evenings share their pages
  const turns = page('kitchens/plums-damp.json').match(/<tr class="day turn">/g)?.length ?? 0;
  expect(turns).toBeGreaterThan(0);
  expect(turns).toBeLessThan(4);
});
