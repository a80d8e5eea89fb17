/** The site stays small enough to open: `npm run docs` writes it, `npm run test:site` weighs it. */
import { readdirSync, statSync } from 'node:fs';
import { expect, test } from 'vitest';

const site = new URL('../../docs/api/', import.meta.url).pathname;
/** The most that it and any one page may weigh, in bytes. */
const MOST = { site: 15_000_000, page: 500_000 };

test.skipIf(process.env.SITE === undefined)('the site and each page stay small', () => {
  const files = readdirSync(site, { recursive: true }).map(String);
  const weights = files.map((file) => [file, statSync(site + file)] as const).filter(([, stat]) => stat.isFile());
  expect(weights.length).toBeGreaterThan(100);
  expect(weights.filter(([file, { size }]) => file.endsWith('.html') && size > MOST.page)).toEqual([]);
  expect(weights.reduce((sum, [, { size }]) => sum + size, 0)).toBeLessThan(MOST.site);
});
