import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { StillroomError } from '../../src/errors/StillroomError';
import * as f from '../../src/quantity/fields';
import { readerOf } from '../../src/quantity/reader';
import { brix } from '../../src/words/brix';

const schema = f.fields({
  raw: f.mass(),
  brix: f.optional(brix()),
  lots: f.optional(f.list('lots', f.fields({ mass: f.mass(), name: f.optional(f.name('a name')) }), 1, 3)),
  counts: f.optional(z.record(z.string(), f.count('jars', 0, 9))),
  either: f.optional(z.union([z.number(), z.string()])),
  anything: f.optional(z.unknown()),
  even: f.optional(z.number().check(z.refine((value) => value % 2 === 0, 'an even number'))),
});
const right = { raw: '3 lb', lots: [{ mass: '1 kg', name: ' a ' }, { mass: '2 oz' }], counts: { pint: 2 } };

/** What reading gives: the value, or all that the error says. */
function outcome(read: () => unknown): unknown {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    const { code, path, given, expected, options, nearest, message } = error;
    return { code, path, given, expected, options, nearest, message };
  }
}
const byZod = (input: unknown): unknown => {
  const [first] = f.errorsOf(schema, input);
  if (first !== undefined) throw first;
  return z.parse(schema, input);
};

describe('a reader does what its schema says', () => {
  test.each<[string, unknown]>([
    ['all right', right],
    ['a field that is there and undefined', { ...right, brix: undefined }],
    ['a pipe', { ...right, brix: 50 }],
    ['the first part of a pipe', { ...right, brix: 0.5 }],
    ['the second part of a pipe', { ...right, brix: 101 }],
    ['a missing field', { lots: right.lots }],
    ['a field that is undefined', { raw: undefined }],
    ['a wrong field before a missing one', { lots: [{}] }],
    ['the first of two wrong fields', { ...right, raw: '0 lb', brix: 101 }],
    ['an unknown field', { ...right, jars: 3 }],
    ['an unknown field and a wrong one after it', { lots: [{ mass: '1 kg', nme: 'a' }], brix: 101, raw: '1 lb' }],
    ['an unknown field deep inside', { ...right, lots: [{ mass: '1 kg', nme: 'a' }] }],
    ['a wrong item', { ...right, lots: [{ mass: '1 kg' }, { mass: '1 cup' }] }],
    ['an item that is no object', { ...right, lots: [7] }],
    ['a list that is none', { ...right, lots: { mass: '1 kg' } }],
    ['a list that is too long', { ...right, lots: [1, 2, 3, 4] }],
    ['a record', { ...right, counts: { pint: 10 } }],
    ['a record that is none', { ...right, counts: 'many' }],
    ['a union', { ...right, either: true }],
    ['anything', { ...right, anything: { a: [1] } }],
    ['a check', { ...right, even: 3 }],
    ['a field of the prototype', Object.assign(Object.create({ raw: '3 lb' }), { brix: 3 })],
    ['a key __proto__', JSON.parse('{"raw":"1 lb","anything":{"b":[{"__proto__":1}]}}')],
    ['no object', 7],
    ['nothing', undefined],
    ['a list', []],
  ])('%s', (_, input) => {
    expect(outcome(() => f.readInput(schema, input))).toStrictEqual(outcome(() => byZod(input)));
  });

  test('and is made once', () => {
    expect(readerOf(schema)).toBe(readerOf(schema));
  });

  test('a mistake of the library is no error of the input', () => {
    const broken = f.fields({
      raw: f.reading(() => {
        throw new TypeError('a mistake');
      }),
    });
    expect(() => f.readInput(broken, { raw: 1 })).toThrow(TypeError);
  });
});

describe('bounds', () => {
  const taken = (schemaOf: ReturnType<typeof f.temperature>, given: string): boolean =>
    !('code' in (outcome(() => f.readInput(f.fields({ t: schemaOf }), { t: given })) as object));
  test('hold in every unit that is written, to the last digit', () => {
    const boiling = f.temperature({ min: { value: 0, unit: 'degC' }, max: { value: 100, unit: 'degC' } });
    for (const [given, right] of [
      ['0 degC', true],
      ['32 degF', true],
      ['273.15 K', true],
      ['31.999999999999996 degF', false],
      ['212 degF', true],
      ['212.00000000000003 degF', false],
      ['373.15 K', true],
      ['373.15000000000003 K', false],
    ] as const) {
      expect(taken(boiling, given), given).toBe(right);
    }
    const above = f.temperature({ above: { value: 0, unit: 'degC' } });
    expect(taken(above, '32 degF')).toBe(false);
    expect(taken(above, '32.00000000000001 degF')).toBe(true);
  });
});
