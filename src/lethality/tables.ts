/** The schemas of the tables of this module. */
import * as z from 'zod/mini';
import { id, positive, sourcedColumns, text } from '../sources/columns';

const figure = () => z.nullable(positive());

export const resistanceRow = () =>
  z
    .strictObject({
      id: id(),
      organism: text(),
      medium: z.string(),
      reference: figure(),
      dLow: figure(),
      dHigh: figure(),
      zLow: figure(),
      zHigh: figure(),
      unit: z.enum(['degC', 'degF']),
      ...sourcedColumns(),
      notes: z.exactOptional(z.string()),
    })
    .check(
      z.refine((row) => (row.dLow ?? 0) <= (row.dHigh ?? 0) && (row.zLow ?? 0) <= (row.zHigh ?? 0)),
      // a D value means nothing without its temperature
      z.refine((row) => (row.dLow === null) === (row.reference === null)),
    );

export const publishedRow = () =>
  z
    .strictObject({
      id: id(),
      about: text(),
      what: text(),
      low: positive(),
      high: positive(),
      time: z.enum(['min', 's']),
      reference: positive(),
      z: figure(),
      unit: z.enum(['degC', 'degF']),
      ...sourcedColumns(),
      notes: z.exactOptional(z.string()),
    })
    .check(z.refine((row) => row.low <= row.high));
