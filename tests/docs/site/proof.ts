/**
 * Writes the proof page into `docs/api/proof/`, after TypeDoc: a page, its style, the library with the page's program in one
 * file, and the check vectors. They are plain scripts, since a page opened from a folder may load no module and no JSON.
 */
import { copyFileSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { catalogue } from '../../../src/catalogue/index';
import { sources } from '../../../src/sources/index';
import { loadFunctions } from '../../vectors/loadFunctions';
import { runCheck } from '../../vectors/run';
import { groupOf, type VectorFile } from '../../vectors/schema';
import type { Proof, ProofCheck, Totals } from './page/proof';

const root = new URL('../../../', import.meta.url).pathname;
const here = new URL('./', import.meta.url).pathname;

/** Every check of `shared/`, in the order of the files. */
function checksOf(): ProofCheck[] {
  const files = readdirSync(`${root}shared`).filter((file) => file.endsWith('.json'));
  return files.sort().flatMap((file) => {
    const vectors = JSON.parse(readFileSync(`${root}shared/${file}`, 'utf8')) as VectorFile;
    return vectors.checks.map(({ kind, recalled, transcription, source, row: _, ...check }) => ({
      ...check,
      group: groupOf({ kind, recalled, transcription }),
      sources: source === undefined ? [vectors.source].flat() : [source],
    }));
  });
}

/** What Node comes to, as `npm run check` counts it. */
async function totalsInNode(checks: readonly ProofCheck[]): Promise<Totals> {
  const functions = await loadFunctions();
  return { checks: checks.length, passed: checks.filter((check) => runCheck(check, functions).passed).length };
}

export async function proofOf(): Promise<Proof> {
  const checks = checksOf();
  const named = new Set(checks.flatMap((check) => check.sources));
  return {
    version: (JSON.parse(readFileSync(`${root}package.json`, 'utf8')) as { version: string }).version,
    checks,
    modules: Object.fromEntries(catalogue().map(({ name, module }) => [name, module])),
    titles: Object.fromEntries(
      sources()
        .filter(({ id }) => named.has(id))
        .map(({ id, title }) => [id, title]),
    ),
    node: await totalsInNode(checks),
  };
}

/** Writes the page into a folder; the library in it is the built one, as a bundler takes it. */
export async function writeProof(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const proof = await proofOf();
  const page = readFileSync(`${here}proof.html`, 'utf8');
  writeFileSync(`${folder}/index.html`, page.replace('VERSION', proof.version));
  copyFileSync(`${here}proof.css`, `${folder}/proof.css`);
  // packed, they take a tenth of the room; as JSON they lie in the package, under `stillroom/vectors`
  const packed = gzipSync(JSON.stringify(proof), { level: 9 }).toString('base64');
  writeFileSync(`${folder}/vectors.js`, `const packed = '${packed}';\n`);
  await build({
    entryPoints: [`${here}page/main.ts`],
    bundle: true,
    minify: true,
    format: 'esm',
    // a plain script waits only inside of a function
    banner: { js: '(async () => {' },
    footer: { js: '})();' },
    target: 'es2022',
    alias: { 'stillroom/catalogue': `${root}dist/catalogue/index.js` },
    tsconfigRaw: {},
    outfile: `${folder}/proof.js`,
    logLevel: 'error',
  });
}

if (process.argv[1] === new URL(import.meta.url).pathname) await writeProof(`${root}docs/api/proof`);
