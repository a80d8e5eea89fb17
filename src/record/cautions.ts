import table from '../../data/record/cautions.json';
import type { Caution } from '../sources/basis';

const cautions = table as readonly Caution[];

/** The caution of this id in `data/record/cautions.json`. */
export function recordCaution(id: string): Caution {
  const found = cautions.find((entry) => entry.id === id);
  // ids come from our own code: a missing one is a mistake that every test meets
  if (found === undefined) throw new Error(`no caution ${id}`);
  return found;
}
