import * as z from 'zod/mini';
import table from '../../../data/plan/units.json';
import { id, practiceColumns, type RowOf, text } from '../../sources/columns';
import { asTable } from '../../sources/table';

/** What one unit of a product is called, and several of them: `quart jar`, `quart jars`. */
export interface CountedIn {
  readonly unit: string;
  readonly plural: string;
}

export const unitRow = () => z.strictObject({ id: id(), one: text(), many: text(), ...practiceColumns() });
const rows = new Map(asTable<RowOf<typeof unitRow>>(table).rows.map((row) => [row.id, row]));

/** The words for one and for several, by the id of `data/plan/units.json`. */
export function countedIn(id: string, size = ''): CountedIn {
  const row = rows.get(id);
  if (row === undefined) throw new Error(`no unit ${id}`);
  return { unit: row.one.replace('{size}', size), plural: row.many.replace('{size}', size) };
}
