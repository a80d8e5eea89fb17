/** How close a pH reading is. It is apart from the other tables of acid, which a legal line has no use for. */
import * as z from 'zod/mini';
import readingTable from '../../data/acid/ph-readings.json';
import { id, positive, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';

export const readingRow = () =>
  z.strictObject({
    id: id(),
    instrument: text(),
    /** pH units either way. */
    within: positive(),
    assumed: z.exactOptional(z.literal(true)),
    ...sourcedColumns(),
  });
export type ReadingRow = RowOf<typeof readingRow>;
export const READINGS = asTable<ReadingRow>(readingTable).rows;

/** What a reading is taken to be when its uncertainty is not given: a kitchen meter's. */
export const assumedReading = (): ReadingRow => READINGS.find((row) => row.assumed === true) as ReadingRow;

/** The closest that any instrument of the table reads. */
export const closestReading = (): ReadingRow =>
  READINGS.reduce((closest, row) => (row.within < closest.within ? row : closest));

/** Doubles do not hold 4.4 + 0.2 exactly; a reading on the limit is not above it. */
const NOISE = 1e-9;

/** Whether a pH is above a limit; a food on the limit is above it only where the rule says "below" for the acid side. */
export const isAbove = (pH: number, limit: number, onIsAbove = false): boolean =>
  onIsAbove ? pH >= limit - NOISE : pH > limit + NOISE;

/** Whether the two ends of a reading lie on two sides of a limit. */
export const isUndecided = (pH: number, within: number, limit: number, onIsAbove = false): boolean =>
  isAbove(pH + within, limit, onIsAbove) && !isAbove(pH - within, limit, onIsAbove);
