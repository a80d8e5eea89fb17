/** A process is served to the foods that its printed page names, and to no other. */
import { describe, expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/index';
import { foodRows, nameOf } from '../../src/foods/tables';
import { knowledgeOf, matchForm } from '../../src/process/food';
import { type TestedProcess, type TestedProcessInput, testedProcess } from '../../src/process/index';
import { foodsOf, isItself } from '../../src/process/scope';
import { formNameRows, notRecommendedRows, processRecipeRows, processRows } from '../../src/process/tables';
import { forms } from './asked';

const METHODS = ['boiling-water', 'dial-gauge', 'weighted-gauge'] as const;
const PACKS = ['hot', 'raw', 'not stated'] as const;

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
const GRAPES = ['grape', 'Concord grape', 'slip-skin grape', 'European grape'];
const RASPBERRIES = ['raspberry', 'black raspberry'];
const SYRUP = ['blueberry', 'cherry', 'sweet cherry', 'sour cherry', ...GRAPES, ...RASPBERRIES, 'strawberry'];
const WHOLE_HOT = ['berry', 'blueberry', 'currant', 'black currant', 'red currant', 'gooseberry', 'huckleberry'];
const WHOLE = [...WHOLE_HOT, 'blackberry', 'dewberry', 'loganberry', 'mulberry', ...RASPBERRIES];

const pagesOf = (recipe: string) => processRecipeRows.filter(({ process }) => process === recipe);
/** The ids that a row, the pages of its recipes or the names of its product have; nothing is inherited. */
const namedBy = ({ recipe, food }: (typeof processRows)[number]): readonly string[] => [
  food,
  ...formNameRows.flatMap((row) => (row.recipe === recipe ? (row.products ?? []) : [])),
  ...pagesOf(recipe).flatMap(({ foods }) => foods),
];

/** Every food in every form it goes by, and now and then in a form of others, in each pack and canner: what is served. */
function* served(): Generator<TestedProcess> {
  for (const [turn, entry] of foodRows.entries()) {
    const known = knowledgeOf(entry.id);
    for (const [index, form] of forms.entries()) {
      if (matchForm(known, form).length === 0 && (index + turn) % 97 !== 0) continue;
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
    // the rows and pages themselves, read without the library's lookup
    const row = processRows.find(({ id }) => id === answer.row);
    if (row === undefined) expect.fail(`${answer.food}, ${answer.form}: no row ${answer.row}`);
    expect([row.recipe, row.method, row.pack ?? 'not stated']).toEqual([answer.recipe, answer.method, answer.pack]);
    expect([row.minutes].flat()[0]).toBe(answer.minutes);
    const id = foodRows.find(({ name }) => name === answer.food)?.id as string;
    expect(namedBy(row), `${answer.food}, ${answer.form}`).toContain(id);
    expect(foodsOf(row), `${answer.food}, ${answer.form}`).toContain(id);
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
        for (const { name } of foodRows) {
          for (const [elevation, minutes] of bands) {
            const answer = ask({ ...at, food: name, form, jar, elevation });
            if (!SYRUP.includes(name)) {
              if (form === 'syrup' && jar === 'pint') {
                expect(answer?.tested ?? false, name).toBe(false);
              }
            } else expect(answer).toMatchObject({ tested: true, minutes, headspace: { value: 0.5, unit: 'in' } });
          }
        }
        expect(ask({ ...at, food: 'strawberry', form, jar: 'quart' })).toMatchObject({ tested: false });
      }
    }
  });

  test('a refusal for other berries says which fruits the page names, and what to do', () => {
    for (const food of ['blackberry', 'currant', 'dewberry', 'gooseberry', 'huckleberry', 'loganberry', 'mulberry']) {
      const answer = testedProcess({ ...at, food, form: 'syrup' });
      if (answer.tested) expect.fail(food);
      expect(answer.reason.text).toMatch(/^no tested process/);
      expect(answer.instead).toContainEqual(expect.objectContaining({ food, form: 'whole' }));
      expect(answer.instead).toContainEqual(expect.objectContaining({ keep: 'freeze' }));
    }
  });

  test('a berry that is not named by name is asked for by name', () => {
    for (const form of ['syrup', 'puree', 'jam']) {
      const answer = testedProcess({ ...at, food: 'berries', form });
      if (answer.tested) expect.fail(form);
      expect(answer.instead).toContainEqual(expect.objectContaining({ food: 'strawberry' }));
      expect(answer.instead).not.toContainEqual(expect.objectContaining({ food: 'mulberry' }));
    }
  });

  test('whole, hot or raw, for the berries of the page', () => {
    for (const { name } of foodRows) {
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

test('no page names and leaves out a food at once; a process is asked for by foods of its page only', () => {
  for (const { id, foods, packFoods = {}, askedBy = [], excludes = [] } of processRecipeRows) {
    for (const food of excludes) expect(foods, id).not.toContain(food);
    for (const food of [...askedBy, ...Object.values(packFoods).flat()]) expect(foods, id).toContain(food);
  }
});

/** Typed here from the pages: a dish of several foods, or one that is cooked with others, is not any one of them. */
test('a food that is only a part of a dish does not ask for its process', () => {
  for (const [recipe, parts] of [
    ['mixed-vegetables', ['carrot', 'sweet-corn', 'green-bean', 'lima-bean', 'tomato', 'zucchini']],
    ['tomatoes-with-okra-or-zucchini', ['tomato', 'okra', 'zucchini']],
    ['succotash', ['sweet-corn', 'lima-bean']],
    ['fruit-cocktail', ['peach', 'pear', 'grape']],
    ['zucchini-pineapple', ['zucchini']],
    ['chile-con-carne', ['beef', 'kidney-bean', 'tomato']],
    ['mincemeat-pie-filling', ['apple', 'beef', 'venison']],
    ['watermelon-rind-pickles', ['watermelon']],
    ['soup-without-seafood', ['carrot', 'dry-bean', 'beef', 'salmon']],
  ] as const) {
    const rows = processRows.filter((row) => row.recipe === recipe);
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      expect(foodsOf(row)).toEqual([row.food]);
      for (const part of parts) expect(knowledgeOf(part).choices.map((choice) => choice.recipe)).not.toContain(recipe);
    }
  }
});

test('what is made of a food is not the food as such', () => {
  const row = (recipe: string) => processRows.find((each) => each.recipe === recipe) as (typeof processRows)[number];
  for (const [recipe, food] of [
    ['berry-syrup', 'strawberry'],
    ['fruit-puree', 'apricot'],
    ['jam-or-jelly', 'strawberry'],
    ['tomato-ketchup', 'tomato'],
    ['meat-stock', 'beef'],
  ] as const)
    expect([foodsOf(row(recipe)).includes(food), isItself(row(recipe), food)], recipe).toEqual([true, false]);
  for (const [recipe, food] of [
    ['berry-whole', 'blueberry'],
    ['jam-or-jelly', 'jam'],
    ['tomato-crushed', 'green-tomato'],
    ['fruit-puree', 'fruit'],
  ] as const)
    expect(isItself(row(recipe), food), recipe).toBe(true);
  expect(foodsOf(row('berry-syrup'))).not.toContain('berry');
});

test('a row that a page does not name has no way in: it is for the food of its row, and for no kind of it', () => {
  const invented = { recipe: 'berry-jam', food: 'berry', form: 'jam', pack: 'hot' } as const;
  expect(foodsOf(invented)).toEqual(['berry']);
  // a kind of a food with rows has them only where a page names it
  for (const { id, wider = [] } of foodRows) {
    for (const { food } of wider) {
      const borrowed = processRows.filter((row) => row.food === food && !namedBy(row).includes(id));
      const own = new Set(knowledgeOf(id).choices.map(({ recipe }) => recipe));
      for (const row of borrowed) {
        const named = processRows.some((other) => other.recipe === row.recipe && namedBy(other).includes(id));
        if (!named) expect(own.has(row.recipe), `${id}: ${row.recipe}`).toBe(false);
      }
    }
  }
});

test('no food that a page or later guidance leaves out is served from it, and none that is not canned at all', () => {
  for (const row of processRows) {
    const pages = pagesOf(row.recipe);
    const left = new Set(pages.flatMap(({ excludes = [] }) => excludes));
    // another recipe of the process may name it
    for (const id of pages.flatMap(({ foods }) => foods)) left.delete(id);
    for (const id of left) expect(foodsOf(row), `${row.id}: ${id}`).not.toContain(id);
  }
  for (const { foods, covers, pack, jar, id: barred } of notRecommendedRows) {
    if (covers !== 'every form' || pack !== undefined || jar !== undefined) continue;
    for (const id of foods) expect(knowledgeOf(id).choices, `${barred}: ${nameOf(id)}`).toEqual([]);
  }
});

/** Kinds of a food, typed here from the pages: those that a page names, and those that it does not. */
describe('kinds of a food', () => {
  const pressure = { jar: 'half-pint', method: 'dial-gauge', elevation: '0 ft' } as const;
  test.each([
    [
      'peppers',
      'peeled',
      pressure,
      ['bell pepper', 'jalapeno', 'serrano', 'pimiento', 'banana pepper'],
      ['black pepper'],
    ],
    [
      'greens',
      'leaves',
      pressure,
      ['spinach', 'kale', 'chard', 'collard greens', 'beet greens'],
      ['dandelion greens', 'lettuce'],
    ],
    [
      'dried beans',
      'rehydrated',
      pressure,
      ['kidney bean', 'navy bean', 'chickpea', 'dry pea'],
      ['lentil', 'soybean', 'green bean'],
    ],
    [
      'winter squash',
      'cubes',
      pressure,
      ['pumpkin', 'butternut squash', 'Hubbard squash'],
      ['acorn squash', 'spaghetti squash', 'zucchini'],
    ],
    ['fish', 'chunks', pressure, ['salmon', 'trout', 'mackerel', 'bluefish', 'halibut'], ['cod', 'anchovy', 'shrimp']],
    ['meat', 'cubes', pressure, ['beef', 'venison', 'bear'], ['ham', 'bacon', 'bison', 'goat', 'turkey', 'wild boar']],
    ['corn', 'kernels', pressure, ['sweet corn'], ['field corn', 'popcorn', 'baby corn']],
    ['grapes', 'whole', at, ['grape', 'European grape'], ['muscadine', 'Concord grape', 'slip-skin grape', 'raisin']],
    ['plums', 'halves', at, ['plum', 'Italian plum'], ['prune', 'damson', 'greengage']],
    ['citrus', 'sections', at, ['grapefruit', 'orange'], ['lemon', 'lime', 'sour orange']],
    [
      'berries',
      'whole',
      at,
      ['black currant', 'red currant', 'black raspberry'],
      ['bilberry', 'elderberry', 'strawberry'],
    ],
    ['peaches', 'halves', at, ['peach'], ['white peach', 'plumcot']],
    ['apples', 'slices', at, ['apple'], ['tart apple', 'crabapple', 'cashew apple']],
    ['tomatoes', 'crushed', at, ['tomato', 'green tomato'], ['yellow tomato', 'tomatillo']],
    ['jelly of pepper', 'jelly', at, ['golden pepper jelly'], ['bell pepper', 'jalapeno', 'pepper']],
  ] as const)('%s: %s', (_, form, place, named, others) => {
    const tested = (food: string) =>
      PACKS.some((pack) => ask({ ...place, food, form, pack } as TestedProcessInput)?.tested === true);
    for (const food of named) expect(tested(food), food).toBe(true);
    for (const food of others) expect(tested(food), food).toBe(false);
  });
});

test('a food is not served the process of a product that is made of it, unless the product is named', () => {
  const pressure = { jar: 'pint', method: 'dial-gauge', elevation: '0 ft' } as const;
  const tested = (question: object) =>
    PACKS.some((pack) => ask({ ...question, pack } as TestedProcessInput)?.tested === true);
  for (const [food, form] of [
    ['beef', 'beef'],
    ['turkey', 'chicken'],
    ['chicken', 'poultry'],
  ]) {
    expect(tested({ ...pressure, food, form }), `${food}, ${form}`).toBe(false);
  }
  expect(tested({ ...pressure, food: 'turkey', form: 'stock' })).toBe(true);
  for (const [food, form] of [
    ['zucchini', 'cubes'],
    ['zucchini', 'shredded'],
    ['peppers', 'rings'],
    ['jalapenos', 'rings'],
    ['bell peppers', 'jelly'],
  ]) {
    expect(tested({ ...at, food, form }), `${food}, ${form}`).toBe(false);
  }
  expect(tested({ ...at, food: 'zucchini-pineapple' })).toBe(true);
});

test('what a food is packed in is not the food', () => {
  const pints = { jar: 'pint', elevation: '0 ft' } as const;
  const minutes = (question: Partial<TestedProcessInput> & { food: string }) => {
    const answer = ask({ ...pints, pack: 'hot', method: 'boiling-water', ...question });
    return answer?.tested === true ? answer.minutes : undefined;
  };
  expect(minutes({ food: 'tomato juice' })).toBe(35);
  expect(minutes({ food: 'tomatoes in juice', pack: 'raw' })).toBe(85);
  for (const food of ['grapes in juice', 'tomatoes in tomato sauce', 'cherries with syrup', 'apples in juice']) {
    expect(minutes({ food }), food).toBeUndefined();
  }
  for (const form of ['cream', 'with cream', 'with milk']) {
    expect(minutes({ food: 'corn', form, method: 'dial-gauge' }), form).toBeUndefined();
  }
  expect(minutes({ food: 'corn', form: 'cream style', method: 'dial-gauge' })).toBe(85);
});
