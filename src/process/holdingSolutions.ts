import * as z from 'zod/mini';
import table from '../../data/process/anti-darkening.json';
import { parseQuantity } from '../quantity/parseQuantity';
import type { Quantity } from '../quantity/types';
import { id, positive, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';

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

/** The solutions in which cut fruit is held, in the order of the table, in the shape of the other rules. */
export const holdingRules = () =>
  asTable<SolutionRow>(table).rows.map(({ solution, amount, unit, tablets, water, grams, ...row }) => ({
    ...row,
    topic: 'holding cut fruit' as const,
    text: solution,
    ...(amount === undefined || unit === undefined ? {} : { amount: { value: amount, unit } as Quantity<'volume'> }),
    ...(tablets === undefined ? {} : { tablets }),
    ...(water === undefined ? {} : { waterVolume: parseQuantity(water, 'volume') }),
    ...(grams === undefined ? {} : { ascorbicAcid: { value: grams, unit: 'g' } as const }),
  }));
