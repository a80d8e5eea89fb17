import table from '../../data/steam/cautions.json';
import type { Caution } from '../sources/basis';

/** The caution of this id in `data/steam/cautions.json`. */
export const steamCaution = (id: string): Caution =>
  (table as readonly Caution[]).find((entry) => entry.id === id) as Caution;
