/** A page pays only for what it uses, with each of the usual bundlers. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import * as esbuild from 'esbuild';
import { rollup } from 'rollup';
import { build as viteBuild } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { builtProject, type Project } from './built';

let project: Project;
beforeAll(async () => {
  project = await builtProject();
});
afterAll(() => project.remove());

/** The program of a page, bundled and not minified. */
type Bundle = (page: string) => Promise<string>;

function pageOf(contents: string): string {
  const page = join(project.folder, 'page.js');
  writeFileSync(page, contents);
  return page;
}

const withEsbuild: Bundle = async (contents) => {
  const { outputFiles } = await esbuild.build({
    entryPoints: [pageOf(contents)],
    bundle: true,
    format: 'esm',
    platform: 'browser',
    tsconfigRaw: '{}',
    logLevel: 'silent',
    write: false,
  });
  return outputFiles[0]?.text ?? '';
};
const withRollup: Bundle = async (contents) => {
  const bundle = await rollup({ input: pageOf(contents), plugins: [nodeResolve()], onwarn: () => undefined });
  const { output } = await bundle.generate({ format: 'es' });
  return output[0].code;
};
const withVite: Bundle = async (contents) => {
  const input = pageOf(contents);
  const built = await viteBuild({
    root: project.folder,
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      minify: false,
      modulePreload: false,
      rollupOptions: { input, preserveEntrySignatures: 'strict', output: { format: 'es' } },
    },
  });
  const [{ output }] = [built].flat() as { output: { code?: string }[] }[] as [{ output: { code?: string }[] }];
  return output.map(({ code = '' }) => code).join('\n');
};

/** Words that stand in the built package where the thing itself does: a table, the planner, the schemas. */
const MARKS = {
  recipes: 'apple-butter',
  planner: 'dualSimplex',
  register: 'usda-cghc-2015',
  schemas: 'ZodMiniObject',
} as const;

describe.each([
  ['esbuild', withEsbuild],
  ['Rollup', withRollup],
  ['Vite', withVite],
] as const)('%s', (_, bundle) => {
  test('takes nothing of an import that is not used', async () => {
    const page = await bundle(`import { planDay, convert } from 'stillroom'; import * as jars from 'stillroom/jars';`);
    expect(page.replace(/\/\/.*|export \{\s*\};?/g, '').trim()).toBe('');
  });

  test('leaves out of one function what it does not use, and the page runs', async () => {
    const code = await bundle(`export { convert } from 'stillroom';`);
    for (const [what, mark] of Object.entries(MARKS)) expect(code.includes(mark), what).toBe(false);
    const page = await import(/* @vite-ignore */ `data:text/javascript,${encodeURIComponent(code)}`);
    expect(page.convert('1 cup', 'tsp')).toEqual({ value: 48, unit: 'tsp' });
  });

  test('leaves the schemas out of a page that looks up a food', async () => {
    const code = await bundle(`export { findFood } from 'stillroom/foods';`);
    expect(code).toContain('boysenberry');
    for (const [what, mark] of Object.entries(MARKS)) expect(code.includes(mark), what).toBe(false);
  });

  test('bundles the whole, and the page runs', async () => {
    const code = await bundle(`export * from 'stillroom';`);
    for (const [what, mark] of Object.entries(MARKS)) expect(code.includes(mark), what).toBe(true);
    const page = await import(/* @vite-ignore */ `data:text/javascript,${encodeURIComponent(code)}`);
    expect(page.boilingTemperature({ elevation: '0 ft' }).temperature.unit).toBe('degF');
  });
});

test('no statement of the package does work when it is imported: what stays of all is little', async () => {
  const manifest = join(project.installed, 'package.json');
  const text = readFileSync(manifest, 'utf8');
  try {
    writeFileSync(manifest, text.replace('"sideEffects": false', '"sideEffects": true'));
    const code = await withEsbuild(`import 'stillroom';`);
    // the class of the error, and of zod's
    expect(code).not.toContain('unpack(');
    expect(code.length).toBeLessThan(10_000);
  } finally {
    writeFileSync(manifest, text);
  }
});
