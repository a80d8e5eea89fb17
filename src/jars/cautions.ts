import table from '../../data/jars/cautions.json';
import type { Caution } from '../sources/basis';
import { rowOf } from './tables';

const cautions = table as readonly Caution[];

/** The caution of this id in `data/jars/cautions.json`. */
export const jarCaution = (id: string): Caution => rowOf(cautions, id);
