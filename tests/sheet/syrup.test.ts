import { expect, test } from 'vitest';
import { runSheet } from '../../src/sheet/index';
import { planOf } from '../plan/fullKitchen';

const peaches = (pack: 'hot' | 'raw', raw: '24 lb' | '11 kg' = '24 lb') =>
  planOf('peach', { recipe: 'peach-halves-or-slices', syrup: 'light', jar: 'quart', pack }, {}, raw);
const rowsOf = (sheet: string) => sheet.split('## A')[0]?.split('\n') ?? [];

test.each(['hot', 'raw'] as const)('%s pack: each load has a pot of syrup, as much as its jars take', (pack) => {
  const plan = peaches(pack);
  const of = (kind: string) => plan.schedule.tasks.filter((task) => task.kind === kind);
  expect(of('cook').length).toBe(of('fill').length);
  expect(of('cook').length).toBeGreaterThan(0);
  const jars = of('fill').reduce((sum, { units }) => sum + (units?.count ?? 0), 0);
  const [sugar] = plan.products[0]?.ingredients ?? [];
  // 2 1/4 cups for 7 quarts
  expect(sugar?.amount?.value).toBeCloseTo((2.25 * jars) / 7, 9);
  const sheet = runSheet(plan);
  const rows = rowsOf(sheet).filter((row) => row.includes('syrup'));
  expect(rows.length).toBeGreaterThan(0);
  for (const row of rows) expect(row).toMatch(pack === 'raw' ? /[Pp]ut on the syrup: / : /in syrup of /);
  const full = of('fill').some(({ units }) => units?.count === 7);
  expect(sheet.includes('2 1/4 cups sugar, 9 cups water')).toBe(full);
  expect(sheet).toMatch(/- \*\*SYRUP\*\* for \d quart jars: /);
  expect(sheet).not.toContain('for light syrup');
});
test('in metric units on a metric day', () => {
  const rows = rowsOf(runSheet(peaches('raw', '11 kg'))).filter((row) => row.includes('syrup'));
  expect(rows.length).toBeGreaterThan(0);
  for (const row of rows) expect(row).toMatch(/syrup: \d+(\.\d+)? k?g sugar, \d+(\.\d+)? m?L water/);
});
test('fruit in plain water has none', () => {
  const plan = planOf('peach', { recipe: 'peach-halves-or-slices', jar: 'quart' });
  expect(runSheet(plan).split('## Why')[0]).not.toMatch(/SYRUP|syrup of|the syrup:/);
});
