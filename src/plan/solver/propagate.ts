import type { SparseRow } from './tableau';

/** The least and the most of each variable. */
export interface Ends {
  readonly min: Float64Array;
  readonly max: Float64Array;
}

/** Rounds of going through all rows. */
const MOST_ROUNDS = 6;
const NEAR = 1e-6;

/**
 * Narrows the ends of the whole variables as far as the rows allow by the ends of their other variables.
 *
 * @returns false where some row cannot be kept
 */
export function propagate(rows: readonly SparseRow[], integer: Uint8Array, ends: Ends): boolean {
  if (ends.min.some((end, column) => end > (ends.max[column] as number) + NEAR)) return false;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    let moved = false;
    for (const row of rows) {
      const narrowed = narrow(row, integer, ends);
      if (narrowed === undefined) return false;
      moved ||= narrowed;
    }
    if (!moved) return true;
  }
  return true;
}

/** Whether a row moved an end; nothing where it cannot be kept. */
function narrow(row: SparseRow, integer: Uint8Array, ends: Ends): boolean | undefined {
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
  if ((lowOpen === 0 && low > max + NEAR * size) || (highOpen === 0 && high < min - NEAR * size)) return undefined;
  let moved = false;
  const lowTells = max < Number.POSITIVE_INFINITY && lowOpen <= 1;
  const highTells = min > Number.NEGATIVE_INFINITY && highOpen <= 1;
  if (!lowTells && !highTells) return false;
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
    if (next > last) return undefined;
    ends.min[column] = next;
    ends.max[column] = last;
    moved = true;
    // the sums of the row are of before: the next round sees the narrower ends
    if (lowOpen > 0 || highOpen > 0) return true;
    low += (each > 0 ? each * next : each * last) - least;
    high += (each > 0 ? each * last : each * next) - most;
  }
  return moved;
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
