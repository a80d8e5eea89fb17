import { expect, test } from 'vitest';
import { pasteurizePickles } from '../../src/acid/index';
import { RECIPES } from '../../src/recipes/rows/rows';
import { expectError } from '../helpers/errors';

const record = { coldest: '181 degF', hottest: '184 degF', held: '30 min' } as const;
const verdict = (input: Parameters<typeof pasteurizePickles>[0]) => {
  const answer = pasteurizePickles({ recipe: 'quick sweet pickles', ...input });
  return 'verdict' in answer ? answer.verdict : undefined;
};

// USDA Guide 6, p. 6-5: 30 minutes at 180 to 185 degF, never below 180
test('a record meets the treatment or not', () => {
  expect(verdict({ coldest: '180 degF', held: '30 min' })).toBe('met');
  expect(verdict({ coldest: '179.9 degF', held: '60 min' })).toBe('not met');
  expect(verdict({ coldest: '181 degF', held: '29 min' })).toBe('not met');
  expect(verdict({ coldest: '181 degF', hottest: '190 degF', held: '30 min' })).toBe('met, but hot enough to soften');
  expect(verdict({ coldest: '83 degC', hottest: '85 degC', held: '0.5 h' })).toBe('met');
  expect(verdict({ coldest: '181 degF' })).toBeUndefined();
  expect(verdict({})).toBeUndefined();
});

/** The pages of Guide 6 that allow it, and no other. */
const ALLOWED = [
  'fermented dill pickles',
  'quick fresh-pack dill pickles',
  'bread-and-butter pickles',
  'sweet gherkin pickles',
  '14-day sweet pickles',
  'quick sweet pickles',
  'pickled bread-and-butter zucchini',
];

test('exactly the recipes whose page allows it are judged; every other is refused', () => {
  for (const { name: recipe } of RECIPES.filter(({ keeps }) => keeps.some((keep) => 'process' in keep))) {
    const answer = pasteurizePickles({ recipe, ...record });
    expect(answer, recipe).toMatchObject(ALLOWED.includes(recipe) ? { verdict: 'met' } : { tested: false });
  }
  const answer = pasteurizePickles();
  expect('recipeNames' in answer && [...answer.recipeNames].sort()).toEqual([...ALLOWED].sort());
  expect(answer).toMatchObject({ time: { value: 30, unit: 'min' } });
});

test.each([
  'green beans',
  'beef stew',
  'pickled eggs',
  'pickles',
  'pickled mushrooms',
  'tomato ketchup',
  'sauerkraut',
  'low-salt gherkins',
  'no salt pickles',
  'constructor',
  '__proto__',
])('%s is refused, whatever the record', (recipe) => {
  const answer = pasteurizePickles({ recipe, ...record });
  expect(answer).toMatchObject({
    tested: false,
    reason: { code: 'not-for-this-recipe', text: expect.stringContaining(recipe) },
  });
  expect(answer).not.toHaveProperty('verdict');
  if ('reason' in answer) expect(JSON.stringify([answer.reason, answer.instead])).not.toMatch(/publish/);
});

test('names are found as people say them', () => {
  expect(pasteurizePickles({ recipe: 'bread and butter pickles' })).toMatchObject({
    recipeNames: ['bread-and-butter pickles'],
  });
});

test('bad input', () => {
  expectError(() => pasteurizePickles(record), 'MISSING', 'recipe');
  expectError(() => pasteurizePickles({ held: '30 min' }), 'MISSING', 'recipe');
  expectError(
    () => pasteurizePickles({ recipe: 'quick sweet pickles', coldest: '184 degF', hottest: '180 degF' }),
    'CONTRADICTION',
    'hottest',
  );
});
