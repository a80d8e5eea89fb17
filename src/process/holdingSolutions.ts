import table from '../../data/process/anti-darkening.json';
import { answer } from '../common/answer';
import type { Basis, Caution } from '../sources/basis';
import { asTable, basisOf, type Sourced } from '../sources/table';
import { processCaution } from './cautions';

interface SolutionRow extends Sourced {
  readonly solution: string;
  readonly amount?: number;
  readonly unit?: string;
  readonly water?: string;
  readonly grams?: number;
}

/** A solution that cut fruit is held in: how much of what, in how much cold water. */
export interface HoldingSolution {
  readonly solution: string;
  readonly amount?: number;
  readonly unit?: string;
  readonly water?: string;
  /** Ascorbic acid in it, g. */
  readonly grams?: number;
}
export interface HoldingSolutions {
  readonly solutions: readonly HoldingSolution[];
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * The solutions that keep cut apples, apricots, nectarines, peaches and pears from darkening before they are packed.
 * They keep colour only: none replaces the acid that a process requires.
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
    solutions: rows.map(({ source, locator, obtained, seen, notes, ...solution }) => solution),
    basis: rows.map((row) => basisOf(row, row.solution)),
    cautions: [processCaution('holding-is-not-acid')],
  });
}
