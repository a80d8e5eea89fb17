/** A process is served to the foods that its printed page names, and to no other. */
import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/index';
import { knowledgeOf, matchForm } from '../../src/process/food';
import { type TestedProcess, type TestedProcessInput, testedProcess } from '../../src/process/index';
import { foodsOf } from '../../src/process/scope';
import { foods, processRows, scopeRows } from '../../src/process/tables';

const METHODS = ['boiling-water', 'dial-gauge', 'weighted-gauge'] as const;
const PACKS = ['hot', 'raw', 'not stated'] as const;
const forms = [
  ...new Set(foods.flatMap(({ forms = {} }) => Object.entries(forms).flatMap(([form, others]) => [form, ...others]))),
];

function ask(input: TestedProcessInput) {
  try {
    return testedProcess(input);
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    return undefined;
  }
}
const at = { jar: 'half-pint', method: 'boiling-water', elevation: '0 ft' } as const;

/** The foods of the page, typed here from the page and not from the library's table. */
const SYRUP = ['blueberry', 'cherry', 'sweet cherry', 'sour cherry', 'grape', 'raspberry', 'strawberry'];
const WHOLE_HOT = ['berry', 'blueberry', 'currant', 'gooseberry', 'huckleberry'];
const WHOLE = [...WHOLE_HOT, 'blackberry', 'dewberry', 'loganberry', 'mulberry', 'raspberry'];

/** Every food in every form it goes by, and now and then in a form of others, in each pack and canner: what is served. */
function* served(): Generator<TestedProcess> {
  for (const [turn, entry] of foods.entries()) {
    const known = knowledgeOf(entry);
    for (const [index, form] of forms.entries()) {
      if (matchForm(known, form).length === 0 && (index + turn) % 29 !== 0) continue;
      for (const method of METHODS) {
        for (const pack of PACKS) {
          const answer = ask({ ...at, food: entry.name, form, pack, method });
          if (answer?.tested === true) yield answer;
        }
      }
    }
  }
}

test('every food and form called tested is named by the page of a row with these figures', () => {
  const reached = new Set<string>();
  let count = 0;
  for (const answer of served()) {
    count += 1;
    reached.add(answer.food);
    expect(answer.scope, `${answer.food}, ${answer.form}`).toContain(answer.food);
    // the rows themselves, read without the library's lookup
    const row = processRows.find(
      (row) =>
        row.form === answer.form &&
        row.method === answer.method &&
        (row.pack ?? 'not stated') === answer.pack &&
        [row.minutes].flat()[0] === answer.minutes &&
        foodsOf(row).includes(answer.food),
    );
    expect(row, `${answer.food}, ${answer.form}`).toBeDefined();
  }
  expect(count).toBeGreaterThan(500);
  expect(reached.size).toBeGreaterThan(100);
}, 120_000);

