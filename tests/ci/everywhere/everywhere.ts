/**
 * Every runtime, bundler and checker of types on the installed package; `tests/ci/everywhere.sh` makes the folder.
 * Node's answers, here from the ES modules, are what the others are compared with.
 */
import { copyFileSync, mkdirSync, readFileSync } from 'node:fs';
import { type Bundler, withEsbuild, withRollup, withVite, withWebpack } from './bundles';
import { compare } from './compare';
import { findChromium, inWorker, posted, unbundled } from './page';
import { writePrograms } from './programs';
import { install, NotAvailable, printed } from './run';

const root = new URL('../../../', import.meta.url).pathname;
const scratch = process.argv[2] as string;
const bundled = `${scratch}/bundled`;
/** Functions whose numbers may be further apart, and why. */
const FURTHER = JSON.parse(readFileSync(new URL('apart.json', import.meta.url), 'utf8')) as Readonly<
  Record<string, { readonly relative: number; readonly reason: string }>
>;
const versionIn = (manifest: string): string => JSON.parse(readFileSync(manifest, 'utf8')).version;

let failed = 0;
let passed = 0;
let left = 0;

/** One line about a runtime or a tool: its version and what was found. */
async function line(name: string, say: () => Promise<readonly [version: string, found: string]>): Promise<void> {
  const began = performance.now();
  const seconds = () => `${((performance.now() - began) / 1000).toFixed(1)} s`;
  try {
    const [version, found] = await say();
    console.log(`ok    ${name.replace(/ \d+$/, '')} ${version}: ${found} (${seconds()})`);
    passed += 1;
  } catch (error) {
    if (error instanceof NotAvailable) {
      console.log(`left  ${name}: not available, because ${error.message} (${seconds()})`);
      left += 1;
      return;
    }
    console.log(`FAIL  ${name}: ${(error as Error).message}`);
    failed += 1;
  }
}

const calls = writePrograms(scratch);
mkdirSync(bundled, { recursive: true });
const reference = await printed(process.execPath, ['print.mjs'], scratch);
const expected = JSON.parse(reference) as readonly unknown[];
const broken = expected.filter((answer) => typeof answer === 'object' && answer !== null && 'thrown' in answer);
if (broken.length > 0) throw new Error(JSON.stringify(broken));

/** What is to be said of the answers of another runtime; throws where they differ. */
function compared(text: string): string {
  if (text === reference) return 'answers equal, to the last letter';
  const answers = JSON.parse(text) as readonly unknown[];
  if (answers.length !== expected.length) throw new Error(`${answers.length} answers, not ${expected.length}`);
  let apart = 0;
  const wrong: string[] = [];
  for (const [place, [name]] of calls.entries()) {
    const further = FURTHER[name];
    const found = compare(expected[place], answers[place], further?.relative);
    if (further === undefined) apart = Math.max(apart, found.apart);
    for (const { path, here, there } of found.differences.slice(0, 1))
      wrong.push(`${name}${path}: ${JSON.stringify(here)} in Node, ${JSON.stringify(there)} here`);
  }
  if (wrong.length > 0) throw new Error(`answers differ\n${wrong.slice(0, 10).join('\n')}`);
  return `answers equal, numbers within ${apart.toExponential(0)}`;
}

/** What a program prints in a runtime. */
const ofProgram = async (command: string, args: readonly string[], folder = scratch): Promise<string> =>
  compared(await printed(command, args, folder));

/** What a bundle prints in a folder where no package lies. */
async function ofBundle(name: string, bundle: Bundler): Promise<string> {
  const output = `${bundled}/${name}.mjs`;
  await bundle(`${scratch}/print.mjs`, output);
  return ofProgram(process.execPath, [output], bundled);
}

