import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { foodRows } from '../../src/foods/tables';
import { processRows } from '../../src/process/tables';
import { type BatchRecordInput, reviewBatch } from '../../src/record/index';
import { EVIDENCE, MIXED } from '../../src/record/tables';
import { strayPaths } from '../sources/basisPaths';

type Process = NonNullable<BatchRecordInput['process']>;
type Dryer = NonNullable<BatchRecordInput['dryer']>;
const of = (food: string, more: Partial<BatchRecordInput> = {}): BatchRecordInput => ({
  lotCode: 'A1',
  date: '2026-08-14',
  name: food,
  lots: [{ food: food, raw: '20 lb' }],
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
const sealed = { jarsFilled: 7, jarsSealed: 7 };
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
        temperatures: [{ where: 'freezer', temperature: '0 degF' }],
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
        lots: [
          { food: 'peach', raw: '2 lb' },
          { food: 'carrot', raw: '2 lb' },
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
      of('garlic', { name: 'garlic in oil', keptIn: 'shelf' }),
      'act',
      ['oil-in-tested-recipe', 'no-evidence-known'],
    ],
    [
      'garlic with oil added',
      of('garlic', { additions: [{ what: 'olive oil', mass: '1 lb' }], keptIn: 'shelf', ...sealed }),
      'act',
      ['oil-in-tested-recipe', 'process'],
    ],
    [
      'dried tomatoes in oil',
      of('tomato', {
        name: 'sun-dried tomatoes in oil',
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
      of('pumpkin', { name: 'pumpkin puree', process: beans, ...sealed }),
      'act',
      ['same-food'],
    ],
    [
      'pumpkin puree with the process of pumpkin cubes',
      of('pumpkin', {
        name: 'pumpkin puree',
        process: { ...beans, food: 'pumpkin', pack: undefined, minutes: 90 },
        ...sealed,
      }),
      'act',
      ['same-food'],
    ],
    ['beans with their own process', of('green beans', { process: beans, ...sealed }), 'kept', []],
    ['beans, seals never looked at', of('green beans', { process: beans }), 'cannot tell', ['seals']],
    ['peach halves', of('peach', { name: 'peach halves', process: peaches, ...sealed }), 'kept', []],
    [
      'peach sauce with the process of halves',
      of('peach', { name: 'peach salsa', process: peaches, ...sealed }),
      'cannot tell',
      ['same-food'],
    ],
    [
      'peaches and beans in one jar',
      of('peach', {
        lots: [
          { food: 'peach', raw: '9 lb' },
          { food: 'green beans', raw: '9 lb' },
        ],
        process: peaches,
        ...sealed,
      }),
      'act',
      ['same-food'],
    ],
    [
      'peaches with onions added',
      of('peach', { process: peaches, ...sealed, additions: [{ what: 'onions', mass: '1 lb' }] }),
      'cannot tell',
      ['same-food'],
    ],
    [
      'peaches with syrup added',
      of('peach', { process: peaches, ...sealed, additions: [{ what: 'light syrup', mass: '1 lb' }] }),
      'kept',
      [],
    ],
    ['a batch of no known food', of('a batch', { process: peaches, ...sealed }), 'cannot tell', ['same-food']],
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
        temperatures: [{ where: 'refrigerator', temperature: '41 degF' }],
        useBy: '2026-08-20',
      }),
      'kept',
      [],
    ],
    [
      'the same, a day too long',
      of('peach', {
        keptIn: 'refrigerator',
        temperatures: [{ where: 'refrigerator', temperature: '41 degF' }],
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
          { where: 'refrigerator', temperature: '40 degF' },
          { where: 'refrigerator', temperature: '45 degF' },
        ],
        useBy: '2026-08-16',
      }),
      'act',
      ['refrigerator'],
    ],
    ['a freezer nobody read', of('peach', { keptIn: 'freezer' }), 'cannot tell', ['frozen']],
    [
      'a freezer',
      of('peach', { keptIn: 'freezer', temperatures: [{ where: 'freezer', temperature: '0 degF' }] }),
      'kept',
      [],
    ],
    [
      'a freezer that thawed',
      of('peach', {
        keptIn: 'freezer',
        temperatures: [
          { where: 'freezer', temperature: '0 degF' },
          { where: 'freezer', temperature: '40 degF' },
        ],
      }),
      'act',
      ['frozen'],
    ],
    [
      'jars that would keep on a shelf need no day in the refrigerator',
      of('peach', { process: peaches, ...sealed, keptIn: 'refrigerator' }),
      'kept',
      [],
    ],
  ])('%s', (_, record, verdict, lacking) => {
    const { verdict: said, evidence, findings } = review(record);
    expect(said).toBe(verdict);
    expect(evidence.filter(({ status }) => status !== 'held').map(({ line }) => line)).toEqual(lacking);
    const rules = findings.map(({ id: rule }) => rule);
    for (const line of lacking) expect(rules.includes(line) || rules.includes(`${line}-not-recorded`), line).toBe(true);
    // what is missing is said as data: the field, and what must stand in it
    for (const { field, wanted, next } of evidence)
      expect([field, wanted, next].every((text) => text !== '')).toBe(true);
  });

  test('garlic that stood in oil longer than two hours is thrown out', () => {
    const record = of('garlic', { name: 'garlic in oil', keptIn: 'shelf' });
    expect(review(record, '1 h').findings[0]?.remedies).toEqual(['refrigerate', 'freeze']);
    expect(review(record, '3 h').verdict).toBe('discard');
  });

  test('an unsealed jar of another food goes no other way than the sealed ones', () => {
    const record = of('pumpkin', { process: beans, jarsFilled: 7, jarsSealed: 6 });
    const remedies = (since: '1 h' | '3 h') => review(record, since).findings.map(({ remedies: each }) => each);
    expect(remedies('1 h').flat()).not.toContain('reprocess');
    expect(remedies('3 h')).toEqual([['discard'], ['discard']]);
  });

  test('meat in the name or among what was added asks for its own evidence', () => {
    const dryer: Dryer = { time: '9 h', endMoisture: 0.1 };
    const lines = (record: BatchRecordInput) => review(record).evidence.map(({ line }) => line);
    expect(lines(of('carrot', { dryer }))).not.toContain('meat-heated');
    expect(lines(of('carrot', { dryer, additions: [{ what: 'ground beef', mass: '1 lb' }] }))).toContain('meat-heated');
    expect(lines(of('carrot', { dryer, name: 'turkey jerky' }))).toContain('meat-heated');
  });

  test('no jar filled is no jar sealed', () => {
    expect(review(of('green beans', { process: beans, jarsFilled: 0, jarsSealed: 0 })).verdict).toBe('cannot tell');
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
    const record = of('tuna', { process: tuna, ...sealed, additions: [{ what: 'oil', mass: '1 lb' }] });
    const status = (given: BatchRecordInput) =>
      review(given).evidence.find(({ line }) => line === 'oil-in-tested-recipe')?.status;
    expect(status(record)).toBe('held');
    expect(status({ ...record, process: { ...tuna, vented: undefined } })).toBe('missing');
    expect(status({ ...record, process: { ...tuna, minutes: 90 } })).toBe('broken');
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
        lots: [
          { food: 'tomato', raw: '7 lb' },
          { food: second, raw: '2 lb' },
        ],
        process: { ...process, ...(recipeFollowed === undefined ? {} : { recipeFollowed }) },
        ...sealed,
      });
    expect(review(record()).verdict).toBe('cannot tell');
    expect(review(record(false)).verdict).toBe('cannot tell');
    expect(review(record(true)).verdict).toBe('kept');
    // it never lets a stranger into the process of one food
    expect(review(of('green beans', { process: { ...peaches, recipeFollowed: true }, ...sealed })).verdict).toBe('act');
  });
});

