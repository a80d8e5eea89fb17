/** Every printed recipe and every operation, and how they are found by name. */
import driedTable from '../../../data/recipes/dried.json';
import fermentTable from '../../../data/recipes/ferment.json';
import frozenTable from '../../../data/recipes/frozen.json';
import fruitTable from '../../../data/recipes/fruit.json';
import jamTable from '../../../data/recipes/jam.json';
import meatTable from '../../../data/recipes/meat.json';
import operationTable from '../../../data/recipes/operations.json';
import pickleTable from '../../../data/recipes/pickle.json';
import tomatoTable from '../../../data/recipes/tomato.json';
import trimmingsTable from '../../../data/recipes/trimmings.json';
import vegetableTable from '../../../data/recipes/vegetable.json';
import { nameKey, nearestNames } from '../../common/names';
import { fail } from '../../errors/StillroomError';
import { foodOf } from '../../foods/tables';
import type { Basis } from '../../sources/basis';
import { asTable, basisOf, practiceBasis } from '../../sources/table';
import type { OperationRow, RecipeRow } from './tables';

/** Every recipe, in the order of the files. */
export const RECIPES: readonly RecipeRow[] = [
  fruitTable,
  tomatoTable,
  vegetableTable,
  meatTable,
  pickleTable,
  fermentTable,
  jamTable,
  driedTable,
  frozenTable,
  trimmingsTable,
].flatMap((table) => asTable<RecipeRow>(table).rows);

export const OPERATIONS: ReadonlyMap<string, OperationRow> = new Map(
  asTable<OperationRow>(operationTable).rows.map((row) => [row.id, row]),
);

const byId = new Map(RECIPES.map((row) => [row.id, row]));
/** The recipe of this id, where there is one. */
export const recipeOfId = (id: string): RecipeRow | undefined => byId.get(id);

/**
 * Whether a recipe is for the food of this id: its page names it; or it names every food of the kind, and the recipe
 * does not end in a heat process, which holds only for foods that are named.
 */
export function isFor({ foods, excludes, keeps }: RecipeRow, food: string): boolean {
  if (foods.includes(food)) return true;
  const everyOfKind = foods.includes(foodOf(food).kind) && !keeps.some((keep) => 'process' in keep);
  return everyOfKind && excludes?.includes(food) !== true;
}

/** Where a recipe stands printed, as a line of an answer's basis. */
export const pageOf = (row: RecipeRow, of: string, note?: string): Basis =>
  'source' in row ? basisOf(row, of, note) : practiceBasis(of, note);

let names: ReadonlyMap<string, readonly RecipeRow[]> | undefined;
function index(): ReadonlyMap<string, readonly RecipeRow[]> {
  if (names === undefined) {
    const found = new Map<string, RecipeRow[]>();
    for (const row of RECIPES) {
      for (const key of new Set([row.name, ...(row.names ?? []), row.id].map(nameKey)))
        found.set(key, [...(found.get(key) ?? []), row]);
    }
    names = found;
  }
  return names;
}

/** Reads a recipe by its id or a name; `path` is where it stands in the argument. */
export function readRecipe(given: unknown, path = ''): RecipeRow {
  const what = 'the name or id of a recipe';
  if (given === undefined) fail('MISSING', path, given, what);
  if (typeof given !== 'string') fail('WRONG_TYPE', path, given, what);
  const exact = byId.get(given);
  if (exact !== undefined) return exact;
  const found = index().get(nameKey(given)) ?? [];
  const [first] = found;
  if (first !== undefined && found.length === 1) return first;
  // two recipes of one name: the id tells them apart
  if (first !== undefined) {
    const options = found.map(({ id }) => id);
    fail('UNKNOWN_NAME', path, given, `one recipe; that name could be ${options.join(' or ')}`, { options });
  }
  const known = RECIPES.flatMap(({ id, name }) => [id, name]);
  return fail('UNKNOWN_NAME', path, given, what, { nearest: nearestNames(given, known) });
}
