import table from '../../data/steam/cautions.json';
import type { Caution } from '../sources/basis';

const cautions = new Map((table as readonly Caution[]).map((entry) => [entry.id, entry]));
/** The caution of this id in `data/steam/cautions.json`. */
export const steamCaution = (id: string): Caution => cautions.get(id) as Caution;
