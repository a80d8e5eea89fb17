import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fields, optional, readInput } from '../../src/quantity/fields';
import { brix, targetBrix } from '../../src/words/brix';
import { describe as meaningOf } from '../../src/words/word';
import { thrownBy } from '../helpers/errors';

const read = (given: unknown, schema = brix()) => readInput(fields({ brix: schema }), { brix: given });

describe('brix', () => {
  test('0, and above 1 to 100', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.0001, max: 100, noNaN: true }), (value) => {
        expect(read(value)).toEqual({ brix: value });
      }),
    );
    expect(read(0)).toEqual({ brix: 0 });
  });

  test('a value that looks like a share is asked about', () => {
    fc.assert(
      fc.property(fc.double({ min: Number.MIN_VALUE, max: 1, noNaN: true }), (given) => {
        expect(thrownBy(() => read(given))).toMatchObject({ code: 'OUT_OF_RANGE', path: 'brix', given });
      }),
    );
    expect(thrownBy(() => read(0.65)).message).toContain('did you mean the share 0.65, which is 65 degrees Brix?');
  });

  test('with its unit a small reading is read, and any other', () => {
    expect(read('0.5 Brix')).toEqual({ brix: 0.5 });
    expect(read('65 Brix')).toEqual({ brix: 65 });
    expect(thrownBy(() => read('0,5 Brix')).code).toBe('WRONG_TYPE');
    expect(thrownBy(() => read('101 Brix')).code).toBe('OUT_OF_RANGE');
    expect(thrownBy(() => read(0.5)).message).toContain('write "0.5 Brix"');
  });

  test.each([
    [undefined, 'MISSING'],
    ['65', 'WRONG_TYPE'],
    [-1, 'OUT_OF_RANGE'],
    [100.1, 'OUT_OF_RANGE'],
    [Number.NaN, 'OUT_OF_RANGE'],
  ])('%s: %s', (given, code) => {
    expect(thrownBy(() => read(given))).toMatchObject({ code, path: 'brix' });
  });

  test('a field narrows it', () => {
    expect(thrownBy(() => read(0, brix({ above: 0, below: 100 }))).expected).toBe('degrees Brix above 0 and below 100');
    expect(thrownBy(() => read(90, brix({ max: 85 }))).code).toBe('OUT_OF_RANGE');
  });

  test('its meaning', () => {
    expect(meaningOf(optional(targetBrix({ above: 0 })))).toMatchObject({
      name: 'targetBrix',
      unit: 'degrees Brix',
      low: 0,
      above: true,
      high: 100,
    });
  });
});
