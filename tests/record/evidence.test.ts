import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { findNamed } from '../../src/common/names';
import { foodsNamed } from '../../src/foods/lookUpFood';
import { foodOf, nameOf } from '../../src/foods/tables';
import { processRows } from '../../src/process/tables';
import { type BatchRecordInput, reviewBatch } from '../../src/record/index';
import { readTable } from '../helpers/tables';

type Process = NonNullable<BatchRecordInput['process']>;
type Dryer = NonNullable<BatchRecordInput['dryer']>;
const of = (food: string, more: Partial<BatchRecordInput> = {}): BatchRecordInput => ({
  lot: 'A1',
  date: '2026-08-14',
  product: food,
  produce: [{ produce: food, raw: '20 lb' }],
  ...more,
});
const review = (record: BatchRecordInput, sinceProcessing?: `${number} h`) => reviewBatch({ record, sinceProcessing });
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
const peaches: Process = {
  food: 'peach',
  form: 'halves',
  pack: 'hot',
  jar: 'quart',
  method: 'boiling-water',
  elevation: '500 ft',
  minutes: 25,
};
const sealed = { filled: 7, sealed: 7 };
const heated = { heating: 'before', internalTemperature: '160 degF' } as const;

describe('kept needs evidence: each case has its verdict and says what is missing', () => {
  test.each<[string, BatchRecordInput, string, string[]]>([
    [
      'jerky dried at 120 degF to 40 %, on the shelf',
      of('beef jerky', { dryer: { time: '48 h', temperature: '120 degF', endMoisture: '40 %' }, keptIn: 'shelf' }),
      'discard',
      ['meat-heated', 'dry-enough'],
    ],
    [
      'jerky heated first, its dryness not measured',
      of('beef', { dryer: { time: '8 h', temperature: '140 degF', meat: heated }, keptIn: 'shelf' }),
      'cannot tell',
      ['dry-enough'],
    ],
    [
      'jerky heated first and dry',
      of('beef', { dryer: { time: '8 h', temperature: '140 degF', meat: heated, waterActivity: 0.85 } }),
      'kept',
      [],
    ],
    [
      'jerky heated first, too moist',
      of('beef', { dryer: { time: '8 h', temperature: '140 degF', meat: heated, waterActivity: 0.86 } }),
      'act',
      ['dry-enough'],
    ],
    [
      'chicken heated to 160 degF only',
      of('chicken', { dryer: { time: '8 h', temperature: '140 degF', meat: heated, waterActivity: 0.8 } }),
      'discard',
      ['meat-heated'],
    ],
    [
      'jerky whose heating nobody wrote down',
      of('venison', { dryer: { time: '8 h', temperature: '140 degF', waterActivity: 0.8 } }),
      'cannot tell',
      ['meat-heated'],
    ],
    [
      'unheated jerky in the freezer',
      of('beef', {
        dryer: { time: '8 h', temperature: '140 degF', meat: { heating: 'none' } },
        keptIn: 'freezer',
        temperatures: [{ of: 'freezer', temperature: '0 degF' }],
      }),
      'discard',
      ['meat-heated'],
    ],
    [
      'dried fish, for which nothing is printed',
      of('salmon', { dryer: { time: '8 h', endMoisture: 0.05 } }),
      'cannot tell',
      ['no-evidence-known'],
    ],
    [
      'dried peach at 40 %',
      of('peach', { dryer: { time: '9 h', endMoisture: '40 %' }, keptIn: 'shelf' }),
      'act',
      ['dry-enough'],
    ],
    ['dried peach, moisture unknown', of('peach', { dryer: { time: '9 h' } }), 'cannot tell', ['dry-enough']],
    ['dried peach at 20 %', of('peach', { dryer: { time: '9 h', endMoisture: '20 %' } }), 'kept', []],
    ['dried peach at 21 %', of('peach', { dryer: { time: '9 h', endMoisture: '21 %' } }), 'act', ['dry-enough']],
    ['dried peach by water activity', of('peach', { dryer: { time: '9 h', waterActivity: 0.6 } }), 'kept', []],
    [
      'dried peach, water activity too high',
      of('peach', { dryer: { time: '9 h', endMoisture: '20 %', waterActivity: 0.65 } }),
      'act',
      ['dry-enough'],
    ],
    ['dried carrot at 10 %', of('carrot', { dryer: { time: '9 h', endMoisture: '10 %' } }), 'kept', []],
    ['dried carrot at 11 %', of('carrot', { dryer: { time: '9 h', endMoisture: '11 %' } }), 'act', ['dry-enough']],
    [
      'a dried mixture is as dry as its strictest part',
      of('peach', {
        produce: [
          { produce: 'peach', raw: '2 lb' },
          { produce: 'carrot', raw: '2 lb' },
        ],
        dryer: { time: '9 h', endMoisture: '15 %' },
      }),
      'act',
      ['dry-enough'],
    ],
    [
      'something dried that no table knows',
      of('moon dust', { dryer: { time: '9 h', endMoisture: 0.01 } }),
      'cannot tell',
      ['no-evidence-known'],
    ],
    [
      'garlic in oil, by its name',
      of('garlic', { product: 'garlic in oil', keptIn: 'shelf' }),
      'act',
      ['oil-in-tested-recipe', 'no-evidence-known'],
    ],
    [
      'garlic with oil added',
      of('garlic', { added: [{ what: 'olive oil', mass: '1 lb' }], keptIn: 'shelf', jars: sealed }),
      'act',
      ['oil-in-tested-recipe', 'process'],
    ],
    [
      'dried tomatoes in oil',
      of('tomato', {
        product: 'sun-dried tomatoes in oil',
        dryer: { time: '9 h', endMoisture: 0.08 },
        keptIn: 'shelf',
      }),
      'act',
      ['oil-in-tested-recipe'],
    ],
    ['garlic on the shelf', of('garlic', { keptIn: 'shelf' }), 'cannot tell', ['no-evidence-known']],
    ['nothing about where it is kept', of('peach'), 'cannot tell', ['keeping']],
    [
      'pumpkin puree with the process of green beans',
      of('pumpkin', { product: 'pumpkin puree', process: beans, jars: sealed }),
      'act',
      ['same-food'],
    ],
    [
      'pumpkin puree with the process of pumpkin cubes',
      of('pumpkin', {
        product: 'pumpkin puree',
        process: { ...beans, food: 'pumpkin', pack: undefined, minutes: 90 },
        jars: sealed,
      }),
      'act',
      ['same-food'],
    ],
    ['beans with their own process', of('green beans', { process: beans, jars: sealed }), 'kept', []],
    ['beans, seals never looked at', of('green beans', { process: beans }), 'cannot tell', ['seals']],
    ['peach halves', of('peach', { product: 'peach halves', process: peaches, jars: sealed }), 'kept', []],
    [
      'peach sauce with the process of halves',
      of('peach', { product: 'peach salsa', process: peaches, jars: sealed }),
      'cannot tell',
      ['same-food'],
    ],
    [
      'peaches and beans in one jar',
      of('peach', {
        produce: [
          { produce: 'peach', raw: '9 lb' },
          { produce: 'green beans', raw: '9 lb' },
        ],
        process: peaches,
        jars: sealed,
      }),
      'act',
      ['same-food'],
    ],
    [
      'peaches with onions added',
      of('peach', { process: peaches, jars: sealed, added: [{ what: 'onions', mass: '1 lb' }] }),
      'cannot tell',
      ['same-food'],
    ],
    [
      'peaches with syrup added',
      of('peach', { process: peaches, jars: sealed, added: [{ what: 'light syrup', mass: '1 lb' }] }),
      'kept',
      [],
    ],
    ['a batch of no known food', of('a batch', { process: peaches, jars: sealed }), 'cannot tell', ['same-food']],
    [
      'a jar in the refrigerator, nothing written down',
      of('peach', { keptIn: 'refrigerator' }),
      'cannot tell',
      ['refrigerator', 'use-by'],
    ],
    [
      'a jar in the refrigerator for a week',
      of('peach', {
        keptIn: 'refrigerator',
        temperatures: [{ of: 'refrigerator', temperature: '41 degF' }],
        useBy: '2026-08-20',
      }),
      'kept',
      [],
    ],
    [
      'the same, a day too long',
      of('peach', {
        keptIn: 'refrigerator',
        temperatures: [{ of: 'refrigerator', temperature: '41 degF' }],
        useBy: '2026-08-21',
      }),
      'act',
      ['use-by'],
    ],
    [
      'a warm refrigerator',
      of('peach', {
        keptIn: 'refrigerator',
        temperatures: [
          { of: 'refrigerator', temperature: '40 degF' },
          { of: 'refrigerator', temperature: '45 degF' },
        ],
        useBy: '2026-08-16',
      }),
      'act',
      ['refrigerator'],
    ],
    ['a freezer nobody read', of('peach', { keptIn: 'freezer' }), 'cannot tell', ['frozen']],
    [
      'a freezer',
      of('peach', { keptIn: 'freezer', temperatures: [{ of: 'freezer', temperature: '0 degF' }] }),
      'kept',
      [],
    ],
    [
      'a freezer that thawed',
      of('peach', {
        keptIn: 'freezer',
        temperatures: [
          { of: 'freezer', temperature: '0 degF' },
          { of: 'freezer', temperature: '40 degF' },
        ],
      }),
      'act',
      ['frozen'],
    ],
    [
      'jars that would keep on a shelf need no day in the refrigerator',
      of('peach', { process: peaches, jars: sealed, keptIn: 'refrigerator' }),
      'kept',
      [],
    ],
  ])('%s', (_, record, verdict, lacking) => {
    const { verdict: said, evidence, findings } = review(record);
    expect(said).toBe(verdict);
    expect(evidence.filter(({ state }) => state !== 'held').map(({ line }) => line)).toEqual(lacking);
    const rules = findings.map(({ rule }) => rule);
    for (const line of lacking) expect(rules.includes(line) || rules.includes(`${line}-not-recorded`), line).toBe(true);
    // what is missing is said as data: the field, and what must stand in it
    for (const { field, wanted, next } of evidence)
      expect([field, wanted, next].every((text) => text !== '')).toBe(true);
  });

  test('garlic that stood in oil longer than two hours is thrown out', () => {
    const record = of('garlic', { product: 'garlic in oil', keptIn: 'shelf' });
    expect(review(record, '1 h').findings[0]?.remedies).toEqual(['refrigerate', 'freeze']);
    expect(review(record, '3 h').verdict).toBe('discard');
  });

  test('an unsealed jar of another food goes no other way than the sealed ones', () => {
    const record = of('pumpkin', { process: beans, jars: { filled: 7, sealed: 6 } });
    const remedies = (since: '1 h' | '3 h') => review(record, since).findings.map(({ remedies: each }) => each);
    expect(remedies('1 h').flat()).not.toContain('reprocess');
    expect(remedies('3 h')).toEqual([['discard'], ['discard']]);
  });

  test('meat in the name or among what was added asks for its own evidence', () => {
    const dryer: Dryer = { time: '9 h', endMoisture: 0.1 };
    const lines = (record: BatchRecordInput) => review(record).evidence.map(({ line }) => line);
    expect(lines(of('carrot', { dryer }))).not.toContain('meat-heated');
    expect(lines(of('carrot', { dryer, added: [{ what: 'ground beef', mass: '1 lb' }] }))).toContain('meat-heated');
    expect(lines(of('carrot', { dryer, product: 'turkey jerky' }))).toContain('meat-heated');
  });

  test('no jar filled is no jar sealed', () => {
    expect(review(of('green beans', { process: beans, jars: { filled: 0, sealed: 0 } })).verdict).toBe('cannot tell');
  });

  test('a tested recipe with oil may stand on the shelf', () => {
    const tuna: Process = {
      ...beans,
      food: 'tuna',
      form: 'precooked, packed in water or oil',
      pack: undefined,
      jar: 'pint',
      minutes: 100,
    };
    const record = of('tuna', { process: tuna, jars: sealed, added: [{ what: 'oil', mass: '1 lb' }] });
    const state = (given: BatchRecordInput) =>
      review(given).evidence.find(({ line }) => line === 'oil-in-tested-recipe')?.state;
    expect(state(record)).toBe('held');
    expect(state({ ...record, process: { ...tuna, vented: undefined } })).toBe('missing');
    expect(state({ ...record, process: { ...tuna, minutes: 90 } })).toBe('broken');
  });

  test('a recipe of several foods counts when the record says it was followed', () => {
    const process: Process = {
      food: 'salsa',
      form: 'tomato taco sauce',
      jar: 'pint',
      method: 'boiling-water',
      elevation: '500 ft',
      minutes: 60,
      acid: { asInRecipe: true },
    };
    const record = (recipeFollowed?: boolean, second = 'onion') =>
      of('tomato', {
        produce: [
          { produce: 'tomato', raw: '7 lb' },
          { produce: second, raw: '2 lb' },
        ],
        process: { ...process, ...(recipeFollowed === undefined ? {} : { recipeFollowed }) },
        jars: sealed,
      });
    expect(review(record()).verdict).toBe('cannot tell');
    expect(review(record(false)).verdict).toBe('cannot tell');
    expect(review(record(true)).verdict).toBe('kept');
    // it never lets a stranger into the process of one food
    expect(review(of('green beans', { process: { ...peaches, recipeFollowed: true }, jars: sealed })).verdict).toBe(
      'act',
    );
  });
});

