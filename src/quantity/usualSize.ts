import * as z from 'zod/mini';
import sizesJson from '../../data/quantity/usual-sizes.json';
import { forReaders, id, practiceColumns, type RowOf, text } from '../sources/columns';
import { asTable } from '../sources/table';
import { inUnit } from './scale';
import type { Dimension } from './units';

/** How small and how large a quantity of each dimension a kitchen writes down. */
export const sizeRow = () =>
  z.strictObject({
    id: forReaders(id()),
    dimension: text(),
    low: z.number(),
    high: z.number(),
    unit: text(),
    ...practiceColumns(),
  });

const rows: ReadonlyMap<string, RowOf<typeof sizeRow>> = new Map(
  asTable<RowOf<typeof sizeRow>>(sizesJson).rows.map((row) => [row.dimension, row]),
);

/** Whether a kitchen writes down a quantity of this size; says nothing against one that is written in one way. */
export function isUsualSize(value: number, unit: string, dimension: Dimension): boolean {
  const row = rows.get(dimension);
  if (row === undefined) return true;
  const size = inUnit(value, unit, row.unit);
  return size >= row.low && size <= row.high;
}
