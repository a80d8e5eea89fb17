/**
 * Makes data/foods/known.json from the tables: which crafts have rows for a food, and in which forms.
 * `npx tsx tests/foods/known.ts` writes it anew.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const data = new URL('../../data/', import.meta.url);
const KNOWN = new URL('foods/known.json', data);
type Row = Readonly<Record<string, unknown>>;

/** The rows of a table, by its path under data/ without the ending. */
export function rowsOf(table: string): readonly Row[] {
  const json = JSON.parse(readFileSync(new URL(`${table}.json`, data), 'utf8')) as readonly Row[] | { rows: Row[] };
  return Array.isArray(json) ? json : (json as { rows: Row[] }).rows;
}
const ids = (table: string): ReadonlySet<string> => new Set(rowsOf(table).map(({ id }) => String(id)));

/** What stands in a column of one or several ids, where they are ids of the pantry. */
function idsIn(row: Row, columns: readonly string[], known: ReadonlySet<string>): string[] {
  const found = columns.flatMap((column) => row[column] ?? []).flat();
  return found.filter((id): id is string => typeof id === 'string' && known.has(id));
}

/** The index as it should be. */
export function makeKnown(): string {
  const foods = ids('foods/foods');
  const forms = ids('foods/forms');
  const index = new Map<string, Map<string, Set<string>>>();
  for (const { id: craft, tables } of rowsOf('foods/crafts') as readonly { id: string; tables: string[] }[]) {
    for (const row of tables.flatMap(rowsOf)) {
      // a carrot is in mixed vegetables, and has not their process
      const named = craft === 'process' && row.askedBy !== undefined ? 'askedBy' : 'foods';
      for (const food of idsIn(row, ['food', named], foods)) {
        const crafts = index.get(food) ?? new Map<string, Set<string>>();
        index.set(food, crafts);
        const formsNamed = crafts.get(craft) ?? new Set<string>();
        crafts.set(craft, formsNamed);
        for (const form of idsIn(row, ['form', 'forms'], forms)) formsNamed.add(form);
      }
    }
  }
  const rows = [...index]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([food, crafts]) => ({
      food,
      crafts: [...crafts].map(([craft, named]) => ({ craft, forms: [...named].sort() })),
    }));
  const head = {
    table: 'known',
    title: 'Which crafts have figures for a food',
    obtained: 'common-practice',
    reason: 'Counted from the tables that crafts.json names.',
    columns: {
      food: 'id of the food',
      crafts: 'the crafts with a row for it',
      'crafts[].craft': 'id of the craft',
      'crafts[].forms': 'ids of the forms that these rows name',
    },
  };
  const lines = rows.map((row) => `    ${JSON.stringify(row)}`).join(',\n');
  return `${JSON.stringify(head, null, 2).slice(0, -2)},\n  "rows": [\n${lines}\n  ]\n}\n`;
}

/** The index as it is. */
export const knownNow = (): string => (existsSync(KNOWN) ? readFileSync(KNOWN, 'utf8') : '');

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(KNOWN, makeKnown());
