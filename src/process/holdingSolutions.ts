import * as z from 'zod/mini';
import table from '../../data/process/anti-darkening.json';
import { answer } from '../common/answer';
import type { Basis, Caution } from '../sources/basis';
import { id, positive, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable, basisOf } from '../sources/table';
import { processCaution } from './cautions';

/** A solution that cut fruit is held in. */
export const holdingSolutionRow = () =>
  z.strictObject({
    id: id(),
    solution: text(),
    amount: z.exactOptional(positive()),
    unit: z.exactOptional(text()),
    water: z.exactOptional(text()),
    /** Ascorbic acid in it, g. */
    grams: z.exactOptional(positive()),
    ...sourcedColumns(),
  });
type SolutionRow = RowOf<typeof holdingSolutionRow>;

/** A solution that cut fruit is held in: how much of what, in how much cold water. */
export interface HoldingSolution {
  /** What is dissolved. */
  readonly solution: string;
  /** How much of it, in `unit`. */
  readonly amount?: number;
  /** Unit of the amount. */
  readonly unit?: string;
  /** How much cold water it goes into. */
  readonly water?: string;
  /** Ascorbic acid in it, g. */
  readonly grams?: number;
}
export interface HoldingSolutions {
  /** The solutions, in the order of the table. */
  readonly solutions: readonly HoldingSolution[];
  /** Where each comes from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/**
 * The solutions that keep cut apples, apricots, nectarines, peaches and pears from darkening before they are packed.
 * They keep color only: none replaces the acid that a process requires.
 *
 * Source: Michigan State University record 01600943 and the extension pages in the basis.
 *
 * @example
 * ```ts
 * import { holdingSolutions } from 'stillroom/process';
 *
 * const { solutions } = holdingSolutions();
 * solutions[0]; // => { solution: 'ascorbic acid powder', amount: 1, unit: 'tsp', water: '1 gallon', grams: 3 }
 * ```
 */
export function holdingSolutions(): HoldingSolutions {
  const { rows } = asTable<SolutionRow>(table);
  return answer({
    solutions: rows.map(({ id, source, locator, obtained, seen, notes, ...solution }) => solution),
    basis: rows.map((row) => basisOf(row, 'solutions[].solution', row.solution)),
    cautions: [processCaution('holding-is-not-acid')],
  });
}
