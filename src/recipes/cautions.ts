import table from '../../data/recipes/cautions.json';
import type { Caution } from '../sources/basis';
import { sugarCaution } from '../sugar/cautions';
import type { RecipeRow } from './rows/tables';

const own = table as readonly Caution[];

/** The caution of this id in `data/recipes/cautions.json`. */
export function recipeCaution(id: string): Caution {
  const found = own.find((entry) => entry.id === id);
  // ids come from our own code and tables, never from a caller: a missing one is a mistake that the tests meet
  if (found === undefined) throw new Error(`no caution ${id}`);
  return found;
}

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
