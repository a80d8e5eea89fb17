import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BatchRecordInput, batchRecord, parseRecord, serializeRecord } from '../../src/record/index';
import { expectError } from '../helpers/errors';

const full: BatchRecordInput = {
  lot: 'TOMATO-2026-226-1',
  date: '2026-08-14T15:30',
  product: 'crushed tomatoes',
  place: 'home',
  recordedBy: 'AB',
  produce: [{ produce: 'tomato', form: 'crushed', raw: '22 lb', ready: '18 1/2 lb', trimmings: '3.5 lb' }],
  added: [{ what: 'salt', mass: '40 g' }],
  made: [{ what: 'jars', mass: '18 lb' }],
  process: {
    food: 'tomato',
    form: 'crushed',
    pack: 'hot',
    jar: 'quart',
    method: 'dial-gauge',
    elevation: '1200 m',
    minutes: 20,
    pressure: '8 psi',
    lowestPressure: '7 psi',
    interrupted: true,
    restarted: true,
    vented: '10 min',
    sterilizedJars: false,
    acid: { bottledLemonJuice: '2 tbsp' },
  },
  work: { prepare: '1 h 30 min', fill: '25 min', hands: 2 },
  dryer: { time: '9 h', temperature: '140 degF', freshMoisture: '94 %', endMoisture: 0.1 },
  keptIn: 'shelf',
  temperatures: [{ of: 'store', temperature: '60 degF', at: '2026-08-16' }],
  ph: [{ ph: 4.2, by: 'meter', at: '2026-08-14T18:00Z' }],
  headspaces: ['1/2 in', { value: 13, unit: 'mm' }],
  jars: { filled: 7, sealed: 6, sealsTestedAfter: '13 h' },
  deviations: [{ what: 'pressure fell once', action: 'started again', disposition: 'shelf' }],
  distribution: ['kept'],
  notes: 'A long afternoon.',
};
const bare = { lot: 'A', date: '2026-08-14', product: 'x', produce: [{ produce: 'x', raw: '1 lb' }] } as const;

