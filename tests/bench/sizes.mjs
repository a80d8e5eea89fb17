/** What a page pays for what it imports of the built package: minified, gzipped, with everything that it needs. */
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

/** The program text of a page, bundled and minified as a user's is. */
async function bundled(contents, from) {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: from },
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'browser',
    // not this repository's own paths, which lead to the sources
    tsconfigRaw: '{}',
    logLevel: 'error',
    write: false,
  });
  return outputFiles[0].contents;
}

/** kB, gzipped, of a page that imports a whole module: `stillroom/jars`. */
export const moduleSize = async (module, from) =>
  gzipSync(await bundled(`export * from ${JSON.stringify(module)}`, from), { level: 9 }).length / 1000;

/** kB, gzipped, of a page that imports one function: `stillroom/jars#fillJar`. */
export async function functionSize(path, from) {
  const [module, name] = path.split('#');
  return gzipSync(await bundled(`export { ${name} } from ${JSON.stringify(module)}`, from), { level: 9 }).length / 1000;
}