/** What holds, written a second time and straight from the pages. */
function shows(record: BatchRecordInput): boolean {
  const readings = (place: string) =>
    (record.temperatures ?? [])
      .filter(({ of: what }) => what === place)
      .map(({ temperature }) => Number.parseFloat(String(temperature)));
  const { process, dryer, jars } = record;
  const [food] = record.produce.map(({ produce }) => produce);
  const oil = (record.added ?? []).some(({ what }) => what.includes('oil'));
  const meat = food === 'beef';
  if (dryer !== undefined && meat && dryer.meat?.heating !== 'before') return false;
  if (dryer !== undefined && meat && (dryer.temperature === undefined || dryer.temperature === '120 degF'))
    return false;
  const dry =
    dryer !== undefined &&
    (meat
      ? dryer.waterActivity !== undefined && dryer.waterActivity <= 0.85
      : (dryer.endMoisture !== undefined || dryer.waterActivity !== undefined) &&
        ((dryer.endMoisture ?? 0) as number) <= (food === 'peach' ? 0.2 : 0.1) &&
        (dryer.waterActivity ?? 0) <= 0.6);
  const canned =
    process !== undefined &&
    jars?.sealed === jars?.filled &&
    jars !== undefined &&
    ((food === 'peach' && process.food === 'peach' && process.minutes >= 25) ||
      (food === 'green beans' && process.food === 'green beans' && process.minutes >= 25));
  const shelf = (process === undefined || canned) && (dryer === undefined || dry) && (canned || dry) && !oil;
  const days = record.useBy === undefined ? 99 : Number.parseInt(record.useBy.slice(8), 10) - 14 + 1;
  const cold = readings('refrigerator');
  const frozen = readings('freezer');
  const chilled = cold.length > 0 && cold.every((degF) => degF <= 41) && days <= 7;
  if (record.keptIn === 'refrigerator') return chilled || shelf;
  if (record.keptIn === 'freezer') return (frozen.length > 0 && frozen.every((degF) => degF <= 32)) || shelf;
  return (record.keptIn === 'shelf' || process !== undefined || dryer !== undefined) && shelf;
}

