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

/** A mixed integer linear program: the worth of its variables is to be maximized. */
export interface Program {
  readonly variables: readonly Variable[];
  readonly bounds: readonly Bound[];
  /** A sum, at least 1 by the bounds, that the worth is divided by: the most for each unit of it is looked for. */
  readonly per?: readonly (readonly [variable: string, weight: number])[];
}

/** What values are worth in a program, before any division by `per`. */
export const worthIn = ({ variables }: Program, values: ReadonlyMap<string, number>): number =>
  variables.reduce((sum, { name, worth }) => sum + worth * (values.get(name) ?? 0), 0);

/** Whether values that are whole where they must be keep within every bound, as far as doubles tell. */
export const meetsBounds = ({ bounds }: Program, values: ReadonlyMap<string, number>): boolean =>
  bounds.every(({ terms, min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY }) => {
    const sum = terms.reduce((total, [name, weight]) => total + weight * (values.get(name) ?? 0), 0);
    const slack = 1e-6 * Math.max(1, Math.abs(sum));
    return sum >= min - slack && sum <= max + slack;
  });
