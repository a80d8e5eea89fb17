import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Basis, type Caution, sources } from '../../src/sources/index';
import { goodArguments } from '../helpers/inputs';
import { expectListed } from '../helpers/shrinking';
import { poorNoes, strayPaths, wrongByFunction } from '../sources/basisPaths';
import { loadFunctions } from './loadFunctions';
import { runCheck } from './run';
import { check as checkSchema, GROUPS, groupOf, type VectorFile, vectorFile } from './schema';

const shared = new URL('../../shared/', import.meta.url).pathname;
const files = readdirSync(shared, { recursive: true })
  .map(String)
  .filter((file) => file.endsWith('.json'))
  .sort();
/** Functions whose answer is a plain figure, a quantity or a name. */
const PLAIN = new Set(['convert', 'parseQuantity', 'findFood', 'whatIsKnown']);
const functions = await loadFunctions();
const known = new Set(sources().map(({ id }) => id));
/** Lines of the process tables whose rows do not yet say what was seen. */
const processTables = new URL('../../data/process/', import.meta.url).pathname;
const waiting = new Set(
  readdirSync(processTables).flatMap((name) => {
    const { rows = [] } = JSON.parse(readFileSync(processTables + name, 'utf8')) as { rows?: (Basis & object)[] };
    return rows.filter(({ seen }) => seen === undefined).map(({ source, locator }) => `${source} | ${locator}`);
  }),
);

/** What every vector was answered. */
const answers: (readonly [name: string, answer: unknown])[] = [];

