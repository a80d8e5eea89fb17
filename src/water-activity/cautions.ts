import table from '../../data/water-activity/cautions.json';
import type { Caution } from '../sources/basis';

/** The caution of this id in `data/water-activity/cautions.json`. */
export const activityCaution = (id: string): Caution =>
  (table as readonly Caution[]).find((entry) => entry.id === id) as Caution;
