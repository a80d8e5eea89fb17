import { beforeAll, expect, it } from 'vitest';
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

// the pantry makes its index of names once, at the first name that is looked up
beforeAll(() => {
  expect(() => drying.dryingGuide({ food: 'no such food' })).toThrow(StillroomError);
});

it.each(functions)('%s throws the one error, at once, for what it cannot read', (_, call) => {
  for (const garbage of garbageHere) {
    const before = performance.now();
    try {
      expect(JSON.stringify(call(garbage))).not.toMatch(/NaN|Infinity|null/);
    } catch (error) {
      expect(error).toBeInstanceOf(StillroomError);
    }
    // the bar is a millisecond; a busy machine gets some room
    expect(performance.now() - before).toBeLessThan(50);
  }
});
