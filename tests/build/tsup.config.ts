/** How `dist/` is built: `npm run build`. */
import { readdirSync, readFileSync } from 'node:fs';
import type { Plugin } from 'esbuild';
import { defineConfig } from 'tsup';
import { lazyConstants } from './lazyConstants';
import { packedTable } from './tables';

const root = new URL('../..', import.meta.url).pathname;
const helper = `${root}src/common/lazily.ts`;
const sources = readdirSync(`${root}src`, { recursive: true })
  .map(String)
  .filter((file) => file.endsWith('.ts') && !file.endsWith('.d.ts'))
  .map((file) => `${root}src/${file}`);

let transform: ((path: string) => string) | undefined;

/** Constants that are made at first use, and tables that are read at first use. */
const atFirstUse: Plugin = {
  name: 'at-first-use',
  setup({ onLoad, onStart }) {
    onStart(() => {
      transform ??= lazyConstants(sources, helper);
    });
    onLoad({ filter: /\/src\/.*\.ts$/ }, ({ path }) => ({ contents: transform?.(path) ?? '', loader: 'ts' }));
    onLoad({ filter: /\/data\/.*\.json$/ }, ({ path }) => ({
      contents: packedTable(path.slice(`${root}data/`.length, -'.json'.length), readFileSync(path, 'utf8')),
      resolveDir: `${root}src/common`,
      loader: 'js',
    }));
  },
};

const entries = sources.filter((path) => path.endsWith('/index.ts')).map((path) => path.slice(root.length));

export default defineConfig({
  // decimal.js can only be taken whole: in a file of its own a page without decimals goes without it
  entry: [...entries, 'src/common/decimal.ts'],
  format: ['esm', 'cjs'],
  target: 'es2022',
  platform: 'neutral',
  dts: { entry: entries },
  sourcemap: false,
  splitting: true,
  clean: true,
  treeshake: false,
  noExternal: [/.*/],
  esbuildPlugins: [atFirstUse],
});
