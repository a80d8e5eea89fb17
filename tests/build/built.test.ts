/** The built package answers as the sources do: its tables are packed, and its constants made at first use. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/index';
import { goodArguments } from '../helpers/inputs';
import { loadFunctions } from '../vectors/loadFunctions';
import type { VectorFile } from '../vectors/schema';
import { builtProject, type Project } from './built';

type Call = (...args: readonly unknown[]) => unknown;

const shared = new URL('../../shared/', import.meta.url);
const files = readdirSync(shared).filter((name) => name.endsWith('.json'));
const sources = await loadFunctions();
const built = new Map<string, Call>();
let project: Project;

beforeAll(async () => {
  project = await builtProject();
  const { exports } = JSON.parse(readFileSync(join(project.installed, 'package.json'), 'utf8'));
  for (const path of Object.keys(exports).filter((each) => exports[each].import !== undefined)) {
    const file = pathToFileURL(join(project.installed, exports[path].import.default)).href;
    for (const [name, value] of Object.entries(await import(/* @vite-ignore */ file)))
      if (typeof value === 'function') built.set(name, value as Call);
  }
});
afterAll(() => project.remove());

/** What a call gives: its answer to the last letter, or all that its error says. */
function outcome(call: Call | undefined, args: readonly unknown[]): string {
  try {
    return JSON.stringify(call?.(...args));
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    const { code, path, given, expected, options, nearest, message } = error;
    return JSON.stringify({ code, path, given: String(given), expected, options, nearest, message });
  }
}

const apart = (calls: readonly (readonly [name: string, args: readonly unknown[]])[]): unknown[] =>
  calls.filter(([name, args]) => outcome(built.get(name), args) !== outcome(sources.get(name), args));

test('it has the functions of the sources', () => {
  expect([...built.keys()].sort()).toEqual([...sources.keys()].sort());
});

describe('it answers every vector as the sources do', () => {
  test.each(files)('%s', (file) => {
    const { checks } = JSON.parse(readFileSync(new URL(file, shared), 'utf8')) as VectorFile;
    expect(checks.length).toBeGreaterThan(0);
    expect(apart(checks.map(({ call, input }) => [call, Array.isArray(input) ? input : [input]]))).toEqual([]);
  });
});

test('it answers the samples of every function as the sources do', () => {
  const samples = [...goodArguments(0)].flatMap(([name, list]) => list.map((args) => [name, args] as const));
  expect(samples.length).toBeGreaterThan(30);
  expect(apart(samples)).toEqual([]);
});

test('a wrong argument is refused in the same words', () => {
  const calls = [...sources.keys()].filter((name) => name !== 'StillroomError');
  const wrong = calls.flatMap((name) => [
    [name, [undefined]] as const,
    [name, [{ nothing: 1 }]] as const,
    [name, [{ food: 'peech', jar: 'pimt', elevation: '1 lb' }]] as const,
  ]);
  expect(apart(wrong)).toEqual([]);
});
