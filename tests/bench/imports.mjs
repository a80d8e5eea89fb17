/** How long an import takes in a fresh process, by that of zod; and what a page pays in bytes. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { median } from './measure.mjs';
import { section, tell } from './report.mjs';
import { functionSize, moduleSize } from './sizes.mjs';

const root = new URL('../..', import.meta.url).pathname;
const { exports } = JSON.parse(readFileSync(`${root}package.json`, 'utf8'));
const modules = Object.keys(exports)
  .filter((path) => exports[path].import !== undefined)
  .map((path) => `stillroom${path.slice(1)}`);
const written = JSON.parse(readFileSync(new URL('../build/sizes.json', import.meta.url), 'utf8'));

function startUp(module) {
  const code = `
    const cpu = process.cpuUsage();
    const start = performance.now();
    await import(${JSON.stringify(module)});
    const wall = performance.now() - start;
    const { user, system } = process.cpuUsage(cpu);
    console.log(JSON.stringify({ wall: wall * 1000, cpu: user + system }));`;
  return JSON.parse(
    execFileSync(process.execPath, ['--input-type=module', '-e', code], { cwd: root, encoding: 'utf8' }),
  );
}

export function imports({ quick }) {
  section('Import in a fresh process', 'CPU time of `await import()` by that of zod, process by process in turn.');
  const names = ['zod', ...(quick ? ['stillroom', 'stillroom/quantity', 'stillroom/process'] : modules)];
  const samples = new Map(names.map((name) => [name, []]));
  for (let round = 0; round < (quick ? 5 : 11); round++)
    for (const name of names) samples.get(name).push(startUp(name));
  const zod = samples.get('zod');
  for (const [name, list] of samples) {
    tell(name === 'zod' ? '' : name === 'stillroom' ? 'import / whole' : 'import / craft', `${name} / zod`, {
      value: median(list.map(({ cpu }, round) => cpu / zod[round].cpu)),
      wall: median(list.map(({ wall }) => wall)),
      cpu: median(list.map(({ cpu }) => cpu)),
    });
  }
}

export async function sizes({ quick }) {
  section(
    'What a page pays',
    'A page that imports the whole of a module, or one function (`#`), minified and gzipped, with everything that it needs.',
  );
  const paths = Object.keys(written).filter((path) => !quick || path.includes('#') || path === 'stillroom');
  for (const path of paths) {
    const value = await (path.includes('#') ? functionSize(path, root) : moduleSize(path, root));
    tell(path, path, { value, unit: 'kB', bar: written[path].bar });
  }
}
