/**
 * Builds the programs of `dist/`, as ES modules and as CommonJS: `npm run build:js`. The types are tsup's.
 *
 * One file holds a module with its tables, and `core` what they all use: words, quantities, errors. A few large files load
 * twice as fast in Node as one for each source, and a bundler drops what a page does not use statement by statement, since
 * none of them does any work. The other packages are built in, each in a file of its own: zod alone, loaded as a package,
 * takes longer than the whole library.
 */
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import { transform } from 'esbuild';
import { type Plugin, rollup } from 'rollup';
import { lazyConstants } from './lazyConstants';
import { writeSchemas } from './schemas';
import { packedTable } from './tables';

const root = new URL('../..', import.meta.url).pathname;
const tables = `${root}data/`;
const sources = readdirSync(`${root}src`, { recursive: true })
  .map(String)
  .filter((file) => file.endsWith('.ts') && !file.endsWith('.d.ts'))
  .map((file) => `${root}src/${file}`);
const entries = sources.filter((path) => path.endsWith('/index.ts'));

/** What has no file of its own. */
const CORE = ['common', 'errors', 'quantity', 'sources', 'words'];

/** The other package that a file belongs to. */
const packageOf = (id: string): string | undefined => /.*\/node_modules\/([\w.-]+)\//.exec(id)?.[1];

/** The licenses of the packages that are built in, as they ask for. */
function licensesOf(files: readonly string[]): string {
  const names = [...new Set(files.map(packageOf))].filter((name) => name !== undefined).sort();
  return names
    .map((name) => {
      const folder = `${root}node_modules/${name}/`;
      const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
      if (file === undefined) throw new Error(`${name} has no license to pass on`);
      return `${name}\n\n${readFileSync(folder + file, 'utf8').trim()}\n`;
    })
    .join('\n\n');
}

function fileOf(id: string): string {
  const other = packageOf(id);
  if (other === 'zod') return other;
  if (id === `${tables}sources.json` || id.startsWith(`${root}src/sources/source`)) return 'sources';
  const module = /^(?:src|data)\/([\w-]+)\//.exec(id.slice(root.length))?.[1] ?? 'core';
  // these two read each other's tables
  if (module === 'acid') return 'process';
  return CORE.includes(module) ? 'core' : module;
}

/** The sources: constants are made at first use, and so are the tables read. */
function atFirstUse(): Plugin {
  const written = lazyConstants(sources, `${root}src/common/lazily.ts`);
  return {
    name: 'at-first-use',
    resolveId(source, importer) {
      if (sources.includes(source)) return source;
      if (!source.startsWith('.') || importer === undefined) return null;
      const path = resolve(dirname(importer), source);
      if (path.endsWith('.json')) return path;
      return [`${path}.ts`, `${path}/index.ts`].find((each) => sources.includes(each)) ?? null;
    },
    async load(id) {
      if (id.startsWith(tables)) {
        const table = id.slice(tables.length, -'.json'.length);
        return packedTable(table, readFileSync(id, 'utf8'), `${root}src/common`);
      }
      if (!sources.includes(id)) return null;
      return (await transform(written(id), { loader: 'ts', target: 'es2022' })).code;
    },
    /** Without comments, other than the licenses. */
    async renderChunk(code) {
      return (await transform(code, { legalComments: 'inline' })).code;
    },
  };
}

/** Builds the package into a folder, in one format or both. */
export async function buildInto(folder: string, formats: readonly ('es' | 'cjs')[]): Promise<void> {
  mkdirSync(folder, { recursive: true });
  // the types lie beside the programs, and are tsup's
  for (const file of readdirSync(folder, { recursive: true }).map(String))
    if (/\.c?js$/.test(file)) rmSync(`${folder}/${file}`);
  const bundle = await rollup({
    input: Object.fromEntries(entries.map((path) => [path.slice(`${root}src/`.length, -'.ts'.length), path])),
    plugins: [atFirstUse(), nodeResolve()],
    onwarn: ({ message, id, ids = [] }) => {
      // what other packages do inside is theirs: zod's files import one another in a circle
      const about = id === undefined ? ids : [id];
      if (about.length === 0 || about.some((each) => !each.includes('/node_modules/'))) throw new Error(message);
    },
  });
  for (const format of formats) {
    const ending = format === 'es' ? 'js' : 'cjs';
    await bundle.write({
      dir: folder,
      format,
      entryFileNames: `[name].${ending}`,
      chunkFileNames: `shared/[name].${ending}`,
      manualChunks: (id) => (entries.includes(id) ? undefined : fileOf(id)),
      hoistTransitiveImports: false,
      minifyInternalExports: false,
      generatedCode: 'es2015',
    });
  }
  writeFileSync(`${folder}/LICENSES.txt`, licensesOf(bundle.watchFiles));
  writeSchemas(`${folder}/schemas`);
  cpSync(`${root}shared`, `${folder}/vectors`, { recursive: true });
  await bundle.close();
}

if (process.argv[1] === new URL(import.meta.url).pathname) await buildInto(`${root}dist`, ['es', 'cjs']);
