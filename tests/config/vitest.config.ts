import { readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { shippedRows } from '../build/shipped.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

const tables = `${root}data/`;
const SHIPPED = '.json?shipped';

/**
 * The library reads its tables as the built package has them, without the columns for readers, and frozen through and
 * through: a function that writes into one throws, here if not in an app. What a test itself imports is the whole table.
 */
const shippedTables: Plugin = {
  name: 'shipped-tables',
  enforce: 'pre',
  resolveId(source, importer) {
    if (!source.endsWith('.json') || importer?.startsWith(`${root}src/`) !== true) return null;
    return `${resolve(dirname(importer), source)}?shipped`;
  },
  load(id) {
    if (!id.startsWith(tables) || !id.endsWith(SHIPPED)) return null;
    const text = readFileSync(id.slice(0, -'?shipped'.length), 'utf8');
    const rows = shippedRows(id.slice(tables.length, -SHIPPED.length), text);
    return `const freeze = (value) => {
      if (typeof value === 'object' && value !== null) Object.values(Object.freeze(value)).forEach(freeze);
      return value;
    };
    export default freeze(${JSON.stringify(Array.isArray(JSON.parse(text)) ? rows : { rows })});`;
  },
  transform(code, id) {
    // the table is a program by now, and must not be read as JSON again
    return id.startsWith(tables) && id.endsWith(SHIPPED) ? { code, map: null, moduleType: 'js' } : null;
  },
};

export default defineConfig({
  root,
  plugins: [shippedTables],
  resolve: {
    alias: [
      { find: /^stillroom$/, replacement: `${root}src/index.ts` },
      { find: /^stillroom\/([\w-]+)$/, replacement: `${root}src/$1/index.ts` },
    ],
  },
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/config/setup.ts'],
    // no test is a matter of speed: a busy machine may take its time
    testTimeout: 120_000,
    hookTimeout: 120_000,
    typecheck: { enabled: true, include: ['tests/**/*.test-d.ts'], tsconfig: `${root}tsconfig.json` },
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text-summary', 'json-summary', 'text'],
      thresholds: { lines: 95, branches: 95 },
    },
  },
});
