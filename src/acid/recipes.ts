/** Pickle recipes by name. */
import { findNamed, type Named, nearestNames } from '../common/names';
import { fail } from '../errors/StillroomError';
import { number, optional } from '../quantity/fields';
import { LEAST_ACETIC, RECIPES, type RecipeRow } from './tables';

interface NamedRecipe extends Named {
  readonly row: RecipeRow;
}
const NAMED: readonly NamedRecipe[] = RECIPES.map((row) => ({ name: row.recipe, synonyms: row.names, row }));

const NAMES: readonly string[] = RECIPES.map(({ recipe }) => recipe);

/** The recipe that goes by this name, or nothing where no one recipe does. */
export function findRecipe(recipe: string): RecipeRow | undefined {
  const found = findNamed(recipe, NAMED);
  return found.length === 1 ? found[0]?.row : undefined;
}

/**
 * The row of the recipe that goes by this name.
 *
 * @throws StillroomError UNKNOWN_NAME, with the nearest names, and all of them as options
 */
export function recipeNamed(recipe: string): RecipeRow {
  const found = findRecipe(recipe);
  if (found !== undefined) return found;
  const nearest = nearestNames(recipe, NAMES);
  return fail('UNKNOWN_NAME', 'recipe', recipe, 'a known pickle recipe', { options: NAMES, nearest });
}

/** Acetic acid of the printed vinegar and water together, a share. */
export const printedAcetic = (row: RecipeRow): number =>
  (row.vinegarCups * LEAST_ACETIC) / (row.vinegarCups + row.waterCups);

/** The field of how many times a recipe is made. */
export const timesField = () => optional(number('how many times the recipe, above 0', { above: 0, max: 1000 }));

/** How many times a recipe may be made is in its row: whole batches, and not more than a kitchen does in a day. */
export function checkTimes(row: RecipeRow, asked: number, given: unknown): void {
  const { most, whole } = row.batches;
  if (asked > most || (whole && !Number.isInteger(asked))) {
    const what = whole ? `a whole number of batches from 1 to ${most}` : `above 0 and at most ${most}`;
    fail('OUT_OF_RANGE', 'times', given, `${what}: make more as another batch, never as a larger one`);
  }
}
