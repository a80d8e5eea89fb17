/** What the rows of every drying table share, and how code asks for one. Schemas are functions: nothing runs at import. */
import * as z from 'zod/mini';
import practiceTable from '../../data/drying/practice.json';
import { id, practiceColumns, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';

/** `[least, most]`. */
export const endsColumn = () =>
  z.tuple([z.number(), z.number()]).check(z.refine(([least, most]) => least <= most, 'the least first'));
/** The food and the form of a row, by their ids in the pantry, and the words of the page. */
export const foodColumns = () => ({
  food: text(),
  form: z.exactOptional(text()),
  printed: text(),
});

/** A row of a table of single figures. */
export const itemRow = () =>
  z.strictObject({
    id: id(),
    value: z.exactOptional(z.number()),
    ends: z.exactOptional(endsColumn()),
    text: z.exactOptional(text()),
    unit: z.string(),
    ...sourcedColumns(),
  });
export type ItemRow = RowOf<typeof itemRow>;

/** What the trade does and nobody published. */
export const practiceRow = () =>
  z.strictObject({
    id: id(),
    value: z.exactOptional(z.number()),
    low: z.exactOptional(z.number()),
    likely: z.exactOptional(z.number()),
    high: z.exactOptional(z.number()),
    unit: z.string(),
    ...practiceColumns(),
  });
export type PracticeRow = RowOf<typeof practiceRow>;

/** The row of this id; ids come from our own code, and the tests walk every one of them. */
export function rowOf<Row extends { readonly id: string }>(rows: readonly Row[], wanted: string): Row {
  const found = rows.find((row) => row.id === wanted);
  if (found === undefined) throw new Error(`no row ${wanted}`);
  return found;
}

/** A figure that the row must have. */
export function figure<T>(value: T | undefined | null): T {
  if (value === undefined || value === null) throw new Error('a row without its figure');
  return value;
}

/** A row's one number. */
export const numberOf = (row: { readonly value?: number }): number => figure(row.value);
/** A row's least and most. */
export const endsOf = (row: ItemRow): readonly [number, number] => figure(row.ends);
/** A row's words. */
export const textOf = (row: ItemRow): string => figure(row.text);

const practiceRows = asTable<PracticeRow>(practiceTable).rows;
/** A figure of common practice. */
export const practice = (wanted: string): PracticeRow => rowOf(practiceRows, wanted);
