import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { builtProject, type Project } from './built';
import { measured, type Size, sizes } from './sizes';

let project: Project;
let now: Readonly<Record<string, Size>>;
beforeAll(async () => {
  project = await builtProject();
  now = await measured(project.folder);
});
afterAll(() => project.remove());

/** How much a size may grow before the file must say so: a fiftieth, and half a kB. */
const allowed = ({ size }: Size): number => size * 1.02 + 0.5;

test('every module of the package has its size', () => {
  const { exports } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
  const modules = Object.keys(exports)
    .filter((path) => path !== './package.json' && !path.includes('*'))
    .map((path) => `stillroom${path.slice(1)}`);
  expect(Object.keys(sizes).filter((path) => !path.includes('#'))).toEqual(modules);
});

test.each(Object.entries(sizes))('%s is no larger than it was', (path, written) => {
  const { size } = now[path] as Size;
  expect(size, 'npx tsx tests/build/sizes.ts writes the new sizes').toBeLessThanOrEqual(allowed(written));
});

test.each(Object.entries(sizes).filter(([, { size, bar }]) => size <= bar))(
  '%s stays below its bar',
  (path, { bar }) => {
    expect((now[path] as Size).size).toBeLessThanOrEqual(bar);
  },
);

test('what became smaller is written down', () => {
  const shrunk = Object.entries(sizes).filter(([path, { size }]) => allowed(now[path] as Size) < size);
  expect(
    shrunk.map(([path]) => path),
    'npx tsx tests/build/sizes.ts writes the new sizes',
  ).toEqual([]);
});
