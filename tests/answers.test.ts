/** What holds of every public function, whatever it answers: tried on the arguments of its own check vectors. */
import { describe, expect, test } from 'vitest';
import { StillroomError } from '../src/errors/index';
import { GARBAGE } from './helpers/garbage';
import { goodArguments } from './helpers/inputs';
import { loadFunctions } from './vectors/loadFunctions';

const functions = await loadFunctions();
functions.delete('StillroomError');
const inputs = goodArguments(12);
const names = [...functions.keys()].sort();
const call = (name: string, args: readonly unknown[]): unknown => functions.get(name)?.(...structuredClone(args));

test('every public function is tried', () => {
  expect(names.length).toBeGreaterThan(100);
  expect(names.filter((name) => (inputs.get(name) ?? []).length === 0)).toEqual([]);
});

/** Writes over every leaf, and empties every list. */
function scribble(value: unknown): void {
  if (typeof value !== 'object' || value === null) return;
  for (const inner of Object.values(value)) scribble(inner);
  if (Array.isArray(value)) value.length = 0;
  else for (const key of Object.keys(value)) (value as Record<string, unknown>)[key] = 'written over';
}

describe('an answer shares no memory with the next', () => {
  test.each(names)('%s', (name) => {
    for (const args of inputs.get(name) ?? []) {
      const first = call(name, args);
      // an Exact or a Map is no plain answer; text has no memory to share
      if (typeof first !== 'object' || first === null || Object.getPrototypeOf(first) !== Object.prototype) continue;
      const kept = structuredClone(first);
      scribble(first);
      expect(call(name, args)).toEqual(kept);
    }
  });
});

describe('an argument is not written to', () => {
  test.each(names)('%s', (name) => {
    for (const args of inputs.get(name) ?? []) {
      const given = structuredClone(args);
      functions.get(name)?.(...given);
      expect(given).toEqual(args);
    }
  });
});

/** The answer to any argument is finite and plain, or it is the one error. */
function answersOrThrows(name: string, args: readonly unknown[]): void {
  let found: unknown;
  try {
    found = functions.get(name)?.(...args);
  } catch (error) {
    if (error instanceof StillroomError) return;
    throw new Error(`${name}(${showAll(args)}) threw ${String(error)}`, { cause: error });
  }
  const text = typeof found === 'string' ? found : JSON.stringify(found instanceof Map ? [...found] : found);
  expect(/\bNaN\b|\bInfinity\b|\[native code\]|\[object /.test(text ?? ''), `${name}(${showAll(args)}): ${text}`).toBe(
    false,
  );
}
const showAll = (args: readonly unknown[]): string =>
  args
    .map((each) => (typeof each === 'symbol' ? 'a symbol' : (JSON.stringify(each)?.slice(0, 200) ?? String(each))))
    .join(', ');

const HOSTILE = ['constructor', '__proto__', 'toString', 'hasOwnProperty', '5 constructor', '\u0000', ' '.repeat(5000)];

/** Each copy of the arguments with one of its strings or keys made hostile. */
function* mutants(value: unknown): Generator<unknown> {
  if (typeof value === 'string') yield* HOSTILE;
  if (typeof value === 'number') yield* [Number.NaN, Number.POSITIVE_INFINITY, -1e308, 'constructor', null];
  if (typeof value !== 'object' || value === null) return;
  const entries = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
  for (const [key, inner] of entries.slice(0, 12)) {
    for (const mutant of mutants(inner)) {
      const copy = structuredClone(value) as Record<PropertyKey, unknown>;
      copy[key] = mutant;
      yield copy;
    }
    const without = structuredClone(value) as Record<PropertyKey, unknown>;
    if (Array.isArray(value)) continue;
    delete without[key];
    yield without;
  }
  if (!Array.isArray(value)) yield { ...value, constructor: 1 };
}

/** What takes a whole plan is tried on fewer changes: each costs a plan. */
const DEAR = new Set(['planDay']);

describe('a bad argument gets the one error', () => {
  test.each(names)('%s', (name) => {
    for (const garbage of [...GARBAGE, Symbol('x'), () => 1]) {
      answersOrThrows(name, [garbage]);
      answersOrThrows(name, ['1 cup', garbage]);
      answersOrThrows(name, ['1 cup', 'volume', garbage]);
    }
    const tried = (inputs.get(name) ?? []).slice(0, DEAR.has(name) ? 1 : 4);
    for (const args of tried) {
      let count = 0;
      for (const mutant of mutants(args)) {
        answersOrThrows(name, mutant as readonly unknown[]);
        count += 1;
        if (count === (DEAR.has(name) ? 60 : 400)) break;
      }
    }
  });
});
