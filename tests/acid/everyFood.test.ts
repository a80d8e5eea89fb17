import { describe, expect, test } from 'vitest';
import * as acid from '../../src/acid/index';
import { foodRows } from '../../src/foods/tables';
import { goodArguments } from '../helpers/inputs';
import { lostPaths } from '../helpers/paths';

type Call = (...args: readonly unknown[]) => unknown;
const calls = acid as unknown as Readonly<Record<string, Call>>;
const samples = goodArguments(40);

test.each(Object.keys(calls))('%s: every line of the basis is about a field of the answer', (name) => {
  const given = samples.get(name) ?? [];
  expect(given.length).toBeGreaterThan(0);
  for (const args of given) {
    const answer = calls[name]?.(...args);
    if (Array.isArray(answer)) continue;
    expect(lostPaths(answer), JSON.stringify(args)).toEqual([]);
  }
});

describe('every food of the pantry has an answer, or one that says what is missing', () => {
  const asks: Readonly<Record<string, (food: string) => unknown>> = {
    phOf: (food) => acid.phOf({ food }),
    ferment: (food) => acid.ferment({ food, ready: '5 lb', temperature: '70 degF' }),
    brine: (food) => acid.brine({ share: '8 %', of: 'water', water: '1 kg', food }),
    acidForJars: (food) => acid.acidForJars({ food, jar: 'pint', jars: 2 }),
  };
  test.each(Object.entries(asks))('%s', (_, ask) => {
    for (const { name } of foodRows) expect(lostPaths(ask(name)), name).toEqual([]);
  });
});
