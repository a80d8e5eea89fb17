import { type Compact, compactOf, objectiveOf, rowOf, valuesOf } from './compact';
import { dualSimplex } from './dualSimplex';
import type { Program } from './linearProgram';
import { tableauOf, worthOf } from './tableau';

/** The range that is left to a variable. */
export interface Range {
  readonly min: number;
  readonly max: number;
}
export type Ranges = ReadonlyMap<string, Range>;

export interface Relaxed {
  readonly worth: number;
  readonly values: ReadonlyMap<string, number>;
}

/** What a plan decided of one variable. */
export const decidedOf = (values: ReadonlyMap<string, number>, name: string): number => values.get(name) ?? 0;

/**
 * The linear relaxation of a program, whole variables taken for continuous ones.
 *
 * @returns a function of narrower ranges, and of another objective, to the best values; nothing where none meet the
 *   bounds
 */
export const relaxation = (
  program: Program,
): ((ranges: Ranges, objective?: ReadonlyMap<string, number>) => Relaxed | undefined) => {
  const compact = compactOf(program);
  return (ranges, objective) => relaxed(compact, ranges, objective);
};

/** The best values of a compact program within these ranges. */
export function relaxed(
  compact: Compact,
  ranges: Ranges,
  objective?: ReadonlyMap<string, number>,
): Relaxed | undefined {
  if (compact.empty) return undefined;
  const [min, max] = [compact.min.slice(), compact.max.slice()];
  const rows = [...compact.rows];
  for (const [name, range] of ranges) {
    const column = compact.place.get(name);
    if (column === undefined) {
      rows.push(rowOf({ name, terms: [[name, 1]], ...range }, compact.given, compact.place));
      continue;
    }
    min[column] = Math.max(min[column] as number, range.min);
    max[column] = Math.min(max[column] as number, range.max);
    if ((min[column] as number) > (max[column] as number) + 1e-9) return undefined;
    max[column] = Math.max(min[column] as number, max[column] as number);
  }
  const { cost, constant } = objective === undefined ? compact : objectiveOf(compact, [...objective]);
  const tableau = tableauOf(rows, cost, min, max);
  if (dualSimplex(tableau) !== 'optimal') return undefined;
  return { worth: worthOf(tableau) + constant, values: valuesOf(compact, tableau.value) };
}
