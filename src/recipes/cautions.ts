import table from '../../data/recipes/cautions.json';
import type { Caution } from '../sources/basis';
import { sugarCaution } from '../sugar/cautions';
import type { RecipeRow } from './rows/tables';

/** A caution of the table: some are for some foods of a recipe only, by id. */
interface Row extends Caution {
  readonly foods?: readonly string[];
}
const own = table as readonly Row[];

function rowOf(id: string): Row {
  const found = own.find((entry) => entry.id === id);
  // ids come from our own code and tables, never from a caller: a missing one is a mistake that the tests meet
  if (found === undefined) throw new Error(`no caution ${id}`);
  return found;
}

/** The caution of this id in `data/recipes/cautions.json`. */
export function recipeCaution(id: string): Caution {
  const { foods: _, ...caution } = rowOf(id);
  return caution;
}

/** The cautions of a recipe that is made of these foods: white-fleshed peaches are no matter where it is of apricots. */
export const cautionsFor = ({ cautions = [] }: RecipeRow, foods: readonly string[]): Caution[] =>
  cautions.filter((id) => rowOf(id).foods?.some((food) => foods.includes(food)) !== false).map(recipeCaution);

const SETS = new Set(['jam', 'jelly', 'preserves', 'marmalade']);
/** What goes with every recipe that sets by its sugar. */
export function jamCautions({ makes, ingredients, keeps }: RecipeRow): Caution[] {
  if (!SETS.has(makes)) return [];
  const sour = ingredients.some(({ role, keep }) => role === 'acid' && keep === true);
  const boiled = keeps.some((keep) => 'process' in keep);
  return [
    ...(sour ? [sugarCaution('acid-for-set')] : []),
    sugarCaution('one-batch'),
    ...(boiled ? [sugarCaution('boiling-sugar-burns')] : []),
  ];
}
