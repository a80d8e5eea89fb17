/** Pickle recipes by name. */
import { findNamed, lookUp, type Named } from '../common/names';
import { RECIPES, type RecipeRow } from './tables';

interface NamedRecipe extends Named {
  readonly row: RecipeRow;
}
const NAMED: readonly NamedRecipe[] = RECIPES.map((row) => ({ name: row.recipe, synonyms: row.names, row }));

/**
 * The row of the recipe that goes by this name.
 *
 * @throws StillroomError UNKNOWN_NAME, with the nearest names
 */
export const recipeRow = (recipe: string): RecipeRow => lookUp(recipe, NAMED, 'recipe', 'pickle recipe').row;

/** The same, or nothing where no one recipe goes by the name. */
export function findRecipe(recipe: string): RecipeRow | undefined {
  const found = findNamed(recipe, NAMED);
  return found.length === 1 ? found[0]?.row : undefined;
}
