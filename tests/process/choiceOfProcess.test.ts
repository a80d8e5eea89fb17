/** The function that finds the process of a recipe for a food serves no food that no page names, whoever calls it. */
import { describe, expect, test } from 'vitest';
import { foodRows } from '../../src/foods/tables';
import { choiceOfProcess, knowledgeOf } from '../../src/process/food';
import { foodsOf } from '../../src/process/scope';
import { processRecipeRows, processRows } from '../../src/process/tables';
import { cannedIn } from '../../src/recipes/ways/canned';

/** The foods that the rows of each process, or the recipes that end in it, name. */
const named = new Map<string, Set<string>>();
const add = (process: string, foods: readonly string[]): void => {
  const all = named.get(process) ?? new Set();
  for (const food of foods) all.add(food);
  named.set(process, all);
};
for (const row of processRows) add(row.recipe, foodsOf(row));
for (const { process, foods } of processRecipeRows) add(process, foods);

describe('the process of a recipe', () => {
  test.each([
    ['apple', 'spaghetti-sauce-without-meat'],
    ['banana', 'fruit-puree'],
    ['elderberry', 'berry-syrup'],
    ['white-peach', 'peach-halves-or-slices'],
    ['pumpkin', 'apple-butter'],
    ['venison', 'chicken-or-rabbit-without-bones'],
  ])('is none for %s and %s', (food, process) => {
    expect(named.has(process)).toBe(true);
    expect(choiceOfProcess(knowledgeOf(food), process)).toBeUndefined();
    const packs = ['hot', 'raw', 'not stated'] as const;
    expect(cannedIn(food, process, packs, { elevation: { value: 500, unit: 'ft' } })).toMatchObject({
      processes: [],
      served: [],
      otherCanners: [],
      reason: { code: 'no process' },
    });
  });

  test('of spaghetti sauce is that of tomatoes, which its recipe names', () => {
    expect(choiceOfProcess(knowledgeOf('tomato'), 'spaghetti-sauce-without-meat')?.choice.recipe).toBe(
      'spaghetti-sauce-without-meat',
    );
  });

  test('is there for the foods that a page names, and for no other food of the pantry', () => {
    const wrong = [...named].flatMap(([process, foods]) =>
      foodRows
        .filter(({ id }) => (choiceOfProcess(knowledgeOf(id), process) !== undefined) !== foods.has(id))
        .map(({ id }) => `${process}: ${id}`),
    );
    expect(wrong).toEqual([]);
  });
});
