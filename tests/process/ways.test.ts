/** A refusal offers what can be done: following it leads to a tested answer or to a keeping that is not canning. */
import { expect, test } from 'vitest';
import { StillroomError } from '../../src/errors/index';
import { notRecommended, type ProcessRefusal, type TestedProcessInput, testedProcess } from '../../src/process/index';
import { foods, notRecommendedRows } from '../../src/process/tables';

const forms = [
  ...new Set([
    ...foods.flatMap(({ forms = {} }) => Object.entries(forms).flatMap(([form, others]) => [form, ...others])),
    ...notRecommendedRows.flatMap((row) => row.forms),
    'filling',
    'pickled',
    'leather',
    'topping',
  ]),
];
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

const followed = new Map<string, boolean>();
function check(answer: ProcessRefusal, elevation: TestedProcessInput['elevation'], what: string) {
  const said = `${answer.reason} ${answer.instead}`;
  expect(said, what).not.toMatch(/\b(?:is|are) published\b|from-memory|read the printed/);
  if (/no tested|have no|has no/.test(answer.reason)) expect(answer.reason, what).toMatch(/in these tables/);
  expect(answer.ways.length, what).toBeGreaterThan(0);
  expect(answer.instead.length, what).toBeGreaterThan(4);
  // no form is refused and offered in one breath, and no pickling is spoken of without a pickle to follow
  if (/\bpickle (?:it|them)\b|\bpickles\b|\bor pickle\b/.test(answer.instead)) {
    expect(
      answer.ways.some((way) => 'form' in way && /pickle|relish/.test(`${way.food} ${way.form}`)),
      what,
    ).toBe(true);
  }
  if (/canner|jars|\bcan\b|hot pack/.test(answer.instead)) {
    expect(
      answer.ways.some((way) => 'form' in way),
      `${what}: ${answer.instead}`,
    ).toBe(true);
  }
  for (const way of answer.ways) {
    if ('keep' in way) continue;
    const key = JSON.stringify([way, elevation]);
    const tested = followed.get(key) ?? ask({ ...way, elevation })?.tested === true;
    followed.set(key, tested);
    expect(tested, `${what} -> ${key}`).toBe(true);
  }
}

/**
 * Every food with its own forms in every canner and jar, and with the forms of all others turn by turn, as is the pack.
 * `WALK=all` asks every combination, which takes minutes.
 */
const ALL = process.env.WALK === 'all';
test.each([
  ['500 ft', 1, 9],
  ['9,000 ft', 3, 41],
  ['13,000 ft', 3, 41],
] as const)(
  'every refusal at %s, of every food, form, canner and jar',
  (elevation, ownStride, otherStride) => {
    let asked = 0;
    let refused = 0;
    for (const [turn, { name: food, forms: own = {} }] of foods.entries()) {
      for (const form of [undefined, ...forms]) {
        const stride = ALL ? 1 : form === undefined || form in own ? ownStride : otherStride * METHODS.length;
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
const refusalOf = (input: Partial<TestedProcessInput> & { food: string }): ProcessRefusal => {
  const answer = testedProcess({ ...at, ...input });
  if (answer.tested) expect.fail(`${input.food}: ${answer.minutes} min`);
  return answer;
};

test('cabbage leads to sauerkraut that can be canned', () => {
  const answer = refusalOf({ food: 'cabbage' });
  expect(answer.ways[0]).toEqual({
    food: 'cabbage',
    form: 'fermented',
    pack: 'hot',
    jar: 'pint',
    method: 'boiling-water',
  });
  expect(answer.ways).toContainEqual({ keep: 'ferment' });
  for (const food of ['pickled cabbage', 'pickled eggplant']) {
    const { reason, instead } = refusalOf({ food });
    expect(`${reason} ${instead}`).not.toContain('pickle');
  }
});

test('a recalled row is no way out', () => {
  for (const answer of [refusalOf({ food: 'peach', form: 'butter' }), refusalOf({ food: 'pickled melon' })]) {
    for (const way of answer.ways) if ('form' in way) expect(testedProcess({ ...at, ...way }).tested).toBe(true);
  }
});

test('a filling is one form by either name', () => {
  const answer = refusalOf({ food: 'sour cherry', form: 'butter' });
  expect(answer.ways).toContainEqual(expect.objectContaining({ food: 'sour cherry', form: 'pie filling' }));
  const filling = testedProcess({ ...at, food: 'sour cherry', form: 'filling' });
  expect(filling).toMatchObject({ tested: true, form: 'pie filling' });
});

test('a place above the dial gauge is sent to a weighted gauge only where that holds', () => {
  const carrots = { food: 'carrots', pack: 'raw', method: 'dial-gauge' } as const;
  expect(refusalOf({ ...carrots, elevation: '9,000 ft' }).instead).toContain('weighted-gauge');
  const high = refusalOf({ ...carrots, elevation: '13,000 ft' });
  expect(high.instead).not.toMatch(/weighted-gauge|dial-gauge/);
});

test('the list of foods that are not canned speaks of these tables', () => {
  for (const { reason, instead } of notRecommended().notCanned) {
    expect(`${reason} ${instead}`).not.toMatch(/\b(?:is|are) published\b/);
    if (/no tested|no process/.test(reason)) expect(reason).toMatch(/in these tables/);
  }
});
