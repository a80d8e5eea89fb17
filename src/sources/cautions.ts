import table from '../../data/cautions.json';
import type { Caution } from './basis';

const cautions = new Map((table as readonly Caution[]).map((entry) => [entry.id, entry]));

/** The caution of this id; ids are fixed in `data/cautions.json`. */
export function caution(id: string): Caution {
  const found = cautions.get(id);
  // ids come from our own code, never from a caller: a missing one is a mistake that every test meets
  if (found === undefined) throw new Error(`no caution ${id}`);
  return found;
}