/** Both kinds of module, in a runtime of its own version. */
async function ofBoth(command: string, args: readonly string[] = []): Promise<string> {
  const modules = await ofProgram(command, [...args, 'print.mjs']);
  const commonJs = await ofProgram(command, [...args, 'print.cjs']);
  return modules === commonJs ? `ESM and CJS, ${modules}` : `ESM ${modules}; CJS ${commonJs}`;
}

async function ofWorkerd(packages: string): Promise<string> {
  await withEsbuild(`${scratch}/serve.mjs`, `${bundled}/serve.js`);
  copyFileSync(new URL('workerd.capnp', import.meta.url), `${bundled}/workerd.capnp`);
  return ofProgram(`${packages}/.bin/workerd`, ['test', 'workerd.capnp'], bundled);
}

/** Checks a program that imports by name, and every declaration that it meets, in each way of finding them. */
async function ofTypes(packages: string): Promise<string> {
  // zod's declarations name `URL`
  const always = ['--noEmit', '--strict', '--target', 'es2022', '--lib', 'es2022,dom'];
  const ways = { node16: 'node16', bundler: 'esnext' };
  await Promise.all(
    Object.entries(ways).map(([way, module]) => {
      const files = way === 'bundler' ? ['typed.mts'] : ['typed.mts', 'typed.cts'];
      const args = [...always, '--module', module, '--moduleResolution', way, ...files];
      return printed(process.execPath, [`${packages}/typescript/bin/tsc`, ...args], scratch);
    }),
  );
  return 'types clean under node16 and bundler';
}

const versionOf = (packages: string, name: string): string => versionIn(`${packages}/${name}/package.json`);
const owned = `${root}node_modules`;

await line('Node', async () => [process.versions.node, await ofBoth(process.execPath)]);
for (const name of ['Node 22', 'Node 24'])
  await line(name, async () => {
    const packages = await install(name, scratch);
    return [versionOf(packages, 'node'), await ofBoth(`${packages}/.bin/node`)];
  });
// without any permission, and without a registry
await line('Deno', async () => [
  versionOf(owned, 'deno'),
  await ofBoth(`${owned}/.bin/deno`, ['run', '--quiet', '--no-prompt', '--no-remote']),
]);
await line('Bun', async () => {
  const packages = await install('Bun', scratch);
  return [versionOf(packages, 'bun'), await ofBoth(`${packages}/.bin/bun`, ['run'])];
});
await line('workerd', async () => {
  const packages = await install('workerd', scratch);
  return [versionOf(packages, 'workerd'), await ofWorkerd(packages)];
});
await line('Chromium, a page', async () => {
  const [chromium, version] = await findChromium(scratch);
  return [version, compared(await posted(chromium, scratch, unbundled(scratch, '/post.mjs')))];
});
await line('Chromium, a worker', async () => {
  const [chromium, version] = await findChromium(scratch);
  await withEsbuild(`${scratch}/post.mjs`, `${bundled}/post.js`);
  return [version, compared(await posted(chromium, scratch, inWorker('/bundled/post.js')))];
});
for (const [name, bundle] of Object.entries({ esbuild: withEsbuild, Rollup: withRollup, Vite: withVite }))
  await line(name, async () => [versionOf(owned, name.toLowerCase()), await ofBundle(name.toLowerCase(), bundle)]);
await line('webpack', async () => {
  const packages = await install('webpack', scratch);
  return [versionOf(packages, 'webpack'), await ofBundle('webpack', withWebpack(packages))];
});
await line('TypeScript', async () => [versionOf(owned, 'typescript'), await ofTypes(owned)]);
for (const name of ['TypeScript 6', 'TypeScript 7'])
  await line(name, async () => {
    const packages = await install(name, scratch);
    return [versionOf(packages, 'typescript'), await ofTypes(packages)];
  });

console.log(`${calls.length} calls a run, in ${Math.round(performance.now() / 1000)} s; ${left} not available`);
console.log(`${passed} passed, ${failed} failed`);
if (failed > 0) process.exitCode = 1;
