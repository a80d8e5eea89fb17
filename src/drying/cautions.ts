import table from '../../data/drying/cautions.json';
import { caution as general } from '../sources/cautions';
import type { Caution } from '../sources/index';

const own = table as readonly Caution[];

/** A caution of this module, or one of the library's general ones. */
export const caution = (id: string): Caution => own.find((entry) => entry.id === id) ?? general(id);
