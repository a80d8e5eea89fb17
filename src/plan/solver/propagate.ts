import type { SparseRow } from './tableau';

/** The least and the most of each variable. */
export interface Ends {
  readonly min: Float64Array;
  readonly max: Float64Array;
}

/** Rows looked at, for each row that there is. */
const MOST_LOOKS = 6;
const NEAR = 1e-6;

/** The rows that each column is in. */
export function touchedBy(rows: readonly SparseRow[], columns: number): readonly (readonly number[])[] {
  const touched = Array.from({ length: columns }, (): number[] => []);
  rows.forEach(({ index }, row) => {
    for (const column of index) touched[column]?.push(row);
  });
  return touched;
}

/** What is known of a program for narrowing ends. */
export interface Rules {
  readonly rows: readonly SparseRow[];
  readonly integer: Uint8Array;
  readonly touched: readonly (readonly number[])[];
}

/**
 * Narrows the ends of the whole variables as far as the rows allow by the ends of their other variables.
 *
 * @param column - the one whose ends are new; all, when left out
 * @returns false where some row cannot be kept
 */
export function propagate({ rows, integer, touched }: Rules, ends: Ends, column?: number): boolean {
  const waits = new Uint8Array(rows.length);
  const queue: number[] = column === undefined ? rows.map((_, row) => row) : [...(touched[column] ?? [])];
  for (const row of queue) waits[row] = 1;
  const moved: number[] = [];
  const most = MOST_LOOKS * rows.length;
  for (let at = 0; at < queue.length && at < most; at++) {
    const row = queue[at] as number;
    waits[row] = 0;
    if (!narrow(rows[row] as SparseRow, integer, ends, moved)) return false;
    for (const each of moved) {
      for (const other of touched[each] ?? []) {
        if (waits[other] === 1) continue;
        waits[other] = 1;
        queue.push(other);
      }
    }
    moved.length = 0;
  }
  return true;
}

/** Narrows by one row, and notes the columns whose ends moved; false where it cannot be kept. */
function narrow(row: SparseRow, integer: Uint8Array, ends: Ends, moved: number[]): boolean {
  const { index, weight, min, max } = row;
  // the least and the most that the row can be; how many of its variables have no end there
  let [low, high, lowOpen, highOpen] = [0, 0, 0, 0];
  let size = 1;
  for (let at = 0; at < index.length; at++) {
    const column = index[at] as number;
    const each = weight[at] as number;
    const least = each > 0 ? each * (ends.min[column] as number) : each * (ends.max[column] as number);
    const most = each > 0 ? each * (ends.max[column] as number) : each * (ends.min[column] as number);
    if (least === Number.NEGATIVE_INFINITY) lowOpen += 1;
    else {
      low += least;
      size = Math.max(size, Math.abs(least));
    }
    if (most === Number.POSITIVE_INFINITY) highOpen += 1;
    else {
      high += most;
      size = Math.max(size, Math.abs(most));
    }
  }
  const slack = 1e-9 * size;
  if ((lowOpen === 0 && low > max + NEAR * size) || (highOpen === 0 && high < min - NEAR * size)) return false;
  const lowTells = max < Number.POSITIVE_INFINITY && lowOpen <= 1;
  const highTells = min > Number.NEGATIVE_INFINITY && highOpen <= 1;
  if (!lowTells && !highTells) return true;
  for (let at = 0; at < index.length; at++) {
    const column = index[at] as number;
    if (integer[column] === 0) continue;
    const each = weight[at] as number;
    const [from, to] = [ends.min[column] as number, ends.max[column] as number];
    if (from === to) continue;
    const least = each > 0 ? each * from : each * to;
    const most = each > 0 ? each * to : each * from;
    let [next, last] = [from, to];
    // each x <= max - (low of the others), and each x >= min - (high of the others)
    if (lowTells && (lowOpen === 0 || least === Number.NEGATIVE_INFINITY)) {
      const rest = (max - (lowOpen === 0 ? low - least : low) + slack) / each;
      if (each > 0) last = Math.min(last, Math.floor(rest + NEAR));
      else next = Math.max(next, Math.ceil(rest - NEAR));
    }
    if (highTells && (highOpen === 0 || most === Number.POSITIVE_INFINITY)) {
      const rest = (min - (highOpen === 0 ? high - most : high) - slack) / each;
      if (each > 0) next = Math.max(next, Math.ceil(rest - NEAR));
      else last = Math.min(last, Math.floor(rest + NEAR));
    }
    if (next === from && last === to) continue;
    if (next > last) return false;
    ends.min[column] = next;
    ends.max[column] = last;
    moved.push(column);
    // where an end was open, the sums are counted anew when the row is looked at again
    if (lowOpen > 0 || highOpen > 0) return true;
    low += (each > 0 ? each * next : each * last) - least;
    high += (each > 0 ? each * last : each * next) - most;
  }
  return true;
}

/** Gives each variable without a last end one that no row reaches, for a simplex that needs them. */
export function finite(rows: readonly SparseRow[], ends: Ends, far: number): void {
  for (const { index, weight, min, max } of rows) {
    for (const sign of [1, -1]) {
      const top = sign === 1 ? max : -min;
      if (!Number.isFinite(top)) continue;
      let [low, open, last] = [0, 0, -1];
      for (let at = 0; at < index.length; at++) {
        const each = sign * (weight[at] as number);
        const end = each * ((each > 0 ? ends.min : ends.max)[index[at] as number] as number);
        if (end === Number.NEGATIVE_INFINITY) open += 1;
        else low += end;
        if (each > 0 && ends.max[index[at] as number] === Number.POSITIVE_INFINITY) last = at;
      }
      if (open > 0) continue;
      for (let at = 0; last >= 0 && at < index.length; at++) {
        const column = index[at] as number;
        const each = sign * (weight[at] as number);
        if (each <= 0 || ends.max[column] !== Number.POSITIVE_INFINITY) continue;
        const most = (ends.min[column] as number) + (top - low) / each;
        // a little beyond, so that it is no corner of the program
        ends.max[column] = Math.min(far, Math.ceil(1.01 * Math.max(0, most) + 1));
      }
    }
  }
  ends.max.forEach((end, column) => {
    if (end === Number.POSITIVE_INFINITY) ends.max[column] = far;
  });
}
