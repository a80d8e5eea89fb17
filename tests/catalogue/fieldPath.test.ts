import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { entryOf } from '../../src/catalogue/entries';
import { fieldNames, readField, stepsOf, valueAt, withoutValue, withValue } from '../../src/catalogue/fieldPath';
import { pathOf } from '../helpers/errors';

const step = fc.oneof(fc.constantFrom('lots', 'raw', 'kitchen', 'holds'), fc.integer({ min: 0, max: 5 }));
const steps = fc.array(step, { minLength: 1, maxLength: 5 });

describe('a path', () => {
  test.each([
    ['food', ['food']],
    ['lots[0].raw', ['lots', 0, 'raw']],
    ['[1]', [1]],
    ['kitchen.canners[2].holds.half-pint', ['kitchen', 'canners', 2, 'holds', 'half-pint']],
  ])('%s has its steps', (path, found) => {
    expect(stepsOf(path)).toEqual(found);
  });

  test.each(['lots[', '[-1]', '..raw', '1st', 'lots[99999]'])('%s is none', (path) => {
    expect(stepsOf(path)).toBeUndefined();
  });

  test('what is put at a place is found there, and the argument is left as it was', () => {
    fc.assert(
      fc.property(steps, fc.jsonValue(), (path, value) => {
        const before = Object.freeze({ lots: Object.freeze([Object.freeze({ raw: '3 lb' })]) });
        expect(valueAt(withValue(before, path, value), path)).toEqual(value);
        expect(before).toEqual({ lots: [{ raw: '3 lb' }] });
      }),
    );
  });

  test('what is taken out is gone, and nothing else', () => {
    const day = { lots: [{ food: 'plum', raw: '3 lb' }], aim: 'least waste' };
    expect(withoutValue(day, ['lots', 0, 'raw'])).toEqual({ lots: [{ food: 'plum' }], aim: 'least waste' });
    expect(withoutValue(day, ['kitchen', 'pots'])).toEqual(day);
    expect(withoutValue(['1 cup', 'mL'], [1])).toEqual(['1 cup']);
  });
});

describe('a field of a function', () => {
  test('is found with its schema, also inside lists and by the name of an argument', () => {
    expect(readField(entryOf('planDay'), 'lots[3].food').steps).toEqual(['lots', 3, 'food']);
    expect(readField(entryOf('convert'), 'unit')).toMatchObject({ steps: [1], path: 'unit' });
    expect(readField(entryOf('convert'), '[1]').path).toBe('unit');
    expect(fieldNames(entryOf('planDay'))).toContain('kitchen.jars[0].jar');
  });

  test.each([undefined, 7, '', 'nothing', '__proto__', 'lots[0].constructor', 'x'.repeat(500)])(
    'is none: %s',
    (given) => {
      expect(pathOf(() => readField(entryOf('planDay'), given))).toBe('field');
    },
  );
});
