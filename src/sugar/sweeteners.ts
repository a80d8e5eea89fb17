import json from '../../data/sugar/sweeteners.json';
import { lookUp, type Named } from '../common/names';
import type { Basis } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';

export interface SweetenerRow extends Sourced, Named {
  /** Dissolved solids, g in 100 g. */
  readonly solids: number;
  readonly sugars: number;
  readonly gramsPerCup: number;
}
const rows = asTable<SweetenerRow>(json).rows;

/** The sweetener of this name. */
export const findSweetener = (name: string, path: string): SweetenerRow => lookUp(name, rows, path, 'sweetener');
/** Grams in a US cup of a sweetener of the table. */
export const cupOf = (name: string): number => findSweetener(name, 'with').gramsPerCup;
export const sweetenerBasis = (name: string, what: string): Basis[] => [basisOf(findSweetener(name, 'with'), what)];
