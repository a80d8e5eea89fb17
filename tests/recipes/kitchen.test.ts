import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/StillroomError';
import { fields, readInput } from '../../src/quantity/fields';
import { holds, kitchenFields } from '../../src/recipes/kitchen';

const load = (given: unknown) => readInput(fields({ holds: holds() }), { holds: given }).holds;
const kitchen = (given: object) => readInput(fields(kitchenFields()), { elevation: '900 ft', ...given });
const errorOf = (run: () => unknown): string => {
  try {
    run();
  } catch (error) {
    if (error instanceof StillroomError) return `${error.code} ${error.path}`;
    throw error;
  }
  return 'no error';
};

describe('what one load holds', () => {
  test('is read by any name of the jar', () => {
    expect(load({ pints: 9, quart: 7 })).toEqual({ pint: 9, quart: 7 });
  });
  test.each([
    ['nothing', undefined, 'MISSING holds'],
    ['a number', 7, 'WRONG_TYPE holds'],
    ['a list', [7], 'WRONG_TYPE holds'],
    ['null', null, 'WRONG_TYPE holds'],
    ['no jar', {}, 'OUT_OF_RANGE holds'],
    ['no jars of a size', { pint: 0 }, 'OUT_OF_RANGE holds.pint'],
    ['half a jar', { pint: 1.5 }, 'OUT_OF_RANGE holds.pint'],
    ['too many', { pint: 101 }, 'OUT_OF_RANGE holds.pint'],
    ['one size by two names', { pint: 9, pints: 8 }, 'CONTRADICTION holds'],
  ])('is not %s', (_, given, expected) => {
    expect(errorOf(() => load(given))).toBe(expected);
  });
});

describe('a kitchen', () => {
  test('is an elevation at least', () => {
    expect(kitchen({}).elevation).toEqual({ value: 900, unit: 'ft' });
    expect(errorOf(() => readInput(fields(kitchenFields()), {}))).toBe('MISSING elevation');
  });
  test.each([
    ['no hands', { hands: 0 }, 'OUT_OF_RANGE hands'],
    ['an item that no recipe takes', { pantry: [{ item: 'gold', amount: '1 g' }] }, 'UNKNOWN_NAME pantry[0].item'],
    ['a pot filled above its rim', { pots: [{ volume: '8 quarts', fill: 1.1 }] }, 'OUT_OF_RANGE pots[0].fill'],
    ['a canner of no kind', { canners: [{ holds: { pint: 9 } }] }, 'MISSING canners[0].method'],
    ['a field of no name', { oven: true }, 'UNKNOWN_FIELD oven'],
  ])('is refused with %s', (_, given, expected) => {
    expect(errorOf(() => kitchen(given))).toBe(expected);
  });
});
