import { describe, expect, test } from 'vitest';
import * as f from '../../src/quantity/fields';
import { takesOf } from '../../src/quantity/reader';
import { thrownBy } from '../helpers/errors';

const schema = f.fields({
  raw: f.mass(),
  moisture: f.optional(f.share({ min: 0.1, below: 1 })),
  jar: f.optional(f.choice('a jar', ['pint', 'quart'])),
  lots: f.optional(f.list('lots', f.fields({ mass: f.mass() }), 1, 3)),
  pH: f.optional(f.number('a pH from 0 to 14', { min: 0, max: 14 })),
  jars: f.optional(f.count('jars', 1, 100)),
  label: f.optional(f.name('a label')),
  price: f.optional(f.money()),
  hot: f.optional(f.flag('hot')),
  elevation: f.optional(f.elevation()),
  gauge: f.optional(f.pressure({ min: { value: 0, unit: 'psi' } })),
  oven: f.optional(f.temperature({ max: { value: 300, unit: 'degC' } })),
});
const read = (input: unknown) => f.readInput(schema, input);
const raw = '62 lb';

test('a field says what it takes, for a catalogue', () => {
  expect(takesOf(f.number('a pH', { min: 0, max: 14 }))).toEqual({ kind: 'number', min: 0, max: 14 });
  expect(takesOf(f.share({ above: 0 }))).toEqual({ kind: 'share', min: 0, max: 1, above: 0 });
  expect(takesOf(f.choice('a pack', ['hot', 'raw']))).toEqual({ kind: 'choice', choices: ['hot', 'raw'] });
  expect(takesOf(f.mass())).toEqual({
    kind: 'mass',
    above: { value: 0, unit: 'kg' },
    max: { value: 1e6, unit: 'kg' },
  });
});

test('an error remembers the schema that found it, and what was read', () => {
  const schema = f.fields({ x: f.name('x') });
  const given = { x: 1 };
  const error = thrownBy(() => f.readInput(schema, given));
  expect(f.askedWhen(error)).toEqual({ schema, input: given });
  expect(f.askedWhen(thrownBy(() => f.readInput(schema, undefined)))).toBeUndefined();
});

