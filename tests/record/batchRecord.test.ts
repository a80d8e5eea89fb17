import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BatchRecordInput, batchRecord } from '../../src/record/index';
import { expectError } from '../helpers/errors';

const full: BatchRecordInput = {
  lotCode: 'TOMATO-2026-226-1',
  date: '2026-08-14T15:30',
  name: 'crushed tomatoes',
  place: 'home',
  recordedBy: 'AB',
  lots: [{ food: 'tomato', form: 'crushed', raw: '22 lb', ready: '18 1/2 lb', trimmings: '3.5 lb' }],
  additions: [{ what: 'salt', mass: '40 g' }],
  output: [{ what: 'jars', mass: '18 lb' }],
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
  work: { preparing: '1 h 30 min', filling: '25 min', hands: 2 },
  dryer: { time: '9 h', temperature: '140 degF', freshMoisture: '94 %', endMoisture: 0.1 },
  keptIn: 'shelf',
  temperatures: [{ where: 'store', temperature: '60 degF', at: '2026-08-16' }],
  pHReadings: [{ pH: 4.2, by: 'meter', at: '2026-08-14T18:00Z' }],
  headspaces: ['1/2 in', { value: 13, unit: 'mm' }],
  jarsFilled: 7,
  jarsSealed: 6,
  sealsTestedAfter: '13 h',
  departures: [{ what: 'pressure fell once', whatWasDone: 'started again', disposition: 'shelf' }],
  distribution: ['kept'],
  notes: 'A long afternoon.',
};
const bare = { lotCode: 'A', date: '2026-08-14', name: 'x', lots: [{ food: 'x', raw: '1 lb' }] } as const;

describe('a record', () => {
  test('is plain JSON with its version, units as they were given', () => {
    const record = batchRecord(full);
    expect(record.version).toBe(2);
    expect(record.lots[0]?.ready).toEqual({ value: 18.5, unit: 'lb' });
    expect(record.headspaces?.[1]).toEqual({ value: 13, unit: 'mm' });
    expect(JSON.parse(JSON.stringify(record))).toEqual(record);
    expect(Object.keys(record)[0]).toBe('version');
  });

  test('goes to text and back unchanged, and is its own record', () => {
    const record = batchRecord(full);
    expect(batchRecord(JSON.stringify(record))).toEqual(record);
    expect(batchRecord(record as BatchRecordInput)).toEqual(record);
    expect(JSON.stringify(batchRecord(JSON.stringify(record)))).toBe(JSON.stringify(record));
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
            lots: [{ food: 'x', raw: { value: raw, unit: 'g' }, ready: { value: raw * share, unit: 'g' } }],
            jarsFilled: filled,
            jarsSealed: Math.floor(filled * share),
            notes,
          });
          expect(batchRecord(JSON.stringify(record))).toEqual(record);
        },
      ),
    );
  });

  test('a record with few fields reads as it is', () => {
    const kept = `{
      "version": 2, "lotCode": "PEACH-2026-226-1", "date": "2026-08-14", "name": "peach halves",
      "lots": [{ "food": "peach", "raw": { "value": 18, "unit": "lb" }, "ready": { "value": 14.5, "unit": "lb" } }],
      "jarsFilled": 7, "jarsSealed": 7
    }`;
    expect(batchRecord(kept)).toEqual(JSON.parse(kept));
  });

  test('fields left undefined are left out', () => {
    expect(Object.keys(batchRecord({ ...bare, notes: undefined }))).toEqual([
      'version',
      'lotCode',
      'date',
      'name',
      'lots',
    ]);
  });
});

describe('bad records', () => {
  test.each([
    [{ lots: [{ food: 'x', raw: '10 lb', ready: '5 kg' }] }, 'CONTRADICTION', 'lots[0].ready'],
    [{ lots: [{ food: 'x', raw: '10 lb', ready: '8 lb', trimmings: '3 lb' }] }, 'CONTRADICTION', 'lots[0].trimmings'],
    [{ lots: [{ food: 'x', raw: '10 lb', trimmings: '11 lb' }] }, 'CONTRADICTION', 'lots[0].trimmings'],
    [{ lots: [] }, 'OUT_OF_RANGE', 'lots'],
    [{ jarsFilled: 7, jarsSealed: 8 }, 'CONTRADICTION', 'jarsSealed'],
    [{ jarsFilled: 7.5 }, 'OUT_OF_RANGE', 'jarsFilled'],
    [{ date: '2026-02-29' }, 'OUT_OF_RANGE', 'date'],
    [{ date: '14.8.2026' }, 'OUT_OF_RANGE', 'date'],
    [{ date: 20260814 }, 'WRONG_TYPE', 'date'],
    [{ date: undefined }, 'MISSING', 'date'],
    [{ notes: 5 }, 'WRONG_TYPE', 'notes'],
    [{ notes: 'x'.repeat(10_001) }, 'TOO_MUCH', 'notes'],
    [{ work: {} }, 'MISSING', 'work.preparing'],
    [{ work: { hands: 2 } }, 'MISSING', 'work.preparing'],
    [{ work: { preparing: '0 min' } }, 'OUT_OF_RANGE', 'work.preparing'],
    [{ work: { filling: '3 lb' } }, 'WRONG_DIMENSION', 'work.filling'],
    [{ work: { preparing: '1 h', hands: 0 } }, 'OUT_OF_RANGE', 'work.hands'],
    [{ work: { preparing: '1 h', hands: 1.5 } }, 'OUT_OF_RANGE', 'work.hands'],
    [{ dryer: {} }, 'MISSING', 'dryer.time'],
    [{ dryer: { time: '-3 h' } }, 'OUT_OF_RANGE', 'dryer.time'],
    [{ dryer: { time: '3 h', freshMoisture: 1.2 } }, 'OUT_OF_RANGE', 'dryer.freshMoisture'],
    [{ dryer: { time: '3 h', freshMoisture: '80 %', endMoisture: '80 %' } }, 'CONTRADICTION', 'dryer.endMoisture'],
    [{ lots: [{ food: 'x', raw: '1 lb', form: 5 }] }, 'WRONG_TYPE', 'lots[0].form'],
    [{ weather: 'hot' }, 'UNKNOWN_FIELD', 'weather'],
    [{ version: 1 }, 'OUT_OF_RANGE', 'version'],
    [{ pHReadings: [{ pH: 15, by: 'meter' }] }, 'OUT_OF_RANGE', 'pHReadings[0].pH'],
    [{ temperatures: [{ where: 'moon', temperature: '3 degC' }] }, 'UNKNOWN_NAME', 'temperatures[0].where'],
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
    ['{"version":1}', 'OUT_OF_RANGE', 'version'],
    ['{"version":2}', 'MISSING', 'date'],
    [' '.repeat(5_000_001), 'TOO_MUCH', ''],
    ['{"version":2,"__proto__":{"lotCode":"x"}}', 'UNKNOWN_FIELD', '__proto__'],
  ] as const)('text %#', (text, code, path) => {
    expectError(() => batchRecord(text as never), code, path);
  });
});
