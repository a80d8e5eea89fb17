import { type Coefficients, type Constraint, type Solution, solve as solveModel } from 'yalps';

/** One quantity the program decides. Never below zero. */
export interface Variable {
  readonly name: string;
  /** What one unit of it adds to the objective. */
  readonly worth: number;
  readonly integer?: boolean;
}

/** A weighted sum of variables, kept within bounds. */
export interface Bound {
  readonly name: string;
  readonly terms: readonly (readonly [variable: string, weight: number])[];
  readonly max?: number;
  readonly min?: number;
}

/** A mixed integer linear program, to be maximized. */
export interface Program {
  readonly variables: readonly Variable[];
  readonly bounds: readonly Bound[];
}

export interface Solved {
  readonly feasible: boolean;
  /** Proven best; otherwise the best found, and `gap` says how far the proof reaches. */
  readonly optimal: boolean;
  /** How much better a plan could still be, relative to this one: 0 when proven best. */
  readonly gap: number;
  readonly worth: number;
  readonly values: ReadonlyMap<string, number>;
}

const NONE: Solved = { feasible: false, optimal: true, gap: 0, worth: 0, values: new Map() };
/** Sums within this of a bound count as meeting it: the solver works in doubles. */
const SLACK = 1e-6;
/** Branches the search may open before it returns the best so far with its gap. */
const MOST_BRANCHES = 60_000;

function run(program: Program, fixed: ReadonlyMap<string, number>, relaxed: boolean): Solution<string> {
  const columns = new Map<string, Map<string, number>>();
  for (const { name, worth } of program.variables) columns.set(name, new Map([['worth', worth]]));
  const constraints = new Map<string, Constraint>();
  program.bounds.forEach(({ terms, min, max }, index) => {
    const row = `bound ${index}`;
    constraints.set(row, { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) });
    for (const [variable, weight] of terms) {
      const column = columns.get(variable);
      column?.set(row, (column.get(row) ?? 0) + weight);
    }
  });
  for (const [name, value] of fixed) {
    constraints.set(`fixed ${name}`, { equal: value });
    columns.get(name)?.set(`fixed ${name}`, 1);
  }
  const integers = relaxed ? [] : program.variables.filter(({ integer }) => integer).map(({ name }) => name);
  return solveModel<string, string>(
    {
      direction: 'maximize',
      objective: 'worth',
      constraints,
      variables: columns as Iterable<readonly [string, Coefficients<string>]>,
      integers,
    },
    { maxIterations: MOST_BRANCHES, maxPivots: 200_000 },
  );
}

/** Whether every bound holds at these values. */
export function holds(program: Program, values: ReadonlyMap<string, number>): boolean {
  return program.bounds.every(({ terms, min, max }) => {
    let sum = 0;
    let size = 1;
    for (const [name, weight] of terms) {
      sum += weight * (values.get(name) ?? 0);
      size = Math.max(size, Math.abs(weight * (values.get(name) ?? 0)));
    }
    const slack = SLACK * size;
    return (max === undefined || sum <= max + slack) && (min === undefined || sum >= min - slack);
  });
}

/**
 * Solves a mixed integer linear program by branch and bound (package `yalps`), then once more with the whole
 * numbers held at whole values, so that nothing in the answer carries the noise of the search.
 *
 * @returns the best plan and whether it is proven best; `feasible: false` when no values meet every bound
 */
export function solve(program: Program): Solved {
  const found = run(program, new Map(), false);
  if (found.status === 'infeasible' || found.status === 'cycled' || Number.isNaN(found.result)) return NONE;
  const searched = new Map(found.variables);
  const whole = new Map<string, number>();
  for (const { name, integer } of program.variables) {
    if (integer) whole.set(name, Math.round(searched.get(name) ?? 0));
  }
  const clean = run(program, whole, true);
  const values = new Map(clean.status === 'optimal' ? clean.variables : found.variables);
  for (const [name, value] of whole) values.set(name, value);
  const worth = program.variables.reduce((sum, { name, worth: each }) => sum + each * (values.get(name) ?? 0), 0);
  const optimal = found.status === 'optimal';
  const bound = optimal ? worth : run(program, new Map(), true).result;
  return {
    feasible: holds(program, values),
    optimal,
    gap: optimal ? 0 : Math.max(0, (bound - worth) / Math.max(Math.abs(worth), SLACK)),
    worth,
    values,
  };
}
