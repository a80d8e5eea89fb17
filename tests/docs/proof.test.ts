/**
 * The proof page in a real browser. It takes the page that `npm run docs` writes, so it runs in `npm run test:site` alone,
 * after that.
 */
import { existsSync, readFileSync } from 'node:fs';
import { delimiter } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { check } from '../../src/catalogue/index';
import type { Proof } from './site/page/proof';

const root = new URL('../../', import.meta.url).pathname;
const folder = `${root}docs/api/proof/`;
const axe = `${root}node_modules/axe-core/axe.min.js`;

/** A browser of this machine. */
const browserAt = ['chromium', 'chromium-browser', 'google-chrome']
  .flatMap((name) => (process.env.PATH ?? '').split(delimiter).map((path) => `${path}/${name}`))
  .find((path) => existsSync(path));

const reason =
  process.env.SITE === undefined
    ? 'npm run test:site runs it, after npm run docs'
    : browserAt === undefined
      ? 'there is no Chromium on the path'
      : undefined;

/** What axe-core finds serious, with the element. */
const SERIOUS = `axe.run({ preload: false }).then(({ violations }) => violations
  .filter(({ impact }) => impact === 'serious' || impact === 'critical')
  .map(({ id, nodes }) => id + ': ' + nodes[0].html))`;

describe.skipIf(reason !== undefined)(`the proof page${reason === undefined ? '' : ` (left out: ${reason})`}`, () => {
  let browser: Browser;
  let page: Page;
  const errors: string[] = [];
  const serious = () => page.evaluate(`${readFileSync(axe, 'utf8')};\n${SERIOUS}`);
  const numberIn = async (id: string) => Number((await page.textContent(`#${id}`))?.replaceAll(',', ''));

  beforeAll(async () => {
    // the folder is this repository's own; as root Chromium has no sandbox
    browser = await chromium.launch({ executablePath: browserAt ?? '', args: ['--no-sandbox'] });
    page = await browser.newPage();
    page.on('pageerror', ({ message }) => errors.push(message));
    await page.goto(pathToFileURL(`${folder}index.html`).href);
    await page.waitForSelector('body[data-finished]', { timeout: 100_000 });
  });
  afterAll(() => browser?.close());

  const proof = (): Proof => {
    const [, packed = ''] = readFileSync(`${folder}vectors.js`, 'utf8').split("'");
    return JSON.parse(gunzipSync(Buffer.from(packed, 'base64')).toString());
  };

  test('opened from its folder it computes every check, and comes to the totals of Node', async () => {
    const { checks, node } = proof();
    expect(checks.length).toBeGreaterThan(13_000);
    expect([await numberIn('passed'), await numberIn('failed')]).toEqual([node.passed, node.checks - node.passed]);
    expect(node.checks).toBe(checks.length);
    expect(await page.textContent('#verdict')).toBe('Your browser and Node come to the same.');
    expect(await page.locator('tbody').count()).toBe(200);
    expect(errors).toEqual([]);
  });

  test('the pickers leave the checks that they name', async () => {
    const wanted = proof().checks.filter(({ call, group }) => call === 'driedMass' && group === 'worked example');
    await page.selectOption('#function', 'driedMass');
    await page.selectOption('#kind', 'worked example');
    expect(await page.locator('tbody').count()).toBe(wanted.length);
    expect(await page.locator('tbody .id').allTextContents()).toEqual(wanted.map(({ id }) => id));
    await page.selectOption('#show', 'outside');
    expect(await page.locator('tbody').count()).toBe(0);
    for (const id of ['function', 'kind', 'show']) await page.selectOption(`#${id}`, '');
    expect(await page.locator('tbody').count()).toBe(200);
  });

  test('a changed input is computed anew, and counted; put back, the totals are as before', async () => {
    const { node } = proof();
    await page.selectOption('#function', 'driedMass');
    const body = page.locator('tbody').first();
    await body.getByRole('button', { name: 'Change the input' }).click();
    const text = body.getByRole('textbox');
    const input = JSON.parse(await text.inputValue());
    const changed = { ...input, moisture: 0.5 };
    expect(check('driedMass', changed).problems).toEqual([]);
    await text.fill(JSON.stringify(changed));
    await body.getByRole('button', { name: 'Compute' }).click();
    expect(await numberIn('passed')).toBe(node.passed - 1);
    expect(await body.locator('td.bad').count()).toBeGreaterThan(0);
    await text.fill('{');
    await body.getByRole('button', { name: 'Compute' }).click();
    expect(await body.getByRole('alert').textContent()).toMatch(/not JSON/);
    await text.fill('{"moisture": 2}');
    await body.getByRole('button', { name: 'Compute' }).click();
    expect(await body.locator('pre').textContent()).toMatch(/"error"/);
    expect(await serious()).toEqual([]);
    await page.getByRole('button', { name: 'Put all inputs back' }).click();
    expect(await numberIn('passed')).toBe(node.passed);
    expect(errors).toEqual([]);
  });

  test.each(['light', 'dark'] as const)('a screen reader and a phone get along with it, %s', async (colorScheme) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await serious()).toEqual([]);
    expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0);
    await page.setViewportSize({ width: 1400, height: 900 });
    expect(await serious()).toEqual([]);
  });
});
