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
import { figuresFor } from '../../foods/figuresFor';
import { foodOf, nameOf } from '../../foods/tables';
import type { Basis } from '../../sources/basis';
import { asTable, basisOf, practiceBasis } from '../../sources/table';
import type { Makes, OperationRow, RecipeRow } from './tables';

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

/** The crafts in which the page of a wider food may serve, by what the recipe makes: never for what keeps in a jar. */
const LENDS: Readonly<Partial<Record<Makes, string>>> = { frozen: 'freezing', dried: 'drying' };

/** The food whose pages serve for a food in what they make: the first that has any, itself or a wider one. */
function onPages(makes: Makes, food: string): string | undefined {
  const craft = LENDS[makes];
  if (craft === undefined) return undefined;
  return figuresFor(food, craft).find((id) => RECIPES.some((row) => row.makes === makes && row.foods.includes(id)));
}

/**
 * The food of a recipe's page that a food goes by: itself; its kind, where the page names every food of it; or a wider
 * food that the pantry names, for freezing and drying. A recipe that ends in a heat process is for named foods alone.
 */
export function goesBy({ foods, excludes, keeps, makes }: RecipeRow, food: string): string | undefined {
  if (foods.includes(food)) return food;
  if (excludes?.includes(food) === true || keeps.some((keep) => 'process' in keep)) return undefined;
  const { kind } = foodOf(food);
  if (foods.includes(kind)) return kind;
  const wider = onPages(makes, food);
  return wider !== undefined && foods.includes(wider) ? wider : undefined;
}

/** Whether a recipe is for the food of this id. */
export const isFor = (row: RecipeRow, food: string): boolean => goesBy(row, food) !== undefined;

/** Where a recipe stands printed, as a line of an answer's basis; it names the food of the page where that is a wider one. */
export function pageOf(row: RecipeRow, of: string, note?: string, food?: string): Basis {
  const by = food === undefined ? food : goesBy(row, food);
  const line = 'source' in row ? basisOf(row, of, note) : practiceBasis(of, note);
  return by === undefined || by === food ? line : { ...line, food: nameOf(by) };
}

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

/** What must not be changed, in words: of both packs with their names, of one pack only what is for it. */
export const mustKeepOf = ({ mustKeep = [] }: RecipeRow, pack?: string): string[] =>
  mustKeep.flatMap((each) => {
    if (typeof each === 'string') return [each];
    if (pack === undefined) return [`${each.pack} pack: ${each.text}`];
    return each.pack === pack ? [each.text] : [];
  });
