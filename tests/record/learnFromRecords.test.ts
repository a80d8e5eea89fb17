import { describe, expect, test } from 'vitest';
import { dryingGuide, type KnownDryingGuide } from '../../src/drying/index';
import { findFood } from '../../src/foods/index';
import { formNamed } from '../../src/foods/lookUpFood';
import { usualMinutesPerPound } from '../../src/plan/makes/work';
import { makesOf } from '../../src/plan/request/planFields';
import { composition, rawForJars, readyFromRaw } from '../../src/produce/index';
import type { Makes } from '../../src/recipes/rows/tables';
import { type BatchRecordInput, batchRecord, learnFromRecords } from '../../src/record/index';
import { expectError } from '../helpers/errors';
import { known } from '../helpers/known';
import { strayPaths } from '../sources/basisPaths';

/** The customary minutes of a raw pound, by the operations of the usual recipe. */
const usual = (food: string, form: string, makes: readonly Makes[]) => {
  const found = findFood(food) as { id: string };
  return usualMinutesPerPound(found.id, formNamed(form), makes);
};

const batch = { lotCode: 'A1', date: '2026-08-14', name: 'a batch' } as const;
const canned = {
  food: 'peach',
  form: 'halves',
  pack: 'hot',
  jar: 'quart',
  method: 'boiling-water',
  elevation: '1000 ft',
  minutes: 25,
} as const;
const peaches = (raw: number, more: Partial<BatchRecordInput> = {}, ready?: number): BatchRecordInput => ({
  ...batch,
  lots: [
    {
      food: 'peaches',
      form: 'halves',
      raw: { value: raw, unit: 'lb' },
      ...(ready === undefined ? {} : { ready: { value: ready, unit: 'lb' } }),
    },
  ],
  ...more,
});
const learn = (...records: readonly BatchRecordInput[]) => learnFromRecords({ records });
const taught = (...records: readonly BatchRecordInput[]) => learn(...records).learned;
const passed = (...records: readonly BatchRecordInput[]) => learn(...records).passedOver;

