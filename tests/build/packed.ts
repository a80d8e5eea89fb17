/** What `npm install` downloads stays below its bar, and holds no source maps: `npx tsx tests/build/packed.ts`, after a build. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

const root = new URL('../..', import.meta.url).pathname;
const { most } = JSON.parse(readFileSync(new URL('packed.json', import.meta.url), 'utf8')) as { most: number };
const printed = execFileSync('npm', ['pack', '--dry-run', '--json'], {
  cwd: root,
  encoding: 'utf8',
  stdio: ['ignore', 'pipe', 'ignore'],
});
const [pack] = JSON.parse(printed) as { size: number; unpackedSize: number; files: { path: string }[] }[];
if (pack === undefined) throw new Error('npm packed nothing');
const { size, unpackedSize, files } = pack;
const maps = files.filter(({ path }) => path.endsWith('.map'));
console.log(
  `${files.length} files, ${Math.round(size / 1000)} kB packed of at most ${most}, ${Math.round(unpackedSize / 1000)} kB unpacked`,
);
if (size / 1000 > most) throw new Error(`the package is larger than ${most} kB`);
if (maps.length > 0) throw new Error(`the package holds source maps: ${maps.map(({ path }) => path).join(', ')}`);
