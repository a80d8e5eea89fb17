import { readdirSync, readFileSync } from 'node:fs';

interface Row {
  readonly id: string;
  readonly seenIn?: readonly { readonly document: string; readonly seen: string }[];
}

const folder = new URL('../../data/recipes/', import.meta.url);
const rows = readdirSync(folder).flatMap((file): readonly Row[] => {
  const table = JSON.parse(readFileSync(new URL(file, folder), 'utf8'));
  return Array.isArray(table) ? [] : table.rows;
});

/** In which documents each recipe was seen, by its id: a column for readers, which no code of the library reads. */
export const seenByRecipe: ReadonlyMap<string, NonNullable<Row['seenIn']>> = new Map(
  rows.flatMap(({ id, seenIn }) => (seenIn === undefined ? [] : [[id, seenIn]])),
);
