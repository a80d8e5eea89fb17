/** The printed recipes that end in a process: what must not be changed in each, and how they are found by name. */
import { nameKey, nearestNames } from '../common/names';
import { fail } from '../errors/StillroomError';
import { parseQuantity } from '../quantity/parseQuantity';
import type { ProcessRecipe, RecipeAcid } from '../sources/processRecipe';
import { recipesOfProcess } from './scope';
import { type ProcessRecipeRow, processRecipeRows } from './tables';

/** The recipes that end in a process and name a food. */
export const recipesEndingIn = (process: string, food: string): readonly ProcessRecipeRow[] => {
  const all = recipesOfProcess(process);
  const named = all.filter(({ foods }) => foods.includes(food));
  // a product that the tables ask for by its own name (ketchup) is made by the recipes of its page
  return named.length > 0 ? named : all.filter(({ excludes }) => excludes?.includes(food) !== true);
};

const acidOfRecipe = ({ what, amount, perJar, choose }: NonNullable<ProcessRecipeRow['acid']>[number]): RecipeAcid => ({
  what,
  ...(amount === undefined ? {} : { volume: parseQuantity(amount, 'volume') }),
  ...(perJar === undefined
    ? {}
    : {
        inEachJar: Object.entries(perJar).map(([jar, printed]) => ({ jar, volume: parseQuantity(printed, 'volume') })),
      }),
  ...(choose === undefined ? {} : { oneOf: choose }),
});

/** A recipe as an answer holds it. */
export const processRecipeOf = ({ id, name, acid = [], mustKeep = [], scale }: ProcessRecipeRow): ProcessRecipe => ({
  recipe: id,
  name,
  acids: acid.map(acidOfRecipe),
  mustKeep,
  scale,
});

/** Reads a recipe that ends in a heat process, by its id or a name, or by the name of the process. */
export function readProcessRecipe(given: string, path: string): readonly ProcessRecipeRow[] {
  const key = nameKey(given);
  const found = processRecipeRows.filter(
    ({ id, name, names = [] }) => id === given || [name, ...names].some((each) => nameKey(each) === key),
  );
  if (found.length > 0) return found;
  const ofProcess = recipesOfProcess(given);
  if (ofProcess.length > 0) return ofProcess;
  const known = processRecipeRows.flatMap(({ id, name }) => [id, name]);
  return fail('UNKNOWN_NAME', path, given, 'the name or id of a recipe with a heat process', {
    nearest: nearestNames(given, known),
  });
}
