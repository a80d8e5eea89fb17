import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { runSnippet, snippetsOf } from './snippets';

const root = new URL('../../', import.meta.url).pathname;
const under = (folder: string, ending: string): string[] =>
  readdirSync(root + folder, { recursive: true })
    .map(String)
    .filter((file) => file.endsWith(ending) && !file.startsWith('api/'))
    .map((file) => `${folder}/${file}`)
    .sort();

const files = [
  ...['README.md', 'DEVELOPERS.md'].filter((file) => existsSync(root + file)),
  ...under('docs', '.md'),
  ...under('src', '.ts'),
];
const load = async (name: string): Promise<Record<string, unknown>> => {
  const path = name === 'stillroom' ? 'index.ts' : name.replace(/^stillroom\//, '').concat('/index.ts');
  return (await import(/* @vite-ignore */ `${root}src/${path}`)) as Record<string, unknown>;
};

const snippets = files.flatMap((file) =>
  snippetsOf(root + file).map((snippet) => ({ name: `${file}:${snippet.line}`, snippet })),
);

describe('examples in docstrings and pages', () => {
  test.each(snippets)('$name', async ({ snippet }) => {
    const checks = await runSnippet(snippet, load, (actual, wanted, line) => expect(actual, line).toEqual(wanted));
    // a page may show code that prints; an example in a docstring says what comes out
    if (snippet.file.includes('/src/')) expect(checks).toBeGreaterThan(0);
  });
});
