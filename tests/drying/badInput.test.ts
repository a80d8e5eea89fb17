import { expect, it } from 'vitest';
import * as drying from '../../src/drying/index';
import { StillroomError } from '../../src/errors/index';
import { GARBAGE } from '../helpers/garbage';

const functions = Object.entries(drying).filter(([, value]) => typeof value === 'function') as [
  string,
  (input: unknown) => unknown,
][];
const garbageHere: readonly unknown[] = [
  ...GARBAGE,
  { fresh: '-1 kg', moisture: '1/0 %', targetMoisture: Number.POSITIVE_INFINITY },
  { food: '', temperature: '10 cups', weighings: 'none', area: '' },
];

/** Milliseconds of the quickest of three tries: another process may hold up one of them. */
function quickest(work: () => void): number {
  const times = [0, 1, 2].map(() => {
    const before = performance.now();
    work();
    return performance.now() - before;
  });
  return Math.min(...times);
}

it.each(functions)('%s throws the one error, at once, for what it cannot read', (_, call) => {
  for (const garbage of garbageHere) {
    const taken = quickest(() => {
      try {
        expect(JSON.stringify(call(garbage))).not.toMatch(/NaN|Infinity|null/);
      } catch (error) {
        expect(error).toBeInstanceOf(StillroomError);
      }
    });
    // the bar is a millisecond; a busy machine gets some room
    expect(taken).toBeLessThan(50);
  }
});
