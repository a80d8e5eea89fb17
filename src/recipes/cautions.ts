import table from '../../data/recipes/cautions.json';
import type { Caution } from '../sources/basis';

const own = table as readonly Caution[];

/** The caution of this id in `data/recipes/cautions.json`. */
export function recipeCaution(id: string): Caution {
  const found = own.find((entry) => entry.id === id);
  // ids come from our own code and tables, never from a caller: a missing one is a mistake that the tests meet
  if (found === undefined) throw new Error(`no caution ${id}`);
  return found;
}
