import table from '../../data/lethality/cautions.json';
import type { Caution } from '../sources/basis';

/** The caution of this id in `data/lethality/cautions.json`. */
export const lethalityCaution = (id: string): Caution =>
  (table as readonly Caution[]).find((entry) => entry.id === id) as Caution;
