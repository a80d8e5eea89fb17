/**
 * The tables as the built package holds them: the rows alone, without the columns that are there for a reader of the
 * table and that no code reads. `left-out.json` names those columns by table, those inside of a column by their path:
 * `steps[].notes`.
 */
import { readFileSync } from 'node:fs';

/** The columns that the built package leaves out, by table. */
export const LEFT_OUT: Readonly<Record<string, readonly string[]>> = JSON.parse(
  readFileSync(new URL('left-out.json', import.meta.url), 'utf8'),
);

/** What is left of a row, or of a list of rows. */
function without(value: unknown, left: ReadonlySet<string>, path: string): unknown {
  if (Array.isArray(value)) return value.map((each) => without(each, left, path));
  if (typeof value !== 'object' || value === null) return value;
  const kept = Object.entries(value).filter(([name]) => !left.has(path + name));
  return Object.fromEntries(
    kept.map(([name, each]) => [name, without(each, left, `${path}${name}${Array.isArray(each) ? '[]' : ''}.`)]),
  );
}

/** The rows of a table, as the built package holds them. */
export function shippedRows(table: string, text: string): readonly unknown[] {
  const json = JSON.parse(text) as readonly unknown[] | { readonly rows: readonly unknown[] };
  const rows = Array.isArray(json) ? json : (json as { rows: readonly unknown[] }).rows;
  return without(rows, new Set(LEFT_OUT[table]), '') as readonly unknown[];
}
