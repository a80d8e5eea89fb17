import { describe, expect, test } from 'vitest';
import { testedProcess } from '../../src/process/index';
import { type BatchRecordInput, batchRecord, reviewBatch } from '../../src/record/index';
import { expectError } from '../helpers/errors';
import { strayPaths } from '../sources/basisPaths';

type Process = NonNullable<BatchRecordInput['process']>;
const base = {
  lotCode: 'A1',
  date: '2026-08-14',
  name: 'a batch',
  lots: [{ food: 'a batch', raw: '20 lb' }],
  jarsFilled: 7,
  jarsSealed: 7,
} as const;
// USDA Complete Guide to Home Canning, Guide 2: hot peaches, quarts, 3,001 to 6,000 ft, 35 min
const peaches: Process = {
  food: 'peach',
  form: 'halves',
  pack: 'hot',
  jar: 'quart',
  method: 'boiling-water',
  elevation: '4200 ft',
  minutes: 35,
};
// Guide 4: green beans, quarts, dial gauge to 2,000 ft, 25 min at 11 lb
const beans: Process = {
  food: 'green beans',
  pack: 'hot',
  jar: 'quart',
  method: 'dial-gauge',
  elevation: '1000 ft',
  minutes: 25,
  pressure: '11 psi',
  vented: '10 min',
};

/** The food of a process, as the record names it in lots. */
const lotsOf = (process: Process | undefined): BatchRecordInput['lots'] => [
  { food: process === undefined ? 'peach' : process.food, raw: '20 lb' },
];
const review = (
  process: Process | undefined,
  more: Partial<BatchRecordInput> = {},
  sinceProcessing?: `${number} h`,
) => {
  const answer = reviewBatch({ record: { ...base, lots: lotsOf(process), process, ...more }, sinceProcessing });
  expect(strayPaths(answer)).toEqual([]);
  return answer;
};
const rules = (...args: Parameters<typeof review>) => review(...args).findings.map(({ id: rule }) => rule);

