import table from '../../../data/plan/units.json';
import { asTable, type Practice } from '../../sources/table';

/** What one unit of a product is called, and several of them: `quart jar`, `quart jars`. */
export interface CountedIn {
  readonly unit: string;
  readonly plural: string;
}

interface UnitRow extends Practice {
  readonly id: string;
  readonly one: string;
  readonly many: string;
}
const rows = new Map(asTable<UnitRow>(table).rows.map((row) => [row.id, row]));

/** The words for one and for several, by the id of `data/plan/units.json`. */
export function countedIn(id: string, size = ''): CountedIn {
  const row = rows.get(id);
  if (row === undefined) throw new Error(`no unit ${id}`);
  return { unit: row.one.replace('{size}', size), plural: row.many.replace('{size}', size) };
}
