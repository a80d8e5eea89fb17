/** What a canner load takes where nobody has measured it: figures of common practice. */
import * as z from 'zod/mini';
import table from '../../data/process/load-figures.json';
import type { Range } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { id, practiceColumns, type RowOf, text } from '../sources/columns';
import { asTable, practiceBasis } from '../sources/table';

/** One figure, in the unit of its row. */
export const loadFigureRow = () =>
  z.strictObject({
    id: id(),
    what: text(),
    value: z.number(),
    low: z.exactOptional(z.number()),
    high: z.exactOptional(z.number()),
    unit: text(),
    ...practiceColumns(),
  });
const { rows } = asTable<RowOf<typeof loadFigureRow>>(table);

function rowOf(id: string) {
  const row = rows.find((each) => each.id === id);
  // ids come from our own code: a missing one is a mistake that the tests meet
  if (row === undefined) throw new Error(`no figure ${id}`);
  return row;
}

/** A figure of `data/process/load-figures.json`; a row with one figure gives it three times. */
export function loadRange(id: string): Range<number> {
  const { value, low = value, high = value } = rowOf(id);
  return { low, likely: value, high };
}

/** The basis line of such a figure: `of` is the path of the answer's field. */
export const loadBasis = (id: string, of: string): Basis => practiceBasis(of, rowOf(id).what);
