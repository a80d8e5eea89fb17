/** Which foods a process is for: those that the pages of its recipes name, and no other. All are ids of the pantry. */
import { foodOf } from '../foods/tables';
import { formNameRows, type ProcessRecipeRow, type ProcessRow, processRecipeRows } from './tables';

type Line = Pick<ProcessRow, 'recipe' | 'food' | 'pack'>;

/** The recipes that end in a process, by its name. */
let ending: ReadonlyMap<string, readonly ProcessRecipeRow[]> | undefined;
/** The printed recipes that end in the process of this name. */
export function recipesOfProcess(process: string): readonly ProcessRecipeRow[] {
  if (ending === undefined) {
    const found = new Map<string, ProcessRecipeRow[]>();
    for (const row of processRecipeRows) found.set(row.process, [...(found.get(row.process) ?? []), row]);
    ending = found;
  }
  return ending.get(process) ?? [];
}

/** Foods that are names of the product itself: jam, of jam or jelly. */
const products = new Map(formNameRows.map(({ recipe, products: named }) => [recipe, named ?? []]));

interface Scope {
  /** Foods that the page is for as such: a blueberry among the berries. */
  readonly itself: readonly string[];
  /** Foods that the product is made of: strawberries in a jam. */
  readonly madeOf: readonly string[];
}

function findScope({ recipe, food, pack }: Line): Scope {
  const pages = recipesOfProcess(recipe);
  const named = pages.flatMap(
    ({ foods, askedBy, packFoods }) => askedBy ?? (pack == null ? undefined : packFoods?.[pack]) ?? foods,
  );
  const names = [food, ...(products.get(recipe) ?? [])];
  if (!pages.some(({ product }) => product === true)) return { itself: [...new Set([...names, ...named])], madeOf: [] };
  const madeOf = [...new Set(named)].filter((id) => !names.includes(id));
  // a syrup of berries is for the berries that its page names, and `berry` is none of them
  return { itself: foodOf(food).kind === 'prepared' || named.includes(food) ? names : [], madeOf };
}

const scopes = new WeakMap<Line, Scope>();
function scopeOf(row: Line): Scope {
  const found = scopes.get(row) ?? findScope(row);
  scopes.set(row, found);
  return found;
}

/** The foods that a row is served for. A process without a recipe is for the food of its row only. */
export const foodsOf = (row: Line): readonly string[] => [...scopeOf(row).itself, ...scopeOf(row).madeOf];

/** The foods that the product of a row is made of. */
export const madeOf = (row: Line): readonly string[] => scopeOf(row).madeOf;

/** Whether the page is for the food as such (a blueberry among the berries), and not for a product made of it. */
export const isItself = (row: Line, food: string): boolean => scopeOf(row).itself.includes(food);