describe('what is learned', () => {
  test('nothing from nothing', () => {
    expect(learn()).toMatchObject({ learned: [], passedOver: [], cautions: [] });
    expect(learn(peaches(20))).toMatchObject({ learned: [], passedOver: [] });
  });

  test('the yield starts from the range of readyFromRaw and goes by the model of learnFromRecords', () => {
    const records = [peaches(40, {}, 29), peaches(22, {}, 16.5), peaches(60, {}, 44)];
    const [entry, ...more] = taught(...records);
    const printed = known(readyFromRaw({ food: 'peach', form: 'halves', raw: '1 lb' })).yield;
    const own = learnFromRecords({ prior: printed, observed: [29 / 40, 16.5 / 22, 44 / 60], varies: 'share' }).figure;
    expect(more).toEqual([]);
    expect(entry).toMatchObject({ food: 'peach', form: 'halves', n: 3, outliers: [] });
    for (const end of ['low', 'likely', 'high'] as const) {
      expect(entry?.yield?.[end]).toBeCloseTo(own[end], 12);
    }
    expect(entry).not.toHaveProperty('moisture');
    expect(entry).not.toHaveProperty('rawPerJar');
  });

  test('each lot of a record teaches its own yield', () => {
    const record: BatchRecordInput = {
      ...batch,
      lots: [
        { food: 'apples', form: 'slices', raw: '10 lb', ready: '7.5 lb' },
        { food: 'Pears', form: 'halved', raw: '10 kg', ready: '7 kg' },
      ],
    };
    expect(taught(record).map(({ food, form, n }) => [food, form, n])).toEqual([
      ['apple', 'slices', 1],
      ['pear', 'halves', 1],
    ]);
  });

  test('minutes of one pair of hands a raw pound: the clock times the hands, over all the lots', () => {
    const canning = usual('peach', 'halves', makesOf('jars'));
    const drying = (food: string) => usual(food, 'slices', ['dried']);
    const own = (observed: number[], customary: number) =>
      learnFromRecords({
        prior: { low: customary / 2, likely: customary, high: customary * 2 },
        observed,
        varies: 'times',
      }).figure;
    const [entry] = taught(peaches(20, { process: canned, work: { preparing: '30 min', hands: 2 } }));
    expect(entry?.minutesPerPound).toEqual(own([3], canning));
    // the time of filling is no preparing
    expect(taught(peaches(20, { process: canned, work: { filling: '30 min' } }))).toEqual([]);
    const two: BatchRecordInput = {
      ...peaches(20, { dryer: { time: '20 h' }, work: { preparing: '1 h' } }),
      lots: [
        { food: 'peach', form: 'slices', raw: '20 lb' },
        { food: 'apple', form: 'slices', raw: '10 lb' },
      ],
    };
    expect(taught(two).map(({ food, minutesPerPound }) => [food, minutesPerPound])).toEqual([
      ['peach', own([2], drying('peach'))],
      ['apple', own([2], drying('apple'))],
    ]);
  });

  test.each([
    [makesOf('jars'), 'halves', { process: canned }],
    [makesOf('jars'), 'sauce', { process: { ...canned, food: 'apple', form: 'sauce' } }],
    [['dried'], 'slices', { dryer: { time: '9 h' } }],
    [['leather'], 'puree', { dryer: { time: '9 h' } }],
    [['frozen'], 'slices', { keptIn: 'freezer' }],
  ] as const)('the customary minutes of %s, %s', (makes, form, more) => {
    const perPound = usual('apple', form, makes);
    const record: BatchRecordInput = {
      ...batch,
      lots: [{ food: 'apple', form, raw: '10 lb' }],
      ...more,
      // just the customary time: the likely figure stays
      work: { preparing: { value: 10 * perPound, unit: 'min' } },
    };
    const entry = taught(record).find((each) => each.minutesPerPound !== undefined);
    expect(entry?.minutesPerPound?.likely).toBeCloseTo(perPound, 9);
  });

  test('raw weight a jar, from the printed range of one jar, each size by itself, in the first unit used', () => {
    const quarts = (raw: number, filled: number) => peaches(raw, { process: canned, jarsFilled: filled });
    const pints: BatchRecordInput = {
      ...batch,
      lots: [{ food: 'peach', raw: '6 kg' }],
      process: { ...canned, jar: 'wide-mouth pint' },
      jarsFilled: 10,
    };
    const entries = taught(quarts(20, 7), pints, quarts(21, 7), quarts(0.02, 7));
    expect(entries.map(({ jar, n }) => [jar, n])).toEqual([
      ['quart', 3],
      ['pint', 1],
    ]);
    const { low, likely, high } = known(rawForJars({ food: 'peach', form: 'halves', jar: 'quart', jars: 1 })).raw;
    const own = learnFromRecords({
      prior: { low: low.value, likely: likely.value, high: high.value },
      observed: [20 / 7, 3, 0.02 / 7],
      varies: 'times',
    });
    expect(entries[0]?.rawPerJar?.likely.value).toBeCloseTo(own.figure.likely, 9);
    expect(entries[0]?.rawPerJar?.high.value).toBeCloseTo(own.figure.high, 9);
    expect(entries[0]?.rawPerJar?.low.unit).toBe('lb');
    expect(entries[1]?.rawPerJar?.likely.unit).toBe('kg');
    // the slip of the pen, by its record
    expect(entries[0]?.outliers).toMatchObject([{ index: 3, figureName: 'rawPerJar', value: 0.02 / 7 }]);
  });

  test('two crates of one fruit in the same jars count together', () => {
    const two: BatchRecordInput = {
      ...batch,
      lots: [
        { food: 'peach', form: 'halves', raw: '8 lb' },
        { food: 'peaches', form: 'halves', raw: '13 lb' },
      ],
      process: canned,
      jarsFilled: 7,
    };
    expect(taught(two)[0]?.rawPerJar).toEqual(taught(peaches(21, { process: canned, jarsFilled: 7 }))[0]?.rawPerJar);
  });

  test('a form that the food of the process names', () => {
    const record: BatchRecordInput = {
      ...batch,
      lots: [{ food: 'apple', raw: '10 lb', ready: '8 lb' }],
      process: { ...canned, food: 'applesauce', form: undefined, jar: 'pint' },
      jarsFilled: 6,
    };
    expect(taught(record).map(({ form, jar }) => [form, jar])).toEqual([
      ['sauce', undefined],
      ['sauce', 'pint'],
    ]);
  });

  test('drying hours and fresh moisture, from the printed hours and the water of the food tables', () => {
    const record = (hours: number, freshMoisture: number): BatchRecordInput => ({
      ...batch,
      lots: [{ food: 'apple', form: 'rings', raw: '10 lb' }],
      dryer: { time: { value: hours * 60, unit: 'min' }, freshMoisture, endMoisture: 0.2 },
    });
    const [entry, fresh, ...more] = taught(record(7, 0.85), record(8, 0.86));
    const { hours } = dryingGuide({ food: 'apple', form: 'slices' }) as KnownDryingGuide;
    const { moisture: water } = known(composition({ food: 'apple' }));
    const own = learnFromRecords({
      prior: { low: hours.low.value, likely: hours.likely.value, high: hours.high.value },
      observed: [7, 8],
      varies: 'times',
    }).figure;
    expect(entry?.dryingHours?.high.unit).toBe('min');
    expect((entry?.dryingHours?.high.value ?? 0) / 60).toBeCloseTo(own.high, 9);
    expect(fresh).toEqual({
      food: 'apple',
      moisture: learnFromRecords({ prior: water, observed: [0.85, 0.86] }).figure,
      n: 2,
      outliers: [],
    });
    expect([entry?.form, entry?.n, more]).toEqual(['slices', 2, []]);
    const { basis } = learn(record(7, 0.85));
    const paths = basis.map(({ of: path }) => path);
    expect(paths).toEqual(expect.arrayContaining(['learned[].moisture', 'learned[].dryingHours']));
    expect(basis.map(({ note }) => note)).not.toContain('sugars');
  });

  test('moisture is one figure for all forms of a food, and needs none', () => {
    const dried = (form: string | undefined, freshMoisture: number): BatchRecordInput => ({
      ...batch,
      lots: [{ food: 'apple', ...(form === undefined ? {} : { form }), raw: '10 lb' }],
      dryer: { time: '8 h', freshMoisture },
    });
    const entries = taught(dried('slices', 0.85), dried('cubes', 0.86), dried(undefined, 0.86));
    expect(entries.filter(({ moisture }) => moisture !== undefined)).toMatchObject([{ food: 'apple', n: 3 }]);
  });

  test('ends that a plan can take: no food is all waste, none all water', () => {
    const shares = [0.05, 0.95, 0.1, 0.9, 0.05, 0.95, 0.1, 0.9];
    const [wild] = taught(...shares.map((share) => peaches(20, {}, 20 * share)));
    expect(wild?.yield?.low).toBeGreaterThan(0);
    expect(wild?.yield?.high).toBeLessThanOrEqual(1);
    const wet = shares.map(
      (share): BatchRecordInput => ({
        ...batch,
        lots: [{ food: 'tomato', raw: '10 lb' }],
        dryer: { time: '8 h', freshMoisture: share },
      }),
    );
    const [moist] = taught(...wet);
    expect(moist?.moisture?.low).toBeGreaterThan(0);
    expect(moist?.moisture?.high).toBeLessThan(1);
  });

  test('many records outweigh the book, one slip of the pen does not', () => {
    const printed = known(readyFromRaw({ food: 'peach', form: 'halves', raw: '1 lb' })).yield;
    const own = Array.from({ length: 20 }, (_, i) => peaches(20, {}, 20 * (0.74 + 0.005 * ((i % 3) - 1))));
    const [clean] = taught(...own);
    expect(clean?.yield?.likely).toBeCloseTo(0.74, 1);
    expect(clean?.yield?.high).toBeLessThan(printed.likely);
    const [slipped] = taught(...own, peaches(20, {}, 0.15));
    expect(slipped?.yield?.likely).toBeCloseTo(clean?.yield?.likely as number, 3);
    expect(slipped?.outliers).toMatchObject([{ index: 20, figureName: 'yield', value: 0.0075 }]);
    expect(slipped?.n).toBe(21);
  });

  test('is plain JSON, of kept records as of the fields themselves, with basis and cautions', () => {
    const given = peaches(20, { process: canned, jarsFilled: 7, work: { preparing: '1 h' } }, 15);
    const answer = learn(given);
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
    expect(strayPaths(answer)).toEqual([]);
    expect(strayPaths(learn())).toEqual([]);
    expect(learnFromRecords({ records: [batchRecord(given)] })).toEqual(answer);
    expect(answer.basis.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['equation', 'measured', 'published', 'common-practice']),
    );
    expect(answer.basis.some(({ note = '' }) => note.includes('half to double'))).toBe(true);
    expect(answer.cautions.map(({ id }) => id)).toEqual(expect.arrayContaining(['few-records', 'estimate']));
  });
});

