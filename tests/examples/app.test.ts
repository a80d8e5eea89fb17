/** The small app in a real browser, over the package as it is built from these sources. */
import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { check } from '../../src/catalogue/index';
import { buildInto } from '../build/build';

const root = new URL('../../', import.meta.url).pathname;
const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let folder = '';
let server: ChildProcess;
let browser: Browser;
let page: Page;
let address = '';
let broken: string[] = [];

async function start(): Promise<void> {
  folder = mkdtempSync(join(tmpdir(), 'app-'));
  cpSync(join(root, 'examples/app'), join(folder, 'examples/app'), { recursive: true });
  symlinkSync(join(root, 'package.json'), join(folder, 'package.json'));
  await buildInto(join(folder, 'dist'), ['es']);
  server = spawn('node', [join(folder, 'examples/app/serve.mjs'), '0'], { stdio: ['ignore', 'pipe', 'inherit'] });
  address = await new Promise((resolve) => server.stdout?.once('data', (text) => resolve(String(text).trim())));
  browser = await chromium.launch({ executablePath: CHROMIUM, args: ['--no-sandbox'] });
}

const status = () => page.getByRole('status');
/** The first control of that label in that row of a list. */
const field = (row: string, label: string) => page.getByRole('group', { name: row }).getByLabel(label);
/** Waits for what the page comes to: a worker answers, on a busy machine as well. */
const soon = <T>(ask: () => T | Promise<T>) => expect.poll(ask, { timeout: 30_000 });
const waysAreShown = () => soon(() => status().textContent()).toMatch(/^Ways to keep it/);
const isPlanned = () => soon(() => status().textContent()).toMatch(/^The day is planned/);
const plan = () => page.getByRole('button', { name: 'Plan the day' }).click();

/** What axe-core finds that keeps somebody out, in the page and in its frame. */
async function seriousFindings(): Promise<string[]> {
  for (const frame of page.frames()) await frame.evaluate(axe);
  const found = await page.evaluate('axe.run()');
  const { violations } = found as { violations: { id: string; impact: string; nodes: { html: string }[] }[] };
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
}

test('the invented day is right as it stands', async () => {
  const { inventedDay } = await import('../../examples/app/invented.js' as string);
  expect(check('planDay', inventedDay).problems).toEqual([]);
});