/** What holds, written a second time and straight from the pages. */
function shows(record: BatchRecordInput): boolean {
  const readings = (place: string) =>
    (record.temperatures ?? [])
      .filter(({ where }) => where === place)
      .map(({ temperature }) => Number.parseFloat(String(temperature)));
  const { process, dryer, jarsFilled, jarsSealed } = record;
  const [food] = record.lots.map(({ food: name }) => name);
  const oil = (record.additions ?? []).some(({ what }) => what.includes('oil'));
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
    jarsFilled !== undefined &&
    jarsSealed === jarsFilled &&
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
      filled: maybe(
        fc.constantFrom<Partial<BatchRecordInput>>(sealed, { jarsFilled: 7, jarsSealed: 6 }, { jarsFilled: 7 }),
      ),
      keptIn: maybe(fc.constantFrom('shelf', 'refrigerator', 'freezer')),
      additions: maybe(fc.constantFrom([{ what: 'olive oil', mass: '1 lb' }], [{ what: 'light syrup', mass: '1 lb' }])),
      useBy: maybe(fc.constantFrom('2026-08-16', '2026-08-20', '2026-08-21', '2026-08-28')),
      temperatures: maybe(
        fc.array(
          fc.record({
            where: fc.constantFrom('refrigerator', 'freezer', 'store'),
            temperature: fc.constantFrom('0 degF', '5 degF', '38 degF', '45 degF'),
          }),
          { maxLength: 3 },
        ),
      ),
    })
    .map(({ food, filled = {}, ...rest }) =>
      of(food, Object.fromEntries(Object.entries({ ...rest, ...filled }).filter(([, value]) => value !== undefined))),
    );
  let kept = 0;
  fc.assert(
    fc.property(records, (record) => {
      const answer = review(record);
      expect(strayPaths(answer)).toEqual([]);
      const { verdict, evidence } = answer;
      if (verdict !== 'kept' && verdict !== 'watch') return;
      kept += 1;
      expect(evidence.length).toBeGreaterThan(0);
      expect(evidence.map(({ status }) => status)).toEqual(evidence.map(() => 'held'));
      expect(shows(record)).toBe(true);
    }),
    { numRuns: 1200 },
  );
  expect(kept).toBeGreaterThan(20);
});

