/** What lies at the top of the repository: a newcomer sees at once what matters. */
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const root = new URL('../', import.meta.url).pathname;
const TOP = [
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'data',
  'docs',
  'examples',
  'package-lock.json',
  'package.json',
  'shared',
  'src',
  'tests',
  'tsconfig.json',
];

/** What is under version control, or without git all that is not ignored. */
function topLevel(): string[] {
  try {
    const files = execFileSync('git', ['ls-files'], {
      cwd: root,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    return [...new Set(files.split('\n').map((file) => file.split('/')[0] ?? ''))].filter((name) => name !== '');
  } catch {
    const ignored = readFileSync(`${root}.gitignore`, 'utf8').split('\n');
    return readdirSync(root).filter((name) => !ignored.includes(name) && !ignored.includes(`${name}/`));
  }
}

test('the top level holds the pages, the package and the folders, and nothing else but dotfiles', () => {
  const names = topLevel();
  expect(names.filter((name) => !name.startsWith('.')).sort()).toEqual(TOP);
});
