import * as z from 'zod/mini';
import table from '../../data/process/anti-darkening.json';
import { answer } from '../common/answer';
import { parseQuantity } from '../quantity/parseQuantity';
import type { Quantity } from '../quantity/types';
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
    unit: z.exactOptional(z.enum(['tsp', 'cup', 'mg'])),
    /** Tablets in it. */
    tablets: z.exactOptional(positive()),
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
  /** How much of it. */
  readonly amount?: Quantity<'mass'> | Quantity<'volume'>;
  /** How many tablets of it. */
  readonly tablets?: number;
  /** How much cold water it goes into. */
  readonly waterVolume?: Quantity<'volume'>;
  /** Ascorbic acid in it, in g. */
  readonly ascorbicAcid?: Quantity<'mass'>;
}
export interface HoldingSolutions {
  /** The solutions, in the order of the table. */
  readonly solutions: readonly HoldingSolution[];
  /** Where each comes from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/** A row as the answer holds it. */
const solutionOf = ({ solution, amount, unit, tablets, water, grams }: SolutionRow): HoldingSolution => ({
  solution,
  ...(amount === undefined || unit === undefined ? {} : { amount: { value: amount, unit } as Quantity<'volume'> }),
  ...(tablets === undefined ? {} : { tablets }),
  ...(water === undefined ? {} : { waterVolume: parseQuantity(water, 'volume') }),
  ...(grams === undefined ? {} : { ascorbicAcid: { value: grams, unit: 'g' } }),
});

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
 * solutions[0]; // => { solution: 'ascorbic acid powder', amount: { value: 1, unit: 'tsp' }, waterVolume: { value: 1, unit: 'gallon' }, ascorbicAcid: { value: 3, unit: 'g' } }
 * ```
 */
export function holdingSolutions(): HoldingSolutions {
  const { rows } = asTable<SolutionRow>(table);
  return answer({
    solutions: rows.map(solutionOf),
    basis: rows.map((row) => basisOf(row, 'solutions[].solution', row.solution)),
    cautions: [processCaution('holding-is-not-acid')],
  });
}
