/** The words that the tests ask with: every food and form of the pantry, by every name. */
import { foodRows, formRows } from '../../src/foods/tables';
import { formNameRows, notRecommendedRows, processRecipeRows, processRows } from '../../src/process/tables';

/** Ids of the foods that the process tables speak of. */
export const processFoods: readonly string[] = [
  ...new Set([
    ...processRows.map(({ food }) => food),
    ...processRecipeRows.flatMap(({ foods, excludes = [] }) => [...foods, ...excludes]),
    ...notRecommendedRows.flatMap(({ foods }) => foods),
  ]),
];

/** Every name of every food. */
export const names: readonly string[] = foodRows.flatMap(({ name, names, asForm = [] }) => [
  name,
  ...names,
  ...asForm.map((each) => each.name),
]);

/** Every name of every form, and the other words that a recipe's form goes by. */
export const forms: readonly string[] = [
  ...new Set([
    ...formRows.flatMap(({ name, names, alone = [] }) => [name, ...names, ...alone]),
    ...formNameRows.flatMap(({ words = [] }) => words),
    'ketchup',
    'sauerkraut',
    'topping',
  ]),
];