const without = existsSync(CHROMIUM) ? '' : ` (skipped: no browser at ${CHROMIUM}; CHROMIUM names another)`;
describe.skipIf(without !== '')(`in a browser${without}`, () => {
  beforeAll(start, 300_000);
  afterAll(async () => {
    await browser?.close();
    server?.kill();
    rmSync(folder, { recursive: true });
  });
  beforeEach(async () => {
    broken = [];
    page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    page.on('pageerror', ({ message }) => broken.push(message));
    page.on('response', (response) => response.status() >= 400 && broken.push(response.url()));
    await page.goto(address);
    await waysAreShown();
  });
  afterEach(async () => {
    expect(broken).toEqual([]);
    await page.close();
  });

  test('a good day makes a sheet, and the plan takes the way and the jar that were chosen', async () => {
    await page.getByRole('checkbox', { name: 'halved or sliced apricots' }).check();
    const way = page.getByRole('listitem').filter({ hasText: 'halved or sliced apricots' });
    await way.getByLabel('Canner').selectOption('boiling-water');
    await way.getByLabel('Pack').selectOption('hot');
    await way.getByLabel('Jar').selectOption('quart');
    await soon(() => way.textContent()).toContain('The tested process here: 30 min');
    await plan();
    await isPlanned();
    expect(await page.locator('#summary').textContent()).toContain('apricot halves or slices in quarts');
    const sheet = page.frameLocator('#sheet');
    expect(await sheet.locator('body').textContent()).toMatch(/invented example[\s\S]*quart jars/);
    expect(await page.locator('#plan-behind').textContent()).toContain('extension service');
    expect(await page.locator('#plan-behind details').textContent()).toContain('Complete Guide to Home Canning');
  });

  test('what depends on a choice follows it: beans go into a pressure canner only', async () => {
    expect(await page.locator('#lacking').textContent()).toContain('a pressure canner with a dial gauge');
    await page.getByRole('group', { name: 'canner 1' }).getByLabel('Kind').selectOption('dial-gauge');
    await soon(() => page.locator('#ways').textContent()).toContain('snap beans');
    await page.getByRole('checkbox', { name: 'snap beans' }).check();
    const canner = page.getByRole('listitem').filter({ hasText: 'snap beans' }).getByLabel('Canner');
    await soon(() => canner.locator('option').allTextContents()).toEqual(['any that fits', 'dial gauge']);
  });

  test('the packs are those that the chosen canner has', async () => {
    await field('lot 1', 'Food').fill('grapefruit');
    await page.getByRole('button', { name: 'Add a canner' }).click();
    await field('canner 2', 'Kind').selectOption('dial-gauge');
    await field('canner 2', 'Pints').first().fill('8');
    await page.keyboard.press('Tab');
    const way = page.getByRole('listitem').filter({ hasText: 'grapefruit and orange sections' });
    await soon(() => way.textContent()).toContain('Heat here');
    await way.getByRole('checkbox').check();
    const packs = () => way.getByLabel('Pack').locator('option').allTextContents();
    await soon(packs).toEqual(['any that fits', 'hot', 'raw']);
    await way.getByLabel('Canner').selectOption('boiling-water');
    await soon(packs).toEqual(['any that fits', 'raw']);
  });

  test('a refusal is shown with its reason', async () => {
    await field('lot 2', 'Food').fill('pumpkin');
    await field('lot 2', 'How much').fill('20 lb');
    await page.keyboard.press('Tab');
    await soon(() => page.locator('#refusals').textContent()).toMatch(/pumpkin.*no tested process in these tables/);
  });

  test('each mistake is told at its field, and the first has the focus', async () => {
    await field('lot 1', 'How much').fill('forty');
    await page.getByLabel('Elevation').fill('2600');
    await field('pot 2', 'It holds').fill('12 lb');
    await plan();
    await soon(() => status().textContent()).toBe('3 fields need a change first.');
    await soon(() => page.locator(':focus').inputValue()).toBe('forty');
    const said = async (input: ReturnType<typeof field>) =>
      page.locator(`#${await input.getAttribute('aria-describedby')}`).textContent();
    expect(await said(field('lot 1', 'How much'))).toContain('You typed "forty"');
    expect(await said(page.getByLabel('Elevation'))).toContain('a length');
    expect(await said(field('pot 2', 'It holds'))).toContain('not a mass');
    expect(await page.getByRole('checkbox').count()).toBe(0);
    await field('lot 1', 'How much').fill('40 lb');
    await page.keyboard.press('Tab');
    await soon(() => status().textContent()).toBe('2 fields need a change first.');
    expect(await field('lot 1', 'How much').getAttribute('aria-invalid')).toBeNull();
  });

  test('the keyboard is enough: from a new food to the plan', async () => {
    await page.getByRole('button', { name: 'Add a food' }).focus();
    await page.keyboard.press('Enter');
    await page.keyboard.type('pear');
    await page.keyboard.press('Tab');
    await page.keyboard.type('6 quarts');
    await page.keyboard.press('Tab');
    await soon(() => page.locator('#ways').textContent()).toContain('halved pears');
    await field('lot 2', 'Food').focus();
    for (let tabs = 0; tabs < 3; tabs += 1) await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
    expect(await page.getByRole('group', { name: /^lot/ }).count()).toBe(2);
    await page.getByRole('button', { name: 'Plan the day' }).focus();
    await page.keyboard.press('Enter');
    await isPlanned();
    expect(await page.evaluate('document.activeElement.id')).toBe('planned');
    expect(await page.locator('#invented').isVisible()).toBe(false);
  });

  test('a reload keeps what was typed and chosen', async () => {
    await page.getByRole('checkbox', { name: 'fruit leather', exact: true }).check();
    await page.getByLabel('Hours to work').fill('9 h');
    await page.keyboard.press('Tab');
    await waysAreShown();
    await page.reload();
    await waysAreShown();
    expect(await page.getByLabel('Hours to work').inputValue()).toBe('9 h');
    expect(await page.getByRole('checkbox', { name: 'fruit leather', exact: true }).isChecked()).toBe(true);
    await page.getByRole('button', { name: 'Start over' }).click();
    await soon(() => page.getByLabel('Hours to work').inputValue()).toBe('7 h');
  });

  test('nobody is kept out, by a small screen or by a screen reader', async () => {
    expect(await seriousFindings()).toEqual([]);
    await page.getByRole('checkbox', { name: 'halved or sliced apricots' }).check();
    await field('lot 1', 'How much').fill('forty');
    await plan();
    await soon(() => status().textContent()).toBe('One field needs a change first.');
    expect(await seriousFindings()).toEqual([]);
    await field('lot 1', 'How much').fill('40 lb');
    await plan();
    await isPlanned();
    expect(await seriousFindings()).toEqual([]);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
  });
});
