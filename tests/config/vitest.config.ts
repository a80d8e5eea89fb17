import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../..', import.meta.url));

export default defineConfig({
  root,
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
