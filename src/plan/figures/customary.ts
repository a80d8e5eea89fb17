import * as z from 'zod/mini';
import table from '../../../data/plan/customary.json';
import type { Range } from '../../quantity/types';
import type { Basis } from '../../sources/basis';
import { id, positive, practiceColumns, type RowOf, text } from '../../sources/columns';
import { asTable, practiceBasis } from '../../sources/table';

/** One figure of common practice that the plan uses where the cook names none. */
export const customaryRow = () =>
  z.strictObject({
    id: id(),
    what: text(),
    value: z.number(),
    low: z.exactOptional(positive()),
    high: z.exactOptional(positive()),
    unit: z.string(),
    ...practiceColumns(),
  });

const { rows } = asTable<RowOf<typeof customaryRow>>(table);
const byId = new Map(rows.map((row) => [row.id, row]));

function rowOf(id: string): RowOf<typeof customaryRow> {
  const row = byId.get(id);
  if (row === undefined) throw new Error(`no customary figure ${id}`);
  return row;
}

/** A figure of `data/plan/customary.json` by its id, in the unit of its row. */
export const customary = (id: string): number => rowOf(id).value;

/** The same as a range; a row with one figure gives it three times. */
export function customaryRange(id: string): Range<number> {
  const { value, low = value, high = value } = rowOf(id);
  return { low, likely: value, high };
}

/** The basis line of such a figure: `of` is the path of the answer's field. */
export const customaryBasis = (id: string, of: string): Basis => practiceBasis(of, rowOf(id).what);
