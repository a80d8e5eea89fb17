/** Figures that follow from the other tables, by id; the tests work each of them out again. */
import * as z from 'zod/mini';
import figuresJson from '../../data/produce/figures.json';
import { forReaders, id, positive, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';
import type { Span } from './span';

export const figureRow = () =>
  z.strictObject({
    id: id(),
    low: z.exactOptional(positive()),
    likely: positive(),
    high: z.exactOptional(positive()),
    what: forReaders(text()),
    ...sourcedColumns(),
  });
export type FigureRow = RowOf<typeof figureRow>;

const byId = new Map(asTable<FigureRow>(figuresJson).rows.map((row) => [row.id, row]));

/** The figure of this id as a range; one that stands alone is all three ends. Ids come from our own code. */
export function figure(name: string): Span {
  const row = byId.get(name);
  if (row === undefined) throw new Error(`no row of data/produce/figures.json has the id ${name}`);
  const { low = row.likely, likely, high = row.likely } = row;
  return { low, likely, high };
}
