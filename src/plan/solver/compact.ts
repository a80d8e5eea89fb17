import type { Bound, Program } from './linearProgram';
import { type Ends, finite, propagate, type Rules, touchedBy } from './propagate';
import type { SparseRow } from './tableau';

/**
 * A program made ready for the simplex: variables and bounds by their numbers, bounds on one variable as its ends, a
 * continuous variable that an equality gives from others put in place of it, and rows that say nothing dropped.
 */
export interface Compact extends Ends, Rules {
  readonly names: readonly string[];
  readonly place: ReadonlyMap<string, number>;
  readonly cost: Float64Array;
  /** Of the objective, beside its columns. */
  readonly constant: number;
  readonly given: ReadonlyMap<string, Given>;
  /** Whether no values can meet the bounds. */
  readonly empty: boolean;
}

type Term = readonly [variable: string, weight: number];
type Terms = readonly Term[];

/** A variable that an equality gives from others: `constant` and `terms` added up. */
interface Given {
  readonly terms: Terms;
  readonly constant: number;
}

/** Where nothing else bounds a variable. */
const FAR = 1e7;
/** A whole number this near is meant. */
const WHOLE = 1e-6;

export function compactOf(program: Program): Compact {
  const { given, sources } = givenByEqualities(program);
  const kept = program.variables.filter(({ name }) => !given.has(name));
  const names = kept.map(({ name }) => name);
  const place = new Map(names.map((name, index) => [name, index]));
  const integer = Uint8Array.from(kept, (each) => (each.integer ? 1 : 0));
  const min = new Float64Array(names.length);
  const max = new Float64Array(names.length).fill(Number.POSITIVE_INFINITY);
  const rows: SparseRow[] = [];
  const add = (bound: Bound): void => {
    const row = rowOf(bound, given, place);
    const [only, weight] = [row.index[0], row.weight[0]];
    if (row.index.length !== 1 || only === undefined || weight === undefined) {
      rows.push(row);
      return;
    }
    const ends = [row.min / weight, row.max / weight].sort((one, other) => one - other) as [number, number];
    min[only] = Math.max(min[only] as number, ends[0]);
    max[only] = Math.min(max[only] as number, ends[1]);
  };
  for (const bound of program.bounds) if (!sources.has(bound)) add(bound);
  for (const [name, { terms, constant }] of given) add({ name, terms, min: -constant });
  integer.forEach((whole, column) => {
    if (whole === 0) return;
    min[column] = Math.ceil((min[column] as number) - WHOLE);
    max[column] = Math.floor((max[column] as number) + WHOLE);
  });
  const { cost, constant } = objectiveOf(
    { given, names, place },
    program.variables.map(({ name, worth }) => [name, worth]),
  );
  const ends = { min, max };
  const consistent = min.every((end, column) => end <= (max[column] as number) + WHOLE);
  const empty =
    !consistent ||
    !propagate({ rows, integer, touched: touchedBy(rows, names.length) }, ends) ||
    rows.some((row) => row.index.length === 0 && (row.min > 1e-9 || row.max < -1e-9));
  finite(rows, ends, FAR);
  const telling = rows.filter((row) => !alwaysKept(row, ends));
  const touched = touchedBy(telling, names.length);
  return { names, place, integer, cost, constant, rows: telling, touched, given, empty, ...ends };
}

/** The columns' worth in an objective. */
export function objectiveOf(
  { given, names, place }: Pick<Compact, 'given' | 'names' | 'place'>,
  terms: Terms,
): { readonly cost: Float64Array; readonly constant: number } {
  const cost = new Float64Array(names.length);
  const whole = inPlace(terms, given);
  for (const [name, weight] of whole.terms) {
    const column = place.get(name);
    if (column !== undefined) cost[column] = weight;
  }
  return { cost, constant: whole.constant };
}

/** Columns as values by name, with those that are given. */
export function valuesOf({ names, given }: Compact, columns: Float64Array): Map<string, number> {
  const values = new Map(names.map((name, column) => [name, columns[column] as number]));
  for (const [name, { terms, constant }] of given) {
    const value = terms.reduce((sum, [variable, weight]) => sum + weight * (values.get(variable) ?? 0), constant);
    values.set(name, Math.max(0, value));
  }
  return values;
}

/** A bound as a row, scaled by a power of two to weights about 1. */
export function rowOf(bound: Bound, given: ReadonlyMap<string, Given>, place: ReadonlyMap<string, number>): SparseRow {
  const whole = inPlace(bound.terms, given);
  const terms = whole.terms.filter(([name, weight]) => weight !== 0 && place.has(name));
  const largest = Math.max(...terms.map(([, weight]) => Math.abs(weight)));
  const scale = terms.length > 1 ? 2 ** -Math.floor(Math.log2(largest)) : 1;
  return {
    index: Int32Array.from(terms, ([name]) => place.get(name) as number),
    weight: Float64Array.from(terms, ([, weight]) => weight * scale),
    min: ((bound.min ?? Number.NEGATIVE_INFINITY) - whole.constant) * scale,
    max: ((bound.max ?? Number.POSITIVE_INFINITY) - whole.constant) * scale,
  };
}

/** Whether the ends of its variables keep a row by themselves. */
function alwaysKept({ index, weight, min, max }: SparseRow, ends: Ends): boolean {
  let [low, high] = [0, 0];
  for (let at = 0; at < index.length; at++) {
    const column = index[at] as number;
    const each = weight[at] as number;
    const [least, most] = [each * (ends.min[column] as number), each * (ends.max[column] as number)];
    low += Math.min(least, most);
    high += Math.max(least, most);
  }
  return low >= min && high <= max;
}

/** A continuous variable of each equality, written in the others of its row; and the equalities, which hold by themselves then. */
function givenByEqualities({ variables, bounds }: Program): { given: Map<string, Given>; sources: Set<Bound> } {
  const continuous = new Set(variables.filter(({ integer }) => !integer).map(({ name }) => name));
  const given = new Map<string, Given>();
  const sources = new Set<Bound>();
  const used = new Set<string>();
  for (const bound of bounds) {
    const { terms, min, max } = bound;
    if (min === undefined || min !== max || terms.some(([name]) => given.has(name))) continue;
    const chosen = terms.find(([name, weight]) => continuous.has(name) && weight !== 0 && !used.has(name));
    if (chosen === undefined) continue;
    const [name, weight] = chosen;
    const rest = terms.filter((term) => term !== chosen);
    given.set(name, {
      terms: rest.map(([other, each]): Term => [other, -each / weight]),
      constant: min / weight,
    });
    sources.add(bound);
    for (const [other] of rest) used.add(other);
  }
  return { given, sources };
}

/** A weighted sum with the given variables replaced, each variable once. */
function inPlace(terms: Terms, given: ReadonlyMap<string, Given>): Given {
  const weights = new Map<string, number>();
  let constant = 0;
  const add = (name: string, weight: number) => weights.set(name, (weights.get(name) ?? 0) + weight);
  for (const [name, weight] of terms) {
    const own = given.get(name);
    if (own === undefined) add(name, weight);
    else {
      constant += weight * own.constant;
      for (const [other, each] of own.terms) add(other, weight * each);
    }
  }
  return { terms: [...weights], constant };
}