test('no batch is kept, or only watched, unless every evidence of its keeping is there and holds', () => {
  const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 2 });
  const dryer: fc.Arbitrary<Dryer> = fc.record(
    {
      time: fc.constant('9 h' as const),
      temperature: fc.constantFrom('120 degF', '140 degF'),
      endMoisture: fc.constantFrom(0.05, 0.1, 0.15, 0.2, 0.4),
      waterActivity: fc.constantFrom(0.5, 0.6, 0.7, 0.85, 0.9),
      meat: fc.constantFrom({ heating: 'none' } as const, heated),
    },
    { requiredKeys: ['time'] },
  ) as fc.Arbitrary<Dryer>;
  const processes = fc.constantFrom<Process>(beans, peaches, { ...peaches, minutes: 20 }, { ...beans, minutes: 24 });
  const records = fc
    .record({
      food: fc.constantFrom('peach', 'green beans', 'carrot', 'beef', 'pumpkin', 'garlic', 'a batch'),
      process: maybe(processes),
      dryer: maybe(dryer),
      jars: maybe(fc.constantFrom(sealed, { filled: 7, sealed: 6 }, { filled: 7 })),
      keptIn: maybe(fc.constantFrom('shelf', 'refrigerator', 'freezer')),
      added: maybe(fc.constantFrom([{ what: 'olive oil', mass: '1 lb' }], [{ what: 'light syrup', mass: '1 lb' }])),
      useBy: maybe(fc.constantFrom('2026-08-16', '2026-08-20', '2026-08-21', '2026-08-28')),
      temperatures: maybe(
        fc.array(
          fc.record({
            of: fc.constantFrom('refrigerator', 'freezer', 'store'),
            temperature: fc.constantFrom('0 degF', '5 degF', '38 degF', '45 degF'),
          }),
          { maxLength: 3 },
        ),
      ),
    })
    .map(({ food, ...rest }) =>
      of(food, Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined))),
    );
  let kept = 0;
  fc.assert(
    fc.property(records, (record) => {
      const { verdict, evidence } = review(record);
      if (verdict !== 'kept' && verdict !== 'watch') return;
      kept += 1;
      expect(evidence.length).toBeGreaterThan(0);
      expect(evidence.map(({ state }) => state)).toEqual(evidence.map(() => 'held'));
      expect(shows(record)).toBe(true);
    }),
    { numRuns: 1200 },
  );
  expect(kept).toBeGreaterThan(20);
});

