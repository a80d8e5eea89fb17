import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const room = new URL('../../../src/plan/check/', import.meta.url).pathname;

test('the checker knows nothing of how an order of work is made', () => {
  const files = readdirSync(room);
  expect(files.length).toBeGreaterThan(5);
  for (const file of files) {
    const named = [...readFileSync(room + file, 'utf8').matchAll(/from '(\.[^']+)'/g)].map((match) => match[1] ?? '');
    const makers = named.filter((name) => /^\.\.\/(schedule|program|solver|makes)\//.test(name));
    expect(makers, file).toEqual([]);
  }
});