describe('the heat process', () => {
  test('a batch that kept the rules has no findings, its process and sources', () => {
    const kept = review(peaches);
    expect(kept.verdict).toBe('kept');
    expect(kept.findings).toEqual([]);
    expect(kept.process).toMatchObject({ tested: true, minutes: 35 });
    expect(kept.basis.some(({ source }) => source?.startsWith('usda'))).toBe(true);
  });

  test('never kept below the tested minutes, whatever the elevation', () => {
    for (const feet of [0, 1000, 1001, 3000, 3001, 6000, 6001, 9000]) {
      const elevation = { value: feet, unit: 'ft' } as const;
      const { food, form, pack, jar, method } = peaches as Required<Process>;
      const tested = testedProcess({ food, form, pack, jar, method, elevation });
      if (!tested.tested) throw new Error('peaches are tested');
      expect(rules({ ...peaches, elevation, minutes: tested.minutes })).toEqual([]);
      expect(rules({ ...peaches, elevation, minutes: tested.minutes - 0.5 })).toEqual(['process-too-short']);
    }
  });

  // Nebraska: again within 2 h; Iowa State: refrigerate or freeze within 24 h, throw out after
  test.each([
    ['0 h', ['reprocess', 'refrigerate', 'freeze'], 24],
    ['2 h', ['reprocess', 'refrigerate', 'freeze'], 22],
    ['2.1 h', ['refrigerate', 'freeze'], 21.9],
    ['24 h', ['refrigerate', 'freeze'], 0],
    ['24.1 h', ['discard'], undefined],
  ] as const)('a short process after %s', (since, remedies, left) => {
    const { findings, verdict } = review({ ...peaches, minutes: 30 }, {}, since);
    expect(findings[0]?.remedies).toEqual(remedies);
    if (left === undefined) expect(findings[0]?.timeLeft).toBeUndefined();
    else expect(findings[0]?.timeLeft?.value).toBeCloseTo(left, 9);
    expect(verdict).toBe(left === undefined ? 'discard' : 'act');
  });

  test('without the time every remedy is listed, with throwing out', () => {
    expect(review({ ...peaches, minutes: 30 }).findings[0]?.remedies).toEqual([
      'reprocess',
      'refrigerate',
      'freeze',
      'discard',
    ]);
  });

  // Kansas State: food of no tested process is discarded
  test('no tested process', () => {
    const wrong: Process = { ...beans, method: 'boiling-water', minutes: 180, pressure: undefined };
    expect(review(wrong, {}, '1 h').findings[0]?.remedies).toEqual(['refrigerate', 'freeze']);
    expect(review(wrong, {}, '3 h').verdict).toBe('discard');
    expect(review(wrong, {}, '3 h').process).toMatchObject({ tested: false });
  });

  test.each([
    ['pressure too low', { pressure: '10 psi' }, ['pressure-too-low']],
    ['pressure dropped', { lowestPressure: '10.9 psi' }, ['pressure-dropped']],
    [
      'pressure too low from the start and lower since',
      { pressure: '10 psi', lowestPressure: '9 psi' },
      ['pressure-too-low'],
    ],
    [
      'only the lowest pressure written, too low',
      { pressure: undefined, lowestPressure: '9 psi' },
      ['pressure-too-low'],
    ],
    ['only the lowest pressure written', { pressure: undefined, lowestPressure: '11 psi' }, []],
    ['a higher lowest', { lowestPressure: '12 psi' }, []],
    ['restarted', { lowestPressure: '5 psi', restarted: true }, []],
    ['lost and not started again', { interrupted: true }, ['pressure-dropped']],
    ['both too low and too short', { pressure: '10 psi', minutes: 20 }, ['pressure-too-low', 'process-too-short']],
    ['no pressure written', { pressure: undefined }, ['pressure-not-recorded']],
    ['no venting written', { vented: undefined }, ['venting-not-recorded']],
    ['vented 7 min', { vented: '7 min' }, ['vented-too-short']],
    ['the pressure in kPa', { pressure: '75.9 kPa' }, []],
  ] as const)('beans under pressure: %s', (_, change, broken) => {
    expect(rules({ ...beans, ...change } as Process)).toEqual(broken);
  });

  // one rule for doubt: boiling before tasting is advice for jars that were processed right, never a mend
  test('food in doubt is not tasted, and nothing near it says that boiling makes it safe', () => {
    const advice = (process: Process, since?: '1 h' | '30 h') =>
      review(process, {}, since).cautions.map(({ id }) => id);
    expect(advice(beans)).toContain('boil-before-tasting');
    for (const wrong of [{ minutes: 20 }, { pressure: undefined }, { lowestPressure: '5 psi' as const }]) {
      expect(advice({ ...beans, ...wrong } as Process, '1 h')).not.toContain('boil-before-tasting');
      expect(advice({ ...beans, ...wrong } as Process, '30 h')).toContain('when-in-doubt');
    }
    const { text } = review({ ...beans, minutes: 20 }).cautions.find(({ id }) => id === 'when-in-doubt') ?? {
      text: '',
    };
    expect(text).toMatch(/Never taste.*Boiling does not make it safe.*hours last.*throw it out/s);
  });

  test('a missing pressure clears nothing', () => {
    expect(review({ ...beans, pressure: undefined }).verdict).toBe('cannot tell');
  });

  test('the boil, and the steam, that stopped', () => {
    expect(rules({ ...peaches, interrupted: true })).toEqual(['boil-stopped']);
    expect(rules({ ...peaches, interrupted: true, restarted: true })).toEqual([]);
    const steam: Process = { ...peaches, method: 'atmospheric-steam' };
    expect(rules({ ...steam, interrupted: true })).toEqual(['steam-stopped']);
    const reading = (temperature: '200 degF' | '206 degF', where: 'canner' | 'fill' = 'canner') =>
      rules(steam, { temperatures: [{ where, temperature }] });
    expect(reading('200 degF')).toEqual(['steam-too-cool']);
    expect(reading('206 degF')).toEqual([]);
    expect(reading('200 degF', 'fill')).toEqual([]);
  });

  // Guide 3: a quart of tomatoes takes 2 tbsp of bottled lemon juice or 1/2 tsp of citric acid
  test.each([
    [undefined, ['acid-missing']],
    [{}, ['acid-missing']],
    [{ bottledLemonJuice: '1 tbsp' }, ['acid-too-little']],
    [{ citricAcid: '1/4 tsp', vinegar: '1 tbsp' }, ['acid-too-little']],
    [{ bottledLemonJuice: '2 tbsp' }, []],
    [{ citricAcid: '0.5 tsp' }, []],
    [{ vinegar: '1/4 cup' }, []],
    [{ asInRecipe: true }, []],
  ] as const)('acid of tomatoes: %j', (acid, broken) => {
    const tomatoes: Process = {
      food: 'crushed tomatoes',
      jar: 'quart',
      method: 'boiling-water',
      elevation: '500 ft',
      minutes: 45,
      acid,
    };
    expect(rules(tomatoes)).toEqual(broken);
  });

  test('acid that is part of a recipe must be confirmed', () => {
    const salsa: Process = {
      food: 'mango salsa',
      jar: 'half-pint',
      method: 'boiling-water',
      elevation: '500 ft',
      minutes: 15,
    };
    expect(rules({ ...salsa, acid: { vinegar: '1 cup' } })).toContain('acid-not-confirmed');
    expect(rules({ ...salsa, acid: { asInRecipe: true } })).not.toContain('acid-not-confirmed');
  });

  // MSU 01600496: a process under 10 minutes needs sterilized jars
  test('sterilized jars', () => {
    const jam: Process = {
      food: 'strawberry jam',
      jar: 'half-pint',
      method: 'boiling-water',
      elevation: '200 ft',
      minutes: 5,
    };
    expect(rules(jam)).toEqual(['sterilizing-not-recorded']);
    expect(rules({ ...jam, sterilizedJars: true })).toEqual([]);
    expect(rules({ ...jam, sterilizedJars: false })).toEqual(['jars-not-sterilized']);
  });
});

