/** Packs a table for the built package, by columns; `src/common/unpack.ts` reads it. */
import type { Packed } from '../../src/common/unpack';

type Row = Readonly<Record<string, unknown>>;

const isRow = (value: unknown): value is Row => typeof value === 'object' && value !== null && !Array.isArray(value);

/** The columns of all rows, each after those it stands after in the first row that has it; a row's order is not kept. */
function columnsOf(rows: readonly Row[]): readonly string[] {
  const names: string[] = [];
  for (const row of rows) {
    let after = -1;
    for (const name of Object.keys(row)) {
      if (!names.includes(name)) names.splice(after + 1, 0, name);
      after = names.indexOf(name);
    }
  }
  return names;
}

function packColumn(rows: readonly Row[], name: string): readonly [Packed, string?] {
  const places = new Map<string, number>();
  const values: unknown[] = [];
  const which = rows.map((row) => {
    if (!(name in row)) return '';
    const key = JSON.stringify(row[name]);
    if (!places.has(key)) places.set(key, values.push(row[name]) - 1);
    return (places.get(key) as number).toString(36);
  });
  const everyRow = which.every((place) => place !== '');
  if (everyRow && values.length === 1) return [packList(values)];
  // written in order the values need no places, and cost no more than the places do
  if (everyRow && values.length > rows.length * 0.8) return [packList(rows.map((row) => row[name]))];
  return [packList(values), which.join()];
}

/** Packs a list of values. */
export function packList(values: readonly unknown[]): Packed {
  if (values.length > 1 && values.every(isRow)) {
    const columns = columnsOf(values).map((name) => [name, packColumn(values, name)]);
    return ['rows', values.length, Object.fromEntries(columns)];
  }
  if (values.length > 1 && values.every((value): value is unknown[] => Array.isArray(value) && value.every(isRow))) {
    return ['lists', values.map(({ length }) => length.toString(36)).join(), packList(values.flat())];
  }
  return ['plain', values];
}