describe('berries', () => {
  test('syrup, clear or with fruit pieces, for the fruits of its page and no other', () => {
    for (const form of ['syrup', 'syrup with fruit pieces']) {
      for (const jar of ['half-pint', 'pint'] as const) {
        const bands = [
          ['0 ft', 10],
          ['1,001 ft', 15],
          ['6,000 ft', 15],
          ['6,001 ft', 20],
        ] as const;
        for (const { name } of foods) {
          for (const [elevation, minutes] of bands) {
            const answer = ask({ ...at, food: name, form, jar, elevation });
            if (!SYRUP.includes(name)) {
              if (form === 'syrup' && jar === 'pint' && name !== 'sweet potato') {
                expect(answer?.tested ?? false, name).toBe(false);
              }
            } else expect(answer).toMatchObject({ tested: true, minutes, headspace: { value: 0.5, unit: 'in' } });
          }
        }
        expect(ask({ ...at, food: 'strawberry', form, jar: 'quart' })).toMatchObject({ tested: false });
      }
    }
  });

  test('other berries are told which fruits the page names, and what to do', () => {
    for (const food of ['blackberry', 'currant', 'dewberry', 'gooseberry', 'huckleberry', 'loganberry', 'mulberry']) {
      const answer = testedProcess({ ...at, food, form: 'syrup' });
      if (answer.tested) expect.fail(food);
      expect(answer.reason).toContain('blueberry');
      expect(answer.ways).toContainEqual(expect.objectContaining({ food, form: 'whole' }));
      expect(answer.ways).toContainEqual({ keep: 'freeze' });
    }
  });

  test('a berry that is not named by name is asked for by name', () => {
    for (const form of ['syrup', 'puree', 'jam']) {
      const answer = testedProcess({ ...at, food: 'berries', form });
      if (answer.tested) expect.fail(form);
      expect(answer.ways).toContainEqual(expect.objectContaining({ food: 'strawberry' }));
      expect(answer.ways).not.toContainEqual(expect.objectContaining({ food: 'mulberry' }));
    }
  });

  test('whole, hot or raw, for the berries of the page', () => {
    for (const { name } of foods) {
      for (const [pack, names] of [
        ['hot', WHOLE_HOT],
        ['raw', WHOLE],
      ] as const) {
        const answer = ask({ ...at, food: name, form: 'whole', pack, jar: 'quart' });
        if (answer?.tested === true && answer.scope.includes('berry')) expect(names).toContain(name);
        if (names.includes(name)) expect(answer?.tested, name).toBe(true);
      }
    }
  });

  test('fruit packed in syrup is not a syrup', () => {
    for (const food of ['strawberries in syrup', 'cherries in light syrup', 'grapes in very light syrup']) {
      expect(ask({ ...at, food })?.tested ?? false).toBe(false);
    }
    expect(ask({ ...at, food: 'strawberries', form: 'in heavy syrup' })).toMatchObject({ tested: false });
    expect(ask({ ...at, food: 'sweet potatoes', form: 'in syrup', method: 'dial-gauge' })).toMatchObject({
      tested: true,
    });
  });
});

describe('other pages', () => {
  test.each([
    ['rhubarb', 'puree', true],
    ['quince', 'puree', true],
    ['cranberry', 'puree', true],
    ['mulberry', 'puree', false],
    ['elderberry', 'puree', false],
    ['white peach', 'puree', false],
    ['ripe mango', 'puree', false],
    ['mango', 'puree', false],
    ['persimmon', 'puree', false],
    ['banana', 'puree', false],
    ['strawberry', 'jam', true],
    ['mayhaw', 'jelly', true],
    ['youngberry', 'jam', true],
    ['mulberry', 'jam', false],
    ['huckleberry', 'jam', false],
    ['nectarine', 'jam', false],
    ['pineapple', 'jam', false],
    ['cranberry', 'jelly', false],
    ['quince', 'jelly', false],
    ['fig', 'jam', false],
    ['unripe mango', 'chutney', true],
    ['ripe mango', 'chutney', false],
    ['ripe mango', 'salsa', false],
    ['Roma tomatoes', 'crushed', true],
    ['plum tomatoes', 'crushed', true],
  ] as const)('%s, %s: %s', (food, form, tested) => {
    expect(ask({ ...at, food, form })?.tested ?? false).toBe(tested);
  });

  test('foods that a page names and the tables did not know', () => {
    const pressure = { jar: 'pint', method: 'dial-gauge', elevation: '0 ft' } as const;
    for (const [food, form, pack] of [
      ['green beans', 'whole', 'raw'],
      ['halibut', undefined, 'raw'],
      ['venison sausage', undefined, 'hot'],
      ['sweet peas', undefined, 'raw'],
    ] as const) {
      expect(ask({ ...pressure, food, pack, ...(form === undefined ? {} : { form }) }), food).toMatchObject({
        tested: true,
      });
    }
    expect(ask({ ...pressure, food: 'chili beans', pack: 'hot' })?.tested ?? false).toBe(false);
  });
});

test('every scope line speaks of rows, its names are foods, and none is named and left out at once', () => {
  const names = foods.map(({ name }) => name);
  for (const { food, form, pack, foods: own, madeOf = [], excludes = [] } of scopeRows) {
    const rows = processRows.filter(
      (row) => row.food === food && (form ?? row.form) === row.form && (pack ?? row.pack) === row.pack,
    );
    expect(rows.length, `${food}, ${form}`).toBeGreaterThan(0);
    for (const name of [...own, ...madeOf]) {
      expect(names).toContain(name);
      expect(excludes).not.toContain(name);
    }
    expect(own.length + madeOf.length).toBeGreaterThan(0);
  }
});