describe('the lists of foods', () => {
  const names = z.array(z.string().min(3)).min(1);
  const lists: Record<string, z.ZodType> = {
    'kinds-of-foods': z.strictObject({
      name: z.string(),
      synonyms: names.optional(),
      kind: z.enum(['meat', 'poultry', 'fish', 'egg', 'dairy']),
    }),
    'mixed-foods': z.strictObject({ food: z.string(), forms: names.optional() }),
  };
  test.each(Object.keys(lists))('the list of %s has its shape', (name) => {
    z.array(lists[name] as z.ZodType)
      .min(5)
      .parse(readTable('record', name));
  });

  test('no food has two kinds, and recipes and oil rows name foods of the process tables', () => {
    const kinds = readTable('record', 'kinds-of-foods') as { name: string; synonyms?: string[]; kind: string }[];
    for (const { name, synonyms = [] } of kinds) {
      for (const text of [name, ...synonyms]) {
        expect(findNamed(text, kinds).length).toBe(1);
        for (const { id } of foodsNamed(text)) expect(['fruit', 'vegetable'], text).not.toContain(foodOf(id).kind);
      }
    }
    for (const { food, forms = [] } of readTable('record', 'mixed-foods')) {
      const rows = processRows.filter((row) => row.food === food);
      expect(rows.length, food).toBeGreaterThan(0);
      for (const form of forms)
        expect(
          rows.map((row) => row.form),
          food,
        ).toContain(form);
    }
    for (const { foods = [] } of readTable('record', 'evidence').rows)
      for (const food of foods)
        expect(
          processRows.some((row) => nameOf(row.food) === food),
          food,
        ).toBe(true);
  });
});
