import table from '../../data/produce/cautions.json';
import type { Caution } from '../sources/basis';
import { caution as general } from '../sources/cautions';

const own = table as readonly Caution[];

/** A caution of this module, or one of the library's general ones. */
export const caution = (id: string): Caution => own.find((entry) => entry.id === id) ?? general(id);
