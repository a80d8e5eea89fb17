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
