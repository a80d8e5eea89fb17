import type { Bound, Program } from './linearProgram';
import { decidedOf } from './relaxation';
import type { SparseRow } from './tableau';

/** A value this near a whole number is one: the simplex works in doubles. */
export const WHOLE = 1e-6;

export const rounded = (values: ReadonlyMap<string, number>, wholes: readonly string[]): Map<string, number> => {
  const clean = new Map(values);
  for (const name of wholes) clean.set(name, Math.round(clean.get(name) ?? 0) + 0); // never -0
  return clean;
};

/**
 * The whole columns that add nothing to the objective (jars to ready, batches, loads, trays) rounded up, and which of
 * them break a row by it. Where none does and the others are whole, the day is settled without branching on them.
 */
export function roundedUp(
  rows: readonly SparseRow[],
  cost: Float64Array,
  wholes: readonly number[],
  values: Float64Array,
): { readonly columns: Float64Array; readonly inTheWay: readonly number[] } {
  const columns = values.slice(0, cost.length);
  const moved = new Set<number>();
  for (const column of wholes) {
    const value = columns[column] as number;
    if (cost[column] !== 0) continue;
    const up = Math.ceil(value - WHOLE);
    if (up > value + WHOLE) moved.add(column);
    columns[column] = up;
  }
  const inTheWay = new Set<number>();
  for (const { index, weight, min, max } of rows) {
    let sum = 0;
    for (let at = 0; at < index.length; at++) sum += (weight[at] as number) * (columns[index[at] as number] as number);
    const slack = WHOLE * Math.max(1, Math.abs(sum));
    if (sum >= min - slack && sum <= max + slack) continue;
    for (const column of index) if (moved.has(column)) inTheWay.add(column);
  }
  return { columns, inTheWay: [...inTheWay] };
}

/**
 * The whole variables that add nothing to the objective lowered as far as every bound allows: no jar too many readied,
 * and then no load too many for the jars, and no batch too many for the loads.
 */
export function lowered(
  { variables, bounds }: Program,
  values: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> {
  const low = new Map(values);
  const sums = bounds.map(({ terms }) =>
    terms.reduce((sum, [name, weight]) => sum + weight * decidedOf(values, name), 0),
  );
  const weights = weightsOf(bounds);
  for (let again = true; again; ) {
    again = false;
    for (const { name, worth, integer } of variables) {
      if (!integer || worth !== 0) continue;
      const own = [...(weights.get(name) ?? [])];
      let spare = decidedOf(low, name);
      for (const [row, weight] of own) {
        const { min, max } = bounds[row] as Bound;
        const end = weight > 0 ? min : weight < 0 ? max : undefined;
        if (end !== undefined) spare = Math.min(spare, Math.floor(((sums[row] as number) - end) / weight + WHOLE));
      }
      if (spare <= 0) continue;
      low.set(name, decidedOf(low, name) - spare);
      for (const [row, weight] of own) sums[row] = (sums[row] as number) - spare * weight;
      again = true;
    }
  }
  return low;
}

/** Of each variable the bounds that it is in, by their places, and its weight there. */
function weightsOf(bounds: readonly Bound[]): Map<string, Map<number, number>> {
  const weights = new Map<string, Map<number, number>>();
  bounds.forEach(({ terms }, row) => {
    for (const [name, weight] of terms) {
      const own = weights.get(name) ?? new Map<number, number>();
      weights.set(name, own.set(row, (own.get(row) ?? 0) + weight));
    }
  });
  return weights;
}