describe('a record', () => {
  test('is plain JSON with its version, units as they were given', () => {
    const record = batchRecord(full);
    expect(record.version).toBe(1);
    expect(record.produce[0]?.ready).toEqual({ value: 18.5, unit: 'lb' });
    expect(record.headspaces?.[1]).toEqual({ value: 13, unit: 'mm' });
    expect(JSON.parse(JSON.stringify(record))).toEqual(record);
    expect(Object.keys(record)[0]).toBe('version');
  });

  test('goes to text and back unchanged, and is its own record', () => {
    const record = batchRecord(full);
    expect(parseRecord(serializeRecord(full))).toEqual(record);
    expect(batchRecord(record as BatchRecordInput)).toEqual(record);
    expect(serializeRecord(parseRecord(serializeRecord(record)))).toBe(serializeRecord(record));
  });

  test('round trip of any weights, counts and notes', () => {
    const grams = fc.double({ min: 0.001, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(
        grams,
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.nat(500),
        fc.string({ maxLength: 200 }),
        (raw, share, filled, notes) => {
          const record = batchRecord({
            ...bare,
            produce: [{ produce: 'x', raw: { value: raw, unit: 'g' }, ready: { value: raw * share, unit: 'g' } }],
            jars: { filled, sealed: Math.floor(filled * share) },
            notes,
          });
          expect(parseRecord(serializeRecord(record))).toEqual(record);
        },
      ),
    );
  });

  // as serializeRecord of the first release wrote it
  test('a record kept before form, work and dryer were fields reads as it is', () => {
    const kept = `{
      "version": 1, "lot": "PEACH-2026-226-1", "date": "2026-08-14", "product": "peach halves",
      "produce": [{ "produce": "peach", "raw": { "value": 18, "unit": "lb" }, "ready": { "value": 14.5, "unit": "lb" } }],
      "jars": { "filled": 7, "sealed": 7 }
    }`;
    expect(parseRecord(kept)).toEqual(JSON.parse(kept));
  });

  test('fields left undefined are left out', () => {
    expect(Object.keys(batchRecord({ ...bare, notes: undefined }))).toEqual([
      'version',
      'lot',
      'date',
      'product',
      'produce',
    ]);
  });
});

describe('bad records', () => {
  test.each([
    [{ produce: [{ produce: 'x', raw: '10 lb', ready: '5 kg' }] }, 'CONTRADICTION', 'produce[0].ready'],
    [
      { produce: [{ produce: 'x', raw: '10 lb', ready: '8 lb', trimmings: '3 lb' }] },
      'CONTRADICTION',
      'produce[0].trimmings',
    ],
    [{ produce: [{ produce: 'x', raw: '10 lb', trimmings: '11 lb' }] }, 'CONTRADICTION', 'produce[0].trimmings'],
    [{ produce: [] }, 'OUT_OF_RANGE', 'produce'],
    [{ jars: { filled: 7, sealed: 8 } }, 'CONTRADICTION', 'jars.sealed'],
    [{ jars: { filled: 7.5 } }, 'OUT_OF_RANGE', 'jars.filled'],
    [{ date: '2026-02-29' }, 'OUT_OF_RANGE', 'date'],
    [{ date: '14.8.2026' }, 'OUT_OF_RANGE', 'date'],
    [{ date: 20260814 }, 'WRONG_TYPE', 'date'],
    [{ date: undefined }, 'MISSING', 'date'],
    [{ notes: 5 }, 'WRONG_TYPE', 'notes'],
    [{ notes: 'x'.repeat(10_001) }, 'TOO_MUCH', 'notes'],
    [{ work: {} }, 'MISSING', 'work.prepare'],
    [{ work: { hands: 2 } }, 'MISSING', 'work.prepare'],
    [{ work: { prepare: '0 min' } }, 'OUT_OF_RANGE', 'work.prepare'],
    [{ work: { fill: '3 lb' } }, 'WRONG_DIMENSION', 'work.fill'],
    [{ work: { prepare: '1 h', hands: 0 } }, 'OUT_OF_RANGE', 'work.hands'],
    [{ work: { prepare: '1 h', hands: 1.5 } }, 'OUT_OF_RANGE', 'work.hands'],
    [{ dryer: {} }, 'MISSING', 'dryer.time'],
    [{ dryer: { time: '-3 h' } }, 'OUT_OF_RANGE', 'dryer.time'],
    [{ dryer: { time: '3 h', freshMoisture: 1.2 } }, 'OUT_OF_RANGE', 'dryer.freshMoisture'],
    [{ dryer: { time: '3 h', freshMoisture: '80 %', endMoisture: '80 %' } }, 'CONTRADICTION', 'dryer.endMoisture'],
    [{ produce: [{ produce: 'x', raw: '1 lb', form: 5 }] }, 'WRONG_TYPE', 'produce[0].form'],
    [{ weather: 'hot' }, 'UNKNOWN_FIELD', 'weather'],
    [{ version: 2 }, 'OUT_OF_RANGE', 'version'],
    [{ ph: [{ ph: 15, by: 'meter' }] }, 'OUT_OF_RANGE', 'ph[0].ph'],
    [{ temperatures: [{ of: 'moon', temperature: '3 degC' }] }, 'UNKNOWN_NAME', 'temperatures[0].of'],
    [
      { process: { ...full.process, restarted: true, interrupted: undefined, lowestPressure: undefined } },
      'CONTRADICTION',
      'process.restarted',
    ],
  ] as const)('%j', (change, code, path) => {
    expectError(() => batchRecord({ ...bare, ...change } as never), code, path);
  });

  test.each([
    [undefined, 'MISSING', ''],
    [5, 'WRONG_TYPE', ''],
    ['', 'WRONG_TYPE', ''],
    ['{', 'WRONG_TYPE', ''],
    ['[]', 'WRONG_TYPE', ''],
    ['null', 'WRONG_TYPE', ''],
    ['{}', 'MISSING', 'version'],
    ['{"version":2}', 'OUT_OF_RANGE', 'version'],
    ['{"version":1}', 'MISSING', 'lot'],
    [' '.repeat(5_000_001), 'TOO_MUCH', ''],
    ['{"version":1,"__proto__":{"lot":"x"}}', 'UNKNOWN_FIELD', '__proto__'],
  ] as const)('text %#', (text, code, path) => {
    expectError(() => parseRecord(text as never), code, path);
  });
});
