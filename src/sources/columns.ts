/**
 * The columns that every row carries, for the schema of a table. A schema is a function that is called in the tests
 * only: its return type is the row's type, and nothing of it runs or is bundled where the library is used.
 *
 * A table's schema is `export const dipRow = () => z.strictObject({ id: id(), ...sourcedColumns() })`, and its rows are
 * `asTable<RowOf<typeof dipRow>>(json).rows`. Where no code reads the id, it is `id: forReaders(id())`.
 */
import * as z from 'zod/mini';

/** Words that are there. */
export const text = () => z.string().check(z.minLength(1));
/** The id of a row: lower case, with hyphens. */
export const id = () => z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/));
/** A figure above zero. */
export const positive = () => z.number().check(z.positive());

/** What code sees of a column that is for readers: nothing. */
export interface ForReaders {
  readonly forReadersOnly: true;
}
/** The schemas of the columns that are for readers. */
export const READERS_COLUMNS = new WeakSet<z.core.$ZodType>();
/**
 * A column for people who read or check the table: the words of the page, why a figure is what it is. It is no part of
 * the row's type, so that no code can read it, and the built package leaves it out (`tests/build/left-out.json`).
 */
export const forReaders = (schema: z.ZodMiniType): z.ZodMiniType<ForReaders, ForReaders> => {
  READERS_COLUMNS.add(schema);
  return schema as z.ZodMiniType<ForReaders, ForReaders>;
};

/** What every row with a source carries besides its figures. */
export const sourcedColumns = () => ({
  source: text(),
  locator: z.string(),
  obtained: z.enum(['read', 'read-secondary', 'memory', 'computed', 'derived']),
  seen: z.exactOptional(z.enum(['original', 'reproduction', 'citation'])),
  notes: forReaders(z.exactOptional(text())),
});

/** What a row of common practice carries: no source, and why the figure is what it is. */
export const practiceColumns = () => ({ obtained: z.literal('common-practice'), reason: forReaders(text()) });

type Deep<T> = T extends readonly unknown[]
  ? { readonly [Key in keyof T]: Deep<T[Key]> }
  : T extends object
    ? { readonly [Key in keyof T as T[Key] extends ForReaders ? never : Key]: Deep<T[Key]> }
    : T;
/** The type of a row, from the schema of its table: without the columns for readers, read-only to the last list. */
export type RowOf<Schema extends () => z.core.$ZodType> = Deep<z.output<ReturnType<Schema>>>;
