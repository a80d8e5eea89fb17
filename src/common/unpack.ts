/**
 * Reads a table as the build packs it (`tests/build/pack.ts`): by columns, each distinct value of a column once.
 * Nothing in `src/` calls this; the built package reads its tables with it, each when it is first used.
 */

/** A column: its distinct values, and which of them each row has; without `which`, one for all rows or each its own. */
type Column = readonly [values: Packed, which?: string];
/** Rows: how many, and their columns by name. */
type Rows = readonly ['rows', count: number, Readonly<Record<string, Column>>];
/** Lists of one kind, run together: how long each is. */
type Lists = readonly ['lists', lengths: string, Packed];
/** Values as they are. */
type Plain = readonly unknown[];
/** Packed values of one list. */
export type Packed = readonly ['plain', Plain] | Rows | Lists;

const numbers = (text: string): number[] =>
  text === '' ? [] : text.split(',').map((digits) => Number.parseInt(digits, 36));

function unpackRows(count: number, columns: Rows[2]): unknown[] {
  const rows: Record<string, unknown>[] = Array.from({ length: count }, () => ({}));
  for (const [name, [packed, which]] of Object.entries(columns)) {
    const values = unpackList(packed);
    const places = which?.split(',');
    for (const [row, target] of rows.entries()) {
      const place = places === undefined ? (values.length === 1 ? 0 : row) : Number.parseInt(places[row] as string, 36);
      // an empty place: this row has no such column
      if (!Number.isNaN(place)) target[name] = values[place];
    }
  }
  return rows;
}

function unpackLists(lengths: string, packed: Packed): unknown[] {
  const all = unpackList(packed);
  let from = 0;
  return numbers(lengths).map((length) => {
    from += length;
    return all.slice(from - length, from);
  });
}

function unpackList(packed: Packed): readonly unknown[] {
  if (packed[0] === 'plain') return packed[1];
  return packed[0] === 'rows' ? unpackRows(packed[1], packed[2]) : unpackLists(packed[1], packed[2]);
}

/** The rows of a packed table. */
export const unpack = (text: string): readonly unknown[] => unpackList(JSON.parse(text));
