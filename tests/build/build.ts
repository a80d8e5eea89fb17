/**
 * Builds the programs of `dist/`, as ES modules and as CommonJS: `npm run build:js`. The types are tsup's.
 *
 * One file holds a module with its tables (several, where it is large), and `core` what they all use: words, quantities,
 * errors. A few large files load twice as fast in Node as one for each source, and a bundler drops what a page does not
 * use statement by statement, since none of them does any work. The other packages are built in, each in a file of its
 * own: zod alone, loaded as a package, takes longer than the whole library.
 */
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import { transform } from 'esbuild';
import { type ModuleInfo, type Plugin, rollup } from 'rollup';
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

function familyOf(id: string): string {
  const other = packageOf(id);
  if (other === 'zod') return other;
  if (id === `${tables}sources.json` || id.startsWith(`${root}src/sources/source`)) return 'sources';
  const module = /^(?:src|data)\/([\w-]+)\//.exec(id.slice(root.length))?.[1] ?? 'core';
  // these two read each other's tables
  if (module === 'acid') return 'process';
  return CORE.includes(module) ? 'core' : module;
}

/**
 * How long a file of these may grow, about. The package holds each twice, as an ES module and as CommonJS; npm packs
 * files of one name side by side, and gzip leaves out what it met at most 32,768 signs before: the second costs next to
 * nothing. Every file more takes time to load, so what one craft needs stays in one.
 */
const LONGEST = 31_000;
const CUT = ['catalogue', 'plan', 'recipes', 'record', 'sheet'];

/** The file of each source; cut in the order in which the sources need one another, so that no two files need each other. */
function filesOf(infoOf: (id: string) => ModuleInfo | null): ReadonlyMap<string, string> {
  const inOrder = new Set<string>();
  const seen = new Set<string>();
  const visit = (id: string): void => {
    if (seen.has(id)) return;
    seen.add(id);
    infoOf(id)?.importedIds.forEach(visit);
    inOrder.add(id);
  };
  entries.forEach(visit);
  const last = new Map<string, { number: number; length: number }>();
  const files = new Map<string, string>();
  for (const id of inOrder) {
    const family = familyOf(id);
    const info = infoOf(id);
    // a source of types alone leaves nothing, and the marks in a table need no escape in the end
    const length = info?.isIncluded ? (info.code ?? '').replaceAll('\\"', '"').length : 0;
    const file = last.get(family) ?? { number: 1, length: 0 };
    const full = CUT.includes(family) && length > 0 && file.length > 0 && file.length + length > LONGEST;
    const next = full ? { number: file.number + 1, length } : { number: file.number, length: file.length + length };
    last.set(family, next);
    files.set(id, next.number === 1 ? family : `${family}-${next.number}`);
  }
  return files;
}

/** The sources: constants are made at first use, and so are the tables read. */
function atFirstUse(): Plugin {
  const written = lazyConstants(sources, `${root}src/common/lazily.ts`);
  const parts = new Map<string, string>();
  return {
    name: 'at-first-use',
    resolveId(source, importer) {
      if (sources.includes(source) || parts.has(source)) return source;
      if (!source.startsWith('.') || importer === undefined) return null;
      const path = resolve(dirname(importer), source);
      if (path.endsWith('.json')) return path;
      return [`${path}.ts`, `${path}/index.ts`].find((each) => sources.includes(each)) ?? null;
    },
    async load(id) {
      if (parts.has(id)) return parts.get(id);
      if (id.startsWith(tables)) {
        const most = CUT.includes(familyOf(id)) ? LONGEST : undefined;
        const table = packedTable(id, id.slice(tables.length, -'.json'.length), `${root}src/common`, most);
        for (const [path, part] of table.parts) parts.set(path, part);
        return table.program;
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
  let files: ReadonlyMap<string, string> | undefined;
  for (const format of formats) {
    const [ending, shared] = format === 'es' ? ['js', 'shared'] : ['cjs', 'shared/cjs'];
    await bundle.write({
      dir: folder,
      format,
      entryFileNames: `[name].${ending}`,
      chunkFileNames: `${shared}/[name].js`,
      manualChunks: (id, { getModuleInfo }) => {
        files ??= filesOf(getModuleInfo);
        return entries.includes(id) ? undefined : files.get(id);
      },
      hoistTransitiveImports: false,
      minifyInternalExports: false,
      generatedCode: 'es2015',
    });
  }
  if (formats.includes('cjs'))
    writeFileSync(`${folder}/shared/cjs/package.json`, '{ "type": "commonjs", "sideEffects": false }\n');
  writeFileSync(`${folder}/LICENSES.txt`, licensesOf(bundle.watchFiles));
  writeSchemas(`${folder}/schemas`);
  cpSync(`${root}shared`, `${folder}/vectors`, { recursive: true });
  await bundle.close();
}

if (process.argv[1] === new URL(import.meta.url).pathname) await buildInto(`${root}dist`, ['es', 'cjs']);
