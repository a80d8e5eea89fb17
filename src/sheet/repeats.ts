import type { Cell, Row } from './sheet';

/** The most rows of a round that is done again. */
const LONGEST_ROUND = 8;

/** Two rows alike in one: as many boxes as times, each load with its own timer. */
function joined<R extends Row>(one: R, other: R): R {
  return {
    ...one,
    times: [...one.times, ...other.times],
    stove: cellsOf([...one.stove, ...other.stove]),
    canner: cellsOf([...one.canner, ...other.canner]),
    trays: cellsOf([...one.trays, ...other.trays]),
    loads: [...one.loads, ...other.loads],
    tasks: [...one.tasks, ...other.tasks],
  };
}

/** The same done at several times, said once. */
function cellsOf(cells: readonly Cell[]): Cell[] {
  const found = new Map<string, Cell>();
  for (const { times, text } of cells)
    found.set(text, { text, times: [...new Set([...(found.get(text)?.times ?? []), ...times])] });
  return [...found.values()];
}

/** Rounds of work done again at once after another share their rows: prepare, cook, fill, can: three times. */
export function withRounds<R extends Row>(rows: readonly R[]): R[] {
  const found: R[] = [];
  let at = 0;
  while (at < rows.length) {
    const size = roundAt(rows, at);
    if (size === 0) {
      found.push(rows[at] as R);
      at += 1;
      continue;
    }
    let round = rows.slice(at, at + size);
    at += size;
    while (alike(round, rows.slice(at, at + size))) {
      round = round.map((row, index) => joined(row, rows[at + index] as R));
      at += size;
    }
    found.push(...round);
  }
  return found;
}
const alike = (one: readonly Row[], other: readonly Row[]): boolean =>
  one.length === other.length && one.every((row, index) => row.key === other[index]?.key);
function roundAt(rows: readonly Row[], at: number): number {
  for (let size = 1; size <= LONGEST_ROUND; size += 1) {
    if (at + 2 * size > rows.length) return 0;
    if (alike(rows.slice(at, at + size), rows.slice(at + size, at + 2 * size))) return size;
  }
  return 0;
}

/** Where a page has no room for each: all rows alike of a day in one, at the time of the first. */
export function withAllAlike<R extends Row>(rows: readonly R[], dayOf: (row: R) => number): R[] {
  const found = new Map<string, R>();
  rows.forEach((row, index) => {
    const key = row.key === '' ? `row ${index}` : `${dayOf(row)} ${row.key}`;
    const before = found.get(key);
    found.set(key, before === undefined ? row : joined(before, row));
  });
  return [...found.values()];
}
