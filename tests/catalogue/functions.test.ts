/** What is written of the functions is what they are: every one is there, and its schemas hold for what it takes and answers. */
import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { catalogue, check } from '../../src/catalogue/index';
import { sources } from '../../src/sources/index';
import { goodArguments } from '../helpers/inputs';
import { publicFace, root } from '../helpers/publicTypes';
import { loadFunctions } from '../vectors/loadFunctions';
import { files, written } from './functions';

const functions = await loadFunctions();
const entries = catalogue();
const samples = goodArguments(Number.POSITIVE_INFINITY);

/** All rules of the standard, and the one keyword of our own; tuples may be longer than the fewest arguments. */
const ajv = new Ajv2020({
  strict: true,
  strictTuples: false,
  strictTypes: false,
  strictRequired: false,
  keywords: ['stillroom'],
});

test('what is checked in is what the generator writes: npx tsx tests/catalogue/functions.ts', async () => {
  for (const [file, text] of Object.entries(files(await written())))
    expect(readFileSync(`${root}data/catalogue/${file}`, 'utf8') === text, file).toBe(true);
}, 60_000);

test('every public function is in the catalogue, once', () => {
  const own = publicFace().functions.filter(({ module }) => module !== 'catalogue');
  expect(own.length).toBeGreaterThan(140);
  expect(entries.map(({ name }) => name).sort()).toEqual([...new Set(own.map(({ name }) => name))].sort());
});

describe('the schemas of', () => {
  test.each(entries.map((entry) => [entry.name, entry] as const))('%s', (name, { input, output }) => {
    const takes = ajv.compile(input);
    const answers = ajv.compile(output);
    const given = samples.get(name) ?? [];
    expect(given.length).toBeGreaterThan(0);
    for (const args of given) {
      const [first] = args;
      const one = args.length === 1 ? first : args;
      if (args.length > 0) expect(takes(one), `${JSON.stringify(one)}: ${ajv.errorsText(takes.errors)}`).toBe(true);
      const answer = JSON.parse(JSON.stringify(functions.get(name)?.(...structuredClone(args))));
      expect(answers(answer), `${JSON.stringify(one)}: ${ajv.errorsText(answers.errors)}`).toBe(true);
    }
  });
});

test('an input schema refuses a field that there is not, where the argument is an object', () => {
  const open = entries.filter(({ name, input, example }) => {
    // planProblems takes anything, and says what is wrong with it
    if (typeof example !== 'object' || example === null || Array.isArray(example)) return false;
    return ajv.validate(input, { ...example, noSuchField: 1 }) && name !== 'planProblems';
  });
  expect(open.map(({ name }) => name)).toEqual([]);
});

test('a field of the wrong type is refused by the schema as by the function', () => {
  const passed: string[] = [];
  let tried = 0;
  for (const { name, input, example } of entries) {
    if (typeof example !== 'object' || example === null || Array.isArray(example)) continue;
    for (const field of Object.keys(example)) {
      for (const wrong of [true, { nothing: 1 }, null]) {
        const given = { ...example, [field]: wrong };
        if (!check(name, given).problems.some(({ path }) => path === field)) continue;
        tried += 1;
        if (ajv.validate(input, given)) passed.push(`${name} ${field}: ${JSON.stringify(wrong)}`);
      }
    }
  }
  expect(tried).toBeGreaterThan(500);
  expect(passed).toEqual([]);
});

test('each says what it answers in one sentence, names its vectors, and sources of the register', () => {
  const known = new Set(sources().map(({ id }) => id));
  for (const { name, says, vectors, sources: named } of entries) {
    expect(says, name).toMatch(/^[A-Z].*[.?]$/);
    expect(says.length, name).toBeLessThan(400);
    for (const file of vectors) expect(readFileSync(`${root}shared/${file}`, 'utf8')).toContain(`"${name}"`);
    for (const id of named) expect(known.has(id), id).toBe(true);
  }
});