describe.each(files)('vectors %s', (file) => {
  const vectors = JSON.parse(readFileSync(shared + file, 'utf8')) as VectorFile;

  test('is a vector file: closed kinds, nothing unknown', () => {
    const parsed = vectorFile.safeParse(vectors);
    expect(parsed.success ? [] : parsed.error.issues.slice(0, 5)).toEqual([]);
  });

  test('names its sources, and each check once', () => {
    for (const id of [vectors.source].flat()) expect(known).toContain(id);
    for (const { source } of vectors.checks) if (source !== undefined) expect(known).toContain(source);
    const ids = vectors.checks.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  const outcomes = vectors.checks.map((check) => runCheck(check, functions));
  answers.push(...outcomes.map(({ check, answer }) => [check.call, answer] as const));

  test('every check holds', () => {
    const failed = outcomes.filter(({ passed }) => !passed);
    expect(
      failed.map(({ check, comparisons }) => ({ id: check.id, wrong: comparisons.filter((c) => !c.passed) })),
    ).toEqual([]);
  });

  test('every answer says where it comes from, in sources of the register', () => {
    const lost = outcomes.flatMap(({ check, answer }) => {
      const { basis = [], cautions = [] } = (answer ?? {}) as { basis?: Basis[]; cautions?: Caution[] };
      return [...basis, ...cautions]
        .filter(({ source }) => source !== undefined && !known.has(source))
        .map(({ source }) => `${check.id}: ${source}`);
    });
    expect(lost).toEqual([]);
    for (const { check, answer } of outcomes) {
      // conversions and lists are plain; every other answer carries its basis
      if (typeof answer !== 'object' || answer === null || Array.isArray(answer) || 'error' in answer) continue;
      if (PLAIN.has(check.call)) continue;
      expect(answer, `${check.call} in ${check.id}`).toHaveProperty('basis');
      for (const line of (answer as { basis: Basis[] }).basis) {
        expect(['published', 'equation', 'common-practice', 'recalled', 'measured', 'derived']).toContain(line.kind);
        if (line.kind === 'published' || line.kind === 'recalled') expect(line.source).toBeTruthy();
        if (line.kind === 'published' && !waiting.has(`${line.source} | ${line.locator}`))
          expect(line.seen, `${line.of} in ${check.id}`).toBeTruthy();
      }
    }
  });
});

describe('what answers say, over all vectors and samples', () => {
  for (const [name, samples] of goodArguments(0))
    for (const args of samples) answers.push([name, functions.get(name)?.(...args)]);

  test('every line of basis names a field of its answer', () => {
    expectListed({
      file: 'tests/sources/basisPaths.json',
      found: wrongByFunction(answers, strayPaths),
      mend: '`of` is the path of a field that the answer has: `minutes`, `ready.low`, `ways[].jar`; words go into `note`.',
    });
  });

  test('every no gives a reason with its code, and something to do instead', () => {
    expectListed({
      file: 'tests/sources/poorNoes.json',
      found: wrongByFunction(answers, poorNoes),
      mend: 'Answer with notTested or notKnown of src/sources/no.ts.',
    });
  });
});

describe('the schema can fail', () => {
  const good = {
    id: 'x',
    call: 'convert',
    input: ['1 cup', 'tsp'],
    expect: { value: 48, unit: 'tsp' },
    tolerance: 'exact',
    kind: 'published table',
  };
  test.each([
    ['a whole check passes', good, true],
    ['a kind of another name', { ...good, kind: 'published' }, false],
    ['no kind', { ...good, kind: undefined }, false],
    ['a field of another name', { ...good, notes: 'x' }, false],
    ['an error that is no bad input', { ...good, expect: { error: 'MISSING' } }, false],
    ['bad input without an error', { ...good, kind: 'bad input' }, false],
    ['a tolerance of nothing', { ...good, tolerance: { absolute: 0 } }, false],
    ['recalled is said or left out', { ...good, recalled: false }, false],
    ['a recalled figure passes', { ...good, recalled: true }, true],
  ] as const)('%s', (_, given, passes) => {
    expect(checkSchema.safeParse(given).success).toBe(passes);
  });

  test('recalled figures and transcriptions count apart', () => {
    expect(groupOf({ kind: 'published table' })).toBe('published table');
    expect(groupOf({ kind: 'published table', transcription: true })).toBe('table with its own transcription');
    expect(groupOf({ kind: 'worked example', recalled: true })).toBe('recalled with recalled');
    expect(GROUPS).toHaveLength(8);
  });
});

describe('the runner can fail', () => {
  const check = { id: 'x', call: 'convert', input: ['1 cup', 'tsp'], expect: { value: 48, unit: 'tsp' } };
  test.each([
    ['a right figure passes', check, true],
    ['another unit is converted', { ...check, expect: { value: 16, unit: 'tbsp' } }, true],
    ['a wrong figure fails', { ...check, expect: { value: 47, unit: 'tsp' } }, false],
    ['a missing field fails', { ...check, expect: { size: 48 } }, false],
    ['a wrong dimension fails', { ...check, expect: { value: 48, unit: 'g' } }, false],
    ['an unknown function fails', { ...check, call: 'convertt' }, false],
    ['an error where a figure belongs fails', { ...check, input: ['1 cup', 'lb'] }, false],
    [
      'an error that is expected passes',
      { ...check, input: ['1 cup', 'lb'], expect: { error: 'WRONG_DIMENSION' } },
      true,
    ],
    [
      'an empty list that is published passes',
      { ...check, call: 'growthAt', input: { waterActivity: 0.3 }, expect: { mayGrow: [] } },
      true,
    ],
    [
      'an empty list in place of organisms fails',
      { ...check, call: 'growthAt', input: { waterActivity: 0.99 }, expect: { mayGrow: [] } },
      false,
    ],
    ['an empty expectation fails', { ...check, expect: {} }, false],
    [
      'outside its tolerance fails',
      { ...check, expect: { value: 48.1, unit: 'tsp' }, tolerance: { absolute: 0.05 } },
      false,
    ],
    [
      'inside its tolerance passes',
      { ...check, expect: { value: 48.1, unit: 'tsp' }, tolerance: { relative: 0.01 } },
      true,
    ],
  ] as const)('%s', (_, given, passes) => {
    expect(runCheck(given, functions).passed).toBe(passes);
  });
});
