import { expect, test } from 'vitest';
import { goodArguments } from './inputs';
import { lostPaths } from './paths';

type Call = (...args: readonly unknown[]) => unknown;

/** One test for each function of a module: every line of a basis is about a field that is in the answer. */
export function basisOfEveryCall(module: Readonly<Record<string, unknown>>): void {
  const samples = goodArguments(40);
  test.each(Object.keys(module))('%s: every line of the basis is about a field of the answer', (name) => {
    const given = samples.get(name) ?? [];
    expect(given.length).toBeGreaterThan(0);
    for (const args of given) {
      const answer = (module[name] as Call)(...args);
      if (Array.isArray(answer)) continue;
      expect(lostPaths(answer), JSON.stringify(args)).toEqual([]);
    }
  });
}