describe('what else a record shows', () => {
  test('headspace', () => {
    const { findings, verdict } = review(peaches, { headspaces: ['1/2 in', '1/4 in', '1 in'] });
    expect(findings.map(({ id: rule, field }) => [rule, field])).toEqual([
      ['headspace-too-little', 'headspaces[1]'],
      ['headspace-too-much', 'headspaces[2]'],
    ]);
    expect(verdict).toBe('watch');
  });

  // USDA guide 1: an unsealed jar is processed again within 24 h
  test('seals', () => {
    const jars = { jarsFilled: 7, jarsSealed: 5 };
    expect(review(peaches, jars).findings[0]).toMatchObject({
      id: 'jars-not-sealed',
      timeLeft: { value: 24, unit: 'h' },
    });
    expect(review(peaches, jars).findings[0]?.remedies).toContain('discard');
    expect(review(peaches, jars, '20 h').findings[0]).toMatchObject({
      timeLeft: { value: 4, unit: 'h' },
      remedies: ['reprocess', 'refrigerate', 'freeze'],
    });
    const late = review(peaches, jars, '25 h');
    expect(late.findings[0]?.remedies).toEqual(['discard']);
    expect(late.verdict).toBe('act');
    expect(rules(peaches, { jarsFilled: 7, jarsSealed: 7, sealsTestedAfter: '3 h' })).toEqual([
      'seals-tested-too-early',
    ]);
    expect(rules(peaches, { ...jars, sealsTestedAfter: '13 h' })).toEqual(['jars-not-sealed']);
    const cold = { keptIn: 'refrigerator', temperatures: [{ where: 'refrigerator', temperature: '38 degF' }] } as const;
    expect(rules(peaches, { ...jars, keptIn: 'refrigerator' })).toEqual([
      'refrigerator-not-recorded',
      'use-by-not-recorded',
    ]);
    expect(rules(peaches, { ...jars, ...cold, temperatures: [...cold.temperatures], useBy: '2026-08-17' })).toEqual([]);
    expect(rules(peaches, { jarsFilled: 7, jarsSealed: undefined })).toEqual(['seals-not-recorded']);
    expect(rules(peaches, { jarsFilled: 7, jarsSealed: undefined, keptIn: 'freezer' })).toEqual([
      'frozen-not-recorded',
    ]);
  });
  test('jars of a wrong process that did not seal go the way of the sealed ones', () => {
    const jars = { jarsFilled: 7, jarsSealed: 6 };
    const short = { ...peaches, minutes: 25 };
    const remedies = (hours: number) =>
      review(short, jars, `${hours} h` as '1 h').findings.map(({ remedies: each, timeLeft }) => [
        each,
        timeLeft?.value,
      ]);
    // canned again within 2 h, chilled within 24 h
    expect(remedies(1)).toEqual([
      [['reprocess', 'refrigerate', 'freeze'], 23],
      [['reprocess', 'refrigerate', 'freeze'], 23],
    ]);
    expect(remedies(14)).toEqual([
      [['refrigerate', 'freeze'], 10],
      [['refrigerate', 'freeze'], 10],
    ]);
    expect(remedies(25)).toEqual([
      [['discard'], undefined],
      [['discard'], undefined],
    ]);
  });

  // 21 CFR 114.80: 4.6 or lower; above 4.0 with a meter
  test('pH', () => {
    expect(
      rules(peaches, {
        pHReadings: [
          { pH: 4.6, by: 'meter' },
          { pH: 4, by: 'paper' },
        ],
      }),
    ).toEqual([]);
    expect(rules(peaches, { pHReadings: [{ pH: 4.7, by: 'meter' }] })).toEqual(['ph-too-high']);
    expect(rules(peaches, { pHReadings: [{ pH: 4.1, by: 'paper' }] })).toEqual(['ph-needs-meter']);
    expect(rules(beans, { pHReadings: [{ pH: 5.6, by: 'meter' }] })).toEqual([]);
    expect(review(peaches, { pHReadings: [{ pH: 4.7, by: 'meter' }] }, '30 h').verdict).toBe('discard');
  });

  test('store and freezer', () => {
    const at = (where: 'store' | 'freezer' | 'fill', temperature: '95 degF' | '96 degF' | '0 degF' | '5 degF') =>
      rules(peaches, { temperatures: [{ where, temperature }] });
    expect(at('store', '95 degF')).toEqual([]);
    expect(at('store', '96 degF')).toEqual(['store-too-warm']);
    expect(at('freezer', '0 degF')).toEqual([]);
    expect(at('freezer', '5 degF')).toEqual(['freezer-too-warm']);
    expect(at('fill', '96 degF')).toEqual([]);
  });

  test('more out than in, departures left open, jars without a process', () => {
    const output = [{ what: 'jars', mass: '21 lb' }] as const;
    expect(rules(peaches, { output: [...output] })).toEqual(['more-out-than-in']);
    expect(rules(peaches, { output: [...output], additions: [{ what: 'syrup', mass: '2 lb' }] })).toEqual([]);
    expect(rules(peaches, { departures: [{ what: 'lid bent', whatWasDone: 'new lid' }] })).toEqual([
      'departure-left-open',
    ]);
    expect(
      rules(peaches, { departures: [{ what: 'lid bent', whatWasDone: 'new lid', disposition: 'shelf' }] }),
    ).toEqual([]);
    expect(rules(undefined)).toEqual(['process-not-recorded']);
    expect(review(undefined).verdict).toBe('cannot tell');
    expect(rules(undefined, { keptIn: 'freezer' })).toEqual(['frozen-not-recorded']);
    expect(
      rules(undefined, { keptIn: 'freezer', temperatures: [{ where: 'freezer', temperature: '0 degF' }] }),
    ).toEqual([]);
    expect(rules(undefined, { jarsFilled: undefined, jarsSealed: undefined })).toEqual(['keeping-not-recorded']);
  });

  test('fields left out are listed', () => {
    const { notRecorded } = review(peaches);
    expect(notRecorded.map(({ field }) => field)).toEqual(['pHReadings', 'departures', 'distribution', 'recordedBy']);
  });
});

test('a record as it was kept can be reviewed; a bad one names its field', () => {
  const record = batchRecord({ ...base, lots: lotsOf(peaches), process: peaches });
  expect(reviewBatch({ record }).verdict).toBe('kept');
  expectError(() => reviewBatch({} as never), 'MISSING', 'record');
  expectError(
    () => reviewBatch({ record: { ...base, jarsFilled: 1, jarsSealed: 2 } }),
    'CONTRADICTION',
    'record.jarsSealed',
  );
  expectError(() => review({ ...peaches, food: 'peech' }), 'UNKNOWN_NAME', 'record.process.food');
  expectError(() => review({ ...peaches, pack: undefined }), 'MISSING', 'record.process.pack');
});
