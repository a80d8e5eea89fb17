import table from '../../data/process/cautions.json';
import type { Caution } from '../sources/basis';
import { caution } from '../sources/cautions';

const own = new Map((table as readonly Caution[]).map((entry) => [entry.id, entry]));

/** The caution of this id in `data/process/cautions.json`. */
export function processCaution(id: string): Caution {
  const found = own.get(id);
  // ids come from our own code and tables, never from a caller: a missing one is a mistake that the tests meet
  if (found === undefined) throw new Error(`no caution ${id}`);
  return found;
}

/** What every process and every refusal says. */
export const usualCautions = (): Caution[] => [caution('tested-only'), caution('follow-local-guidance')];
