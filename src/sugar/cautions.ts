import table from '../../data/sugar/cautions.json';
import type { Caution } from '../sources/basis';

const cautions = table as readonly Caution[];

/** The caution of this module with this id; ids are fixed in `data/sugar/cautions.json`. */
export function sugarCaution(id: string): Caution {
  const found = cautions.find((entry) => entry.id === id);
  // ids come from our own code: a missing one is a mistake that every test meets
  if (found === undefined) throw new Error(`no caution ${id}`);
  return found;
}
