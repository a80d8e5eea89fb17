/** Every line of a basis is for a field that is in its answer: tried on the check vectors of the module. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { acidClass } from '../../src/acid/index';
import * as module from '../../src/water-activity/index';

type Call = (input: unknown) => { readonly basis: readonly { readonly of: string }[] };
const calls = new Map<string, Call>(Object.entries({ ...module, acidClass }) as [string, Call][]);
const shared = new URL('../../shared/', import.meta.url);
const checks = readdirSync(shared)
  .filter((file) => /^(water-activity|acid)-.*json$/.test(file))
  .flatMap((file) => JSON.parse(readFileSync(new URL(file, shared), 'utf8')).checks)
  .filter(({ call, expect: answer }) => calls.has(call) && answer.error === undefined);

const has = (answer: unknown, path: string): boolean => {
  let here = answer;
  for (const key of path.split('.')) {
    if (typeof here !== 'object' || here === null || !(key in here)) return false;
    here = (here as Record<string, unknown>)[key];
  }
  return true;
};

test('the path of every line is in the answer, and every function has a vector', () => {
  const lost = new Set<string>();
  for (const { call, input } of checks) {
    const answer = (calls.get(call) as Call)(input);
    for (const { of } of answer.basis) if (!has(answer, of)) lost.add(`${call}: ${of}`);
  }
  expect([...lost]).toEqual([]);
  const tried = new Set(checks.map(({ call }) => call));
  expect([...calls.keys()].filter((name) => !tried.has(name))).toEqual([]);
});