describe('foods by the pantry', () => {
  test.each<[string, BatchRecordInput, string, string[]]>([
    [
      'game is heated and dried as meat is',
      of('rabbit', { dryer: { time: '8 h', temperature: '140 degF', meat: heated, waterActivity: 0.8 } }),
      'kept',
      [],
    ],
    [
      'what may be poultry is heated as poultry',
      of('chicken or rabbit', { dryer: { time: '8 h', temperature: '140 degF', meat: heated, waterActivity: 0.8 } }),
      'discard',
      ['meat-heated'],
    ],
    [
      'cured meat, for which these tables hold no heating step',
      of('ham', { dryer: { time: '8 h', temperature: '140 degF', meat: heated, waterActivity: 0.8 } }),
      'cannot tell',
      ['meat-heated'],
    ],
    [
      'the same in a dryer too cold for fresh meat',
      of('ham', { dryer: { time: '8 h', temperature: '120 degF', meat: heated, waterActivity: 0.8 } }),
      'discard',
      ['meat-heated'],
    ],
    [
      'mushrooms in the jars of a process for peaches',
      of('peach', { process: peaches, ...sealed, additions: [{ what: 'mushrooms', mass: '1 lb' }] }),
      'cannot tell',
      ['same-food'],
    ],
    [
      'more fruit in the jars is not a stranger',
      of('peach', { process: peaches, ...sealed, additions: [{ what: 'lemons', mass: '1 lb' }] }),
      'kept',
      [],
    ],
    [
      'sugar, salt and acid in dried fruit need no evidence',
      of('peach', {
        name: 'peach leather',
        dryer: { time: '9 h', endMoisture: '15 %' },
        additions: ['sugar', 'salt', 'bottled lemon juice', 'water', 'pectin'].map((what) => ({ what, mass: '1 oz' })),
      }),
      'kept',
      [],
    ],
    [
      'meat in dried fruit does',
      of('peach', { dryer: { time: '9 h', endMoisture: '15 %' }, additions: [{ what: 'beef', mass: '1 lb' }] }),
      'cannot tell',
      ['dry-enough', 'meat-heated'],
    ],
    [
      'and so does a kind whose dryness these tables do not hold',
      of('peach', { dryer: { time: '9 h', endMoisture: '15 %' }, additions: [{ what: 'walnuts', mass: '1 lb' }] }),
      'cannot tell',
      ['no-evidence-known'],
    ],
    [
      'a dried food of a kind without evidence',
      of('mushrooms', { dryer: { time: '8 h', endMoisture: 0.05 } }),
      'cannot tell',
      ['no-evidence-known'],
    ],
  ])('%s', (_, record, verdict, lines) => {
    const { verdict: found, evidence } = review(record);
    expect(found).toBe(verdict);
    expect(evidence.filter(({ status }) => status !== 'held').map(({ line }) => line)).toEqual(lines);
  });

  test('mixtures and recipes with oil are foods and forms of the process tables', () => {
    for (const { food, forms = [] } of MIXED) {
      const rows = processRows.filter((row) => row.food === food);
      expect(rows.length, food).toBeGreaterThan(0);
      for (const form of forms)
        expect(
          rows.map((row) => row.form),
          food,
        ).toContain(form);
    }
    for (const food of EVIDENCE.flatMap(({ foods = [] }) => foods))
      expect(
        processRows.some((row) => row.food === food),
        food,
      ).toBe(true);
  });

  test('every food of the pantry gets a review', () => {
    for (const { name } of foodRows) {
      const { verdict } = review(of(name, { dryer: { time: '8 h', temperature: '140 degF' } }));
      expect(['kept', 'watch'], name).not.toContain(verdict);
    }
  });
});
