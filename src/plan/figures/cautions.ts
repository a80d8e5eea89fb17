import table from '../../../data/plan/cautions.json';
import type { Caution } from '../../sources/basis';

const cautions = table as readonly Caution[];

/** A caution of the day's plan, by its id in `data/plan/cautions.json`. */
export function planCaution(id: string): Caution {
  const found = cautions.find((entry) => entry.id === id);
  if (found === undefined) throw new Error(`no caution ${id}`);
  return found;
}
