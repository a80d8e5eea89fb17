import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The library's tables, frozen through and through: a function that writes into one throws, here if not in an app. */
const frozenTables: Plugin = {
  name: 'frozen-tables',
  enforce: 'pre',
  load(id) {
    if (!id.startsWith(`${root}data/`) || !id.endsWith('.json')) return null;
    return `const freeze = (value) => {
      if (typeof value === 'object' && value !== null) Object.values(Object.freeze(value)).forEach(freeze);
      return value;
    };
    export default freeze(${readFileSync(id, 'utf8')});`;
  },
  transform(code, id) {
    // the table is a program by now, and must not be read as JSON again
    return id.startsWith(`${root}data/`) ? { code, map: null, moduleType: 'js' } : null;
  },
};

export default defineConfig({
  root,
  plugins: [frozenTables],
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
    typecheck: { enabled: true, include: ['tests/**/*.test-d.ts'], tsconfig: `${root}tsconfig.json` },
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text-summary', 'json-summary', 'text'],
      thresholds: { lines: 95, branches: 95 },
    },
  },
});
