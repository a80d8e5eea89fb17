import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, expect, test } from 'vitest';
import { catalogue } from '../../src/catalogue/index';
import { writeSchemas } from './schemas';

const folder = mkdtempSync(join(tmpdir(), 'schemas-'));
writeSchemas(folder);
afterAll(() => rmSync(folder, { recursive: true }));
const read = (file: string) => JSON.parse(readFileSync(join(folder, file), 'utf8'));

test('two files for each function, one that they share, one that lists them', () => {
  const names = catalogue().flatMap(({ name }) => [`${name}.input.json`, `${name}.output.json`]);
  expect(readdirSync(folder).sort()).toEqual([...names, 'definitions.json', 'index.json'].sort());
});
test('the files are schemas that a validator reads together, and accept the example of each function', () => {
  const ajv = new Ajv2020({ strict: false, schemas: [read('definitions.json')] });
  for (const { name, example } of catalogue()) {
    const takes = ajv.compile(read(`${name}.input.json`));
    ajv.compile(read(`${name}.output.json`));
    if (example !== undefined) expect(takes(example), name).toBe(true);
  }
});
test('no definition is written twice', () => {
  for (const file of readdirSync(folder).filter((each) => each !== 'definitions.json'))
    expect(readFileSync(join(folder, file), 'utf8'), file).not.toContain('"$defs":{');
});
