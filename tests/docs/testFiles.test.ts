/** A public function is tested in a file named after its source file, so that you find one from the other. */
import { readdirSync } from 'node:fs';
import { basename } from 'node:path';
import { test } from 'vitest';
import { publicFace, root } from '../helpers/publicTypes';
import { expectListed } from '../helpers/shrinking';

test('every source file with a public function has its test file', () => {
  const found = new Map<string, string>();
  for (const { name, file } of publicFace().functions) {
    const [, module = ''] = file.split('/');
    const wanted = `${basename(file, '.ts')}.test.ts`;
    if (testFiles(module).has(wanted)) continue;
    found.set(file, [...(found.get(file)?.split(', ') ?? []), name].join(', '));
  }
  expectListed(
    { file: 'tests/docs/withoutTest.json', found, mend: 'Write tests/<module>/.../<file>.test.ts.' },
    'to be written',
  );
});

const known = new Map<string, ReadonlySet<string>>();
function testFiles(module: string): ReadonlySet<string> {
  const found =
    known.get(module) ??
    new Set(readdirSync(`${root}tests/${module}`, { recursive: true }).map((name) => basename(String(name))));
  known.set(module, found);
  return found;
}
