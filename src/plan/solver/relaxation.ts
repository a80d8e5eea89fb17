import { type Constraint, solve as solveModel } from 'yalps';
import type { Bound, Program } from './linearProgram';

/** The range that a node of the search leaves to each whole variable. */
export type Ranges = ReadonlyMap<string, Range>;
export interface Range {
  readonly min: number;
  readonly max: number;
}

export interface Relaxed {
  readonly worth: number;
  readonly values: ReadonlyMap<string, number>;
}

/** What a plan decided of one variable; the simplex leaves zeros out. */
export const decidedOf = (values: ReadonlyMap<string, number>, name: string): number => values.get(name) ?? 0;

type Term = readonly [variable: string, weight: number];
type Terms = readonly Term[];

/** A variable that an equality gives from others: `constant` and `terms` added up. */
interface Given {
  readonly terms: Terms;
  readonly constant: number;
}

const OBJECTIVE = 0;
const FREE: Range = { min: 0, max: Number.POSITIVE_INFINITY };

/**
 * The linear relaxation of a program, prepared once for the simplex of package `yalps`: bounds on one variable become
 * its range, a continuous variable that an equality gives from others is put in place of it, and rows that say nothing
 * are dropped. A node of the search only adds the ranges of its whole variables.
 *
 * @returns a function of the ranges, and of another objective, to the best values; nothing where none meet the bounds
 */
export function relaxation(
  program: Program,
): (ranges: Ranges, objective?: ReadonlyMap<string, number>) => Relaxed | undefined {
  const { given, sources } = givenByEqualities(program);
  const { base, rows } = rowsOf(program, given, sources);

  // Numbers as keys: row 0 is the objective, then the rows, then the range of each variable.
  const names = program.variables.flatMap(({ name }) => (given.has(name) ? [] : [name]));
  const place = new Map(names.map((name, index) => [name, index]));
  const columns = names.map((_, index): [number, [number, number][]] => [
    index,
    [
      [OBJECTIVE, 0],
      [rows.length + 1 + index, 1],
    ],
  ]);
  rows.forEach(({ terms }, index) => {
    for (const [name, weight] of terms) columns[place.get(name) as number]?.[1].push([index + 1, weight]);
  });
  const constraints = rows.map(({ constraint }, index): [number, Constraint] => [index + 1, constraint]);
  const own = inPlace(
    program.variables.map(({ name, worth }): Term => [name, worth]),
    given,
  );
  const aimAt = ({ terms }: Given): void => {
    for (const [, [worth]] of columns) if (worth !== undefined) worth[1] = 0;
    for (const [name, weight] of terms) {
      const worth = columns[place.get(name) as number]?.[1][0];
      if (worth !== undefined) worth[1] = weight;
    }
  };
  aimAt(own);

  return (ranges, objective) => {
    const all = [...constraints];
    const addRange = (name: string, { min, max }: Range): void => {
      if (min > 0 || max < Number.POSITIVE_INFINITY) {
        all.push([
          rows.length + 1 + (place.get(name) as number),
          { ...(min > 0 ? { min } : {}), ...(max < Number.POSITIVE_INFINITY ? { max } : {}) },
        ]);
      }
    };
    for (const [name, range] of base) if (!ranges.has(name)) addRange(name, range);
    for (const [name, range] of ranges) {
      const { min, max } = both(base.get(name) ?? FREE, range);
      if (min > max + 1e-9) return undefined;
      addRange(name, { min, max });
    }
    const aim = objective === undefined ? own : inPlace([...objective], given);
    if (objective !== undefined) aimAt(aim);
    const found = solveModel<number, number>(
      { direction: 'maximize', objective: OBJECTIVE, constraints: all, variables: columns },
      { maxPivots: 20_000 },
    );
    if (objective !== undefined) aimAt(own);
    if (found.status !== 'optimal') return undefined;
    const values = new Map(found.variables.map(([index, value]) => [names[index] as string, value]));
    for (const [name, { terms, constant }] of given) {
      const value = terms.reduce((sum, [variable, weight]) => sum + weight * decidedOf(values, variable), constant);
      values.set(name, Math.max(0, value));
    }
    return { worth: found.result + aim.constant, values };
  };
}

interface Row {
  readonly terms: Terms;
  readonly constraint: Constraint;
}

/** The bounds as rows; those on one variable as its range. */
function rowsOf(
  program: Program,
  given: ReadonlyMap<string, Given>,
  sources: ReadonlySet<Bound>,
): { readonly base: Map<string, Range>; readonly rows: Row[] } {
  const base = new Map<string, Range>();
  const rows: Row[] = [];
  const addRow = (bound: Bound): void => {
    const { terms, constant } = inPlace(bound.terms, given);
    const min = (bound.min ?? Number.NEGATIVE_INFINITY) - constant;
    const max = (bound.max ?? Number.POSITIVE_INFINITY) - constant;
    const [only] = terms;
    if (terms.length === 1 && only !== undefined && only[1] > 0) {
      base.set(only[0], both(base.get(only[0]) ?? FREE, { min: min / only[1], max: max / only[1] }));
    } else if (!saysNothing(terms, min, max)) {
      rows.push({
        terms,
        constraint: { ...(Number.isFinite(min) ? { min } : {}), ...(Number.isFinite(max) ? { max } : {}) },
      });
    }
  };
  for (const bound of program.bounds) if (!sources.has(bound)) addRow(bound);
  for (const [name, { terms, constant }] of given) addRow({ name, terms, min: -constant });
  return { base, rows };
}

const both = (one: Range, other: Range): Range => ({
  min: Math.max(one.min, other.min),
  max: Math.min(one.max, other.max),
});

/** Whether variables that are never below zero always keep a row. */
const saysNothing = (terms: Terms, min: number, max: number): boolean =>
  max === Number.POSITIVE_INFINITY && min <= 0 && terms.every(([, weight]) => weight >= 0);

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