describe('readInput', () => {
  test('reads every kind of field', () => {
    expect(
      read({
        raw,
        moisture: '85 %',
        jar: 'Pint',
        lots: [{ mass: '1 kg' }],
        pH: 3.5,
        jars: 7,
        label: ' plum ',
        price: '3 USD',
        hot: true,
        elevation: '-10 ft',
        gauge: '0 psi',
        oven: '140 degF',
      }),
    ).toEqual({
      raw: { value: 62, unit: 'lb' },
      moisture: 0.85,
      jar: 'pint',
      lots: [{ mass: { value: 1, unit: 'kg' } }],
      pH: 3.5,
      jars: 7,
      label: 'plum',
      price: { value: 3, unit: 'USD' },
      hot: true,
      elevation: { value: -10, unit: 'ft' },
      gauge: { value: 0, unit: 'psi' },
      oven: { value: 140, unit: 'degF' },
    });
  });

  test.each<[unknown, string, string]>([
    [undefined, 'MISSING', ''],
    [null, 'WRONG_TYPE', ''],
    ['62 lb', 'WRONG_TYPE', ''],
    [[], 'WRONG_TYPE', ''],
    [{}, 'MISSING', 'raw'],
    [{ raw: '-1 lb' }, 'OUT_OF_RANGE', 'raw'],
    [{ raw: '0 lb' }, 'OUT_OF_RANGE', 'raw'],
    [{ raw: '62 cups' }, 'WRONG_DIMENSION', 'raw'],
    [{ raw: { value: Number.POSITIVE_INFINITY, unit: 'lb' } }, 'OUT_OF_RANGE', 'raw'],
    [{ raw, colour: 'red' }, 'UNKNOWN_FIELD', 'colour'],
    [JSON.parse('{"raw":"1 lb","__proto__":{"a":1}}'), 'UNKNOWN_FIELD', '__proto__'],
    [JSON.parse('{"raw":"1 lb","lots":[{"mass":"1 lb","__proto__":1}]}'), 'UNKNOWN_FIELD', 'lots[0].__proto__'],
    [{ raw, moisture: 1 }, 'OUT_OF_RANGE', 'moisture'],
    [{ raw, moisture: 0.05 }, 'OUT_OF_RANGE', 'moisture'],
    [{ raw, jar: 'bucket' }, 'UNKNOWN_NAME', 'jar'],
    [{ raw, jar: 3 }, 'WRONG_TYPE', 'jar'],
    [{ raw, lots: [] }, 'OUT_OF_RANGE', 'lots'],
    [{ raw, lots: [1, 2, 3, 4] }, 'TOO_MUCH', 'lots'],
    [{ raw, lots: 'many' }, 'WRONG_TYPE', 'lots'],
    [{ raw, lots: [3] }, 'WRONG_TYPE', 'lots[0]'],
    [{ raw, lots: [{ mass: '1 lb' }, { mass: '0 g' }] }, 'OUT_OF_RANGE', 'lots[1].mass'],
    [{ raw, pH: 15 }, 'OUT_OF_RANGE', 'pH'],
    [{ raw, pH: Number.NaN }, 'OUT_OF_RANGE', 'pH'],
    [{ raw, pH: '3' }, 'WRONG_TYPE', 'pH'],
    [{ raw, jars: 1.5 }, 'OUT_OF_RANGE', 'jars'],
    [{ raw, jars: 10_000 }, 'OUT_OF_RANGE', 'jars'],
    [{ raw, label: '' }, 'UNKNOWN_NAME', 'label'],
    [{ raw, label: 3 }, 'WRONG_TYPE', 'label'],
    [{ raw, label: 'x'.repeat(10_000) }, 'UNKNOWN_NAME', 'label'],
    [{ raw, price: '$3' }, 'NOT_A_QUANTITY', 'price'],
    [{ raw, hot: 'yes' }, 'WRONG_TYPE', 'hot'],
    [{ raw, elevation: '9000 m' }, 'OUT_OF_RANGE', 'elevation'],
    [{ raw, elevation: '-501 m' }, 'OUT_OF_RANGE', 'elevation'],
    [{ raw, gauge: '-1 psi' }, 'OUT_OF_RANGE', 'gauge'],
  ])('%j: %s at %s', (input, code, path) => {
    expect(() => read(input)).toThrow(expect.objectContaining({ name: 'StillroomError', code, path }));
  });

  test('required fields of each kind say so when they are missing', () => {
    const required = f.fields({
      a: f.choice('a', ['x']),
      b: f.name('b'),
      c: f.number('c'),
      d: f.flag('d'),
      e: f.list('e', f.mass()),
    });
    for (const key of ['a', 'b', 'c', 'd', 'e']) {
      const all: Record<string, unknown> = { a: 'x', b: 'b', c: 1, d: true, e: ['1 g'] };
      delete all[key];
      expect(() => f.readInput(required, all)).toThrow(expect.objectContaining({ code: 'MISSING', path: key }));
    }
  });

  test('an error names the bounds', () => {
    expect(() => read({ raw: '0 lb' })).toThrow(
      'raw: expected a value above 0 kg and at most 1000000 kg, was given "0 lb"',
    );
    expect(() => read({ raw, elevation: '9000 m' })).toThrow('of at least -500 m and at most 5000 m');
    expect(() => f.readInput(f.fields({ x: f.share({ above: 0 }) }), { x: 0 })).toThrow(
      'a share above 0 and at most 1',
    );
    expect(() =>
      f.readInput(f.fields({ x: f.quantityField('mass', { max: { value: 1, unit: 'g' } }) }), { x: '2 g' }),
    ).toThrow('a value of at most 1 g');
  });

  test('a mistake of our own is not hidden as the caller’s', () => {
    const broken = f.fields({
      x: f.reading(() => {
        throw new TypeError('ours');
      }),
    });
    expect(() => f.readInput(broken, { x: 1 })).toThrow(TypeError);
  });

  test('the argument is left as it was', () => {
    const input = Object.freeze({ raw, lots: Object.freeze([Object.freeze({ mass: '1 kg' })]) });
    read(input);
    expect(input.lots[0]).toEqual({ mass: '1 kg' });
  });
});

test('a mass or a volume: either, within its limits, and nothing else', () => {
  const either = f.fields({ amount: f.massOrVolume() });
  const amount = (given: unknown) => f.readInput(either, { amount: given }).amount;
  expect([amount('3 lb'), amount('2 quarts')].map(f.isMass)).toEqual([true, false]);
  expect(() => amount('3 ft')).toThrow('a mass or a volume');
  expect(() => amount('0 lb')).toThrow(expect.objectContaining({ code: 'OUT_OF_RANGE', path: 'amount' }));
  expect(() => amount('-1 cup')).toThrow(expect.objectContaining({ code: 'OUT_OF_RANGE', path: 'amount' }));
});