describe('what is passed over, never guessed', () => {
  const slices = (food: string, more: Partial<BatchRecordInput> = {}): BatchRecordInput => ({
    ...batch,
    lots: [{ food, form: 'slices', raw: '10 lb', ready: '5 lb' }],
    ...more,
  });

  test.each([
    [
      'a food in no table',
      slices('no such fruit', { dryer: { time: '3 h' } }),
      ['yield', 'dryingHours'],
      'no food in these tables',
    ],
    ['no form', { ...batch, lots: [{ food: 'peach', raw: '10 lb', ready: '8 lb' }] }, ['yield'], 'names no form'],
    [
      'a form in no table',
      { ...batch, lots: [{ food: 'peach', form: 'foam', raw: '10 lb', ready: '8 lb' }] },
      ['yield'],
      'peach as foam',
    ],
    [
      'jam: its jars are not those of the fruit alone',
      peaches(10, { process: { ...canned, food: 'peach jam', form: undefined }, jarsFilled: 8 }),
      ['rawPerJar'],
      'peach as jam',
    ],
    [
      'a process for another food',
      peaches(10, { process: { ...canned, food: 'pear' }, jarsFilled: 4 }),
      ['rawPerJar'],
      'is for pear',
    ],
    [
      'a process for a food in no table',
      peaches(10, { process: { ...canned, food: 'zzz' }, jarsFilled: 4 }),
      ['rawPerJar'],
      'is for zzz',
    ],
    [
      'a process without a form',
      peaches(10, { process: { ...canned, form: undefined }, jarsFilled: 4 }),
      ['rawPerJar'],
      'names no form',
    ],
    ['a jar in no table', peaches(10, { process: { ...canned, jar: 'crock' }, jarsFilled: 4 }), ['rawPerJar'], 'crock'],
    [
      'work with no sign of what was made',
      peaches(10, { work: { preparing: '1 h' } }),
      ['minutesPerPound'],
      'was made',
    ],
    [
      'work on jars and a dryer load at once',
      peaches(10, { work: { preparing: '1 h' }, process: canned, dryer: { time: '40 h' } }),
      ['minutesPerPound'],
      'was made',
    ],
    ['a weight below any scale', peaches(10, {}, 1e-12), ['yield'], 'not a figure of a kitchen'],
  ] as const)('%s', (_, record, whats, reason) => {
    const found = passed(record as BatchRecordInput);
    expect(found.map(({ figureName }) => figureName)).toEqual(whats);
    for (const each of found)
      expect(each).toMatchObject({ index: 0, reason: { text: expect.stringContaining(reason) } });
  });

  test('a figure with no published range', () => {
    // avocados are in the food tables, and too fatty for any drying guide
    const found = learn(slices('peach'), slices('avocado', { dryer: { time: '9 h', freshMoisture: 0.88 } }));
    expect(found.passedOver).toEqual([
      {
        index: 1,
        figureName: 'dryingHours',
        reason: { code: 'no-range', text: 'these tables hold no range for the drying hours of avocado as slices' },
      },
    ]);
    expect(found.learned.map(({ food }) => food)).toContain('avocado');
    expect(found.learned.every(({ dryingHours }) => dryingHours === undefined)).toBe(true);
  });

  test('jars and dryer loads of several kinds', () => {
    const mixed: BatchRecordInput = {
      ...batch,
      lots: [
        { food: 'peach', form: 'slices', raw: '10 lb' },
        { food: 'apple', form: 'slices', raw: '10 lb' },
      ],
      process: canned,
      jarsFilled: 7,
      dryer: { time: '9 h', freshMoisture: 0.86 },
    };
    expect(passed(mixed).map(({ figureName }) => figureName)).toEqual(['rawPerJar', 'dryingHours', 'moisture']);
    expect(taught(mixed)).toEqual([]);
    const unnamed = { ...mixed, lots: [{ food: 'peach', raw: '10 lb' as const }], process: undefined };
    expect(passed(unnamed)).toEqual([
      { index: 0, figureName: 'dryingHours', reason: { code: 'no-form', text: 'the record names no form of peach' } },
    ]);
  });

  test('no jars filled tell nothing', () => {
    expect(learn(peaches(10, { process: canned, jarsFilled: 0 }))).toMatchObject({ learned: [], passedOver: [] });
  });
});

test('bad input', () => {
  const good = peaches(10);
  expectError(() => learnFromRecords({} as never), 'MISSING', 'records');
  expectError(() => learnFromRecords({ records: [good, 5] } as never), 'WRONG_TYPE', 'records[1]');
  expectError(() => learn(good, peaches(10, {}, 11)), 'CONTRADICTION', 'records[1].lots[0].ready');
  expectError(() => learn({ ...good, jarsFilled: 1, jarsSealed: 2 }), 'CONTRADICTION', 'records[0].jarsSealed');
  expectError(() => learnFromRecords({ records: Array.from({ length: 100_001 }, () => good) }), 'TOO_MUCH', 'records');
});

test('twenty thousand records in one call', () => {
  const record = peaches(20, { process: canned, jarsFilled: 7, work: { preparing: '1 h' } }, 15);
  expect(learnFromRecords({ records: Array.from({ length: 20_000 }, () => record) }).learned[0]?.n).toBe(20_000);
});
