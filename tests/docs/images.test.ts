import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { draw } from '../charts/rendering';
import { pageCharts } from './pageCharts';

const docs = new URL('../../docs/', import.meta.url).pathname;
const pages = readdirSync(docs).filter((file) => file.endsWith('.md'));
const imagesOf = (page: string): string[] =>
  [...readFileSync(docs + page, 'utf8').matchAll(/!\[[^\]]*\]\(([^)\s]+)\)/g)].map((match) => match[1] as string);

test('every image that a page shows exists, and has words for those who cannot see it', () => {
  const shown = pages.flatMap((page) => imagesOf(page).map((image) => ({ page, image })));
  expect(shown.length).toBeGreaterThan(3);
  expect(shown.filter(({ image }) => !existsSync(docs + image))).toEqual([]);
  for (const page of pages) expect(readFileSync(docs + page, 'utf8')).not.toMatch(/!\[\]\(/);
});

test('every chart drawn for the pages is shown on one', () => {
  const shown = new Set(pages.flatMap(imagesOf));
  expect(Object.keys(pageCharts()).filter((name) => !shown.has(`images/${name}.svg`))).toEqual([]);
});

test.each(Object.entries(pageCharts()))(
  'the image of %s is up to date (npx tsx tests/docs/renderCharts.ts)',
  async (name, spec) => {
    const { svg } = await draw(spec);
    expect(readFileSync(`${docs}images/${name}.svg`, 'utf8')).toBe(`${svg}\n`);
  },
);
