/**
 * The columns that every row carries, for the schema of a table. A schema is a function that is called in the tests
 * only: its return type is the row's type, and nothing of it runs or is bundled where the library is used.
 *
 * A table's schema is `export const dipRow = () => z.strictObject({ grams: positive(), ...sourcedColumns() })`, and its rows are
 * `asTable<RowOf<typeof dipRow>>(json).rows`.
 */
import * as z from 'zod/mini';

/** Words that are there. */
export const text = () => z.string().check(z.minLength(1));
/** The id of a row: lower case, with hyphens. */
export const id = () => z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/));
/** A figure above zero. */
export const positive = () => z.number().check(z.positive());

/** What every row with a source carries besides its figures. */
export const sourcedColumns = () => ({
  id: id(),
  source: text(),
  locator: z.string(),
  obtained: z.enum(['read', 'read-secondary', 'memory', 'computed', 'derived']),
  seen: z.exactOptional(z.enum(['original', 'reproduction', 'citation'])),
  notes: z.exactOptional(text()),
});

/** What a row of common practice carries: no source, and why the figure is what it is. */
export const practiceColumns = () => ({ id: id(), obtained: z.literal('common-practice'), reason: text() });

type Deep<T> = T extends object ? { readonly [Key in keyof T]: Deep<T[Key]> } : T;
/** The type of a row, from the schema of its table; read-only to the last list. */
export type RowOf<Schema extends () => z.core.$ZodType> = Deep<z.output<ReturnType<Schema>>>;
