/** A refusal offers what can be done: following it leads to a tested answer or to a keeping that is not canning. */
import { expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/index';
import { foodRows, formName } from '../../src/foods/tables';
import { knowledgeOf } from '../../src/process/food';
import { type TestedProcessInput, testedProcess } from '../../src/process/index';
import type { Instead, NotTested } from '../../src/sources/no';
import { forms, processFoods } from './asked';

const METHODS = ['boiling-water', 'dial-gauge', 'weighted-gauge', 'atmospheric-steam'] as const;
const JARS = ['half-pint', 'pint', 'quart', 'half-gallon', '3 quarts'] as const;
const PACKS = ['hot', 'raw', 'not stated', undefined] as const;

function ask(input: TestedProcessInput) {
  try {
    return testedProcess(input);
  } catch (error) {
    if (!(error instanceof StillroomError)) throw error;
    return undefined;
  }
}

const followed = new Map<string, number | undefined>();
/** The question of something offered, where it is one. */
const questionOf = ({ text, minutes, keep, recipe, acidToAdd: acid, recipes, ...question }: Instead) =>
  question as Omit<TestedProcessInput, 'elevation'>;
function check(answer: NotTested, elevation: TestedProcessInput['elevation'], what: string) {
  const said = [answer.reason.text, ...answer.instead.map(({ text }) => text)].join(' ');
  const advice = answer.instead
    .filter((way) => way.form === undefined)
    .map(({ text }) => text)
    .join(' ');
  expect(said, what).not.toMatch(/\b(?:is|are) published\b|from-memory|read the printed/);
  if (/no tested|have no|has no/.test(answer.reason.text)) expect(answer.reason.text, what).toMatch(/in these tables/);
  expect(answer.instead.length, what).toBeGreaterThan(0);
  for (const { text } of answer.instead) expect(text.length, what).toBeGreaterThan(4);
  expect(
    answer.instead.some(({ keep }) => keep !== undefined),
    what,
  ).toBe(true);
  // no form is refused and offered in one breath, and no pickling is spoken of without a pickle to follow
  if (/\bpickle (?:it|them)\b|\bpickles\b|\bor pickle\b/.test(advice)) {
    expect(
      answer.instead.some((way) => way.form !== undefined && /pickle|relish/.test(`${way.food} ${way.form}`)),
      what,
    ).toBe(true);
  }
  if (/canner|jars|\bcan\b|hot pack/.test(advice)) {
    expect(
      answer.instead.some((way) => way.form !== undefined),
      `${what}: ${advice}`,
    ).toBe(true);
  }
  for (const way of answer.instead) {
    if (way.form === undefined) continue;
    const key = JSON.stringify([way, elevation]);
    if (!followed.has(key)) {
      const there = ask({ ...questionOf(way), elevation });
      followed.set(key, there?.tested ? there.minutes : undefined);
    }
    // what is offered is served, in the minutes that were said
    expect(followed.get(key), `${what} -> ${key}`).toBe(way.minutes);
    expect(way.minutes, what).toBeGreaterThan(0);
  }
}

/**
 * Every food with its own forms in every canner and jar, and with the forms of all others turn by turn, as is the pack.
 * `WALK=all` asks every combination, which takes minutes.
 */
const ALL = process.env.WALK === 'all';
test.each([
  ['500 ft', 1, 41],
  ['9,000 ft', 3, 41],
  ['13,000 ft', 3, 41],
] as const)(
  'every refusal at %s, of every food, form, canner and jar',
  (elevation, ownStride, otherStride) => {
    let asked = 0;
    let refused = 0;
    const spokenOf = new Set(processFoods);
    for (const [turn, { id, name: food }] of foodRows.entries()) {
      const own = new Set(knowledgeOf(id).choices.map((choice) => formName(choice.form)));
      // a food that no table speaks of is asked now and then
      if (!ALL && !spokenOf.has(id) && turn % 13 !== 0) continue;
      for (const form of [undefined, ...forms]) {
        const stride = ALL ? 1 : form === undefined || own.has(form) ? ownStride : otherStride * METHODS.length;
        for (const method of METHODS) {
          for (const jar of JARS) {
            asked += 1;
            if ((asked + turn) % stride !== 0) continue;
            for (const [index, pack] of PACKS.entries()) {
              if (!ALL && index !== asked % PACKS.length) continue;
              const answer = ask({ food, form, pack, jar, method, elevation });
              if (answer?.tested !== false) continue;
              refused += 1;
              check(answer, elevation, [food, form, pack, jar, method].join(', '));
            }
          }
        }
      }
    }
    expect(refused).toBeGreaterThan(1000);
  },
  1_800_000,
);

const at = { jar: 'pint', method: 'boiling-water', elevation: '500 ft' } as const;
const refusalOf = (input: Partial<TestedProcessInput> & { food: string }): NotTested => {
  const answer = testedProcess({ ...at, ...input });
  if (answer.tested) expect.fail(`${input.food}: ${answer.minutes} min`);
  return answer;
};

test('cabbage leads to sauerkraut that can be canned', () => {
  const answer = refusalOf({ food: 'cabbage' });
  expect(answer.instead[1]).toEqual({
    text: 'cabbage (fermented), hot pack, in pint jars, boiling-water canner: 10 min',
    food: 'cabbage',
    form: 'fermented',
    pack: 'hot',
    jar: 'pint',
    method: 'boiling-water',
    minutes: 10,
    acidToAdd: '3 tbsp of canning salt to each 5 lb of cabbage, and a fermentation that has run to its end',
    recipes: [
      {
        recipe: 'sauerkraut',
        name: 'sauerkraut',
        acids: [],
        mustKeep: ['3 tbsp of salt for each 5 lb of cabbage', 'the temperature and the weeks'],
        scale: 'by the container',
      },
    ],
  });
  expect(answer.instead).toContainEqual({ text: 'ferment it', keep: 'ferment' });
  for (const food of ['pickled cabbage', 'pickled eggplant']) {
    const { reason, instead } = refusalOf({ food });
    const keeps = instead.filter(({ form }) => form === undefined).map(({ text }) => text);
    expect([reason.text, ...keeps].join(' ')).not.toContain('pickle');
  }
});

test('a recalled row is no way out', () => {
  for (const answer of [refusalOf({ food: 'peach', form: 'butter' }), refusalOf({ food: 'pickled melon' })]) {
    for (const way of answer.instead)
      if (way.form !== undefined) expect(testedProcess({ ...at, ...questionOf(way) }).tested).toBe(true);
  }
});

test('a filling is one form by either name', () => {
  const answer = refusalOf({ food: 'sour cherry', form: 'butter' });
  expect(answer.instead).toContainEqual(expect.objectContaining({ food: 'sour cherry', form: 'pie filling' }));
  const filling = testedProcess({ ...at, food: 'sour cherry', form: 'filling' });
  expect(filling).toMatchObject({ tested: true, form: 'pie filling' });
});

test('a place above the dial gauge is sent to a weighted gauge only where that holds', () => {
  const carrots = { food: 'carrots', pack: 'raw', method: 'dial-gauge' } as const;
  expect(refusalOf({ ...carrots, elevation: '9,000 ft' }).instead[0]?.text).toContain('weighted-gauge');
  const high = refusalOf({ ...carrots, elevation: '13,000 ft' });
  for (const { text } of high.instead) expect(text).not.toMatch(/weighted-gauge|dial-gauge/);
});

test('a wide name is refused, and the foods it could be are offered', () => {
  for (const [food, kind] of [
    ['squash', 'winter squash'],
    ['beans', 'green bean'],
    ['dill pickles', 'quick fresh-pack dill pickles'],
    ['pickles', 'bread-and-butter pickles'],
    ['pepper jelly', 'golden pepper jelly'],
    ['poultry', 'chicken'],
  ] as const) {
    const answer = refusalOf({ food });
    expect(answer.reason.code, food).toBe('name one food');
    expect(answer.instead, food).toContainEqual(expect.objectContaining({ food: kind, minutes: expect.any(Number) }));
  }
});

test('a food of the pantry without rows is refused, and a name that is no food is an error', () => {
  expect(refusalOf({ food: 'kiwifruit' })).toMatchObject({
    reason: { code: 'no process', text: 'no tested process for kiwifruit is in these tables' },
    instead: [{ keep: 'freeze' }, { keep: 'refrigerate' }],
  });
  expect(refusalOf({ food: 'maize' }).reason.code).toBe('no process');
  expect(ask({ ...at, food: 'moon cheese rocks' })).toBeUndefined();
  expect(ask({ ...at, food: 'peach', form: 'moonbeams' })).toBeUndefined();
});
