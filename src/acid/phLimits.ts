/** The lines between acid and low-acid food. They are apart from the other tables of acid, which growth has no use for. */
import * as z from 'zod/mini';
import limitTable from '../../data/acid/ph-limits.json';
import { id, type RowOf, sourcedColumns, text } from '../sources/columns';
import { asTable } from '../sources/table';

export const limitRowSchema = () =>
  z.strictObject({
    id: id(),
    limit: text(),
    pH: z.exactOptional(z.number().check(z.gte(0), z.lte(14))),
    relation: z.exactOptional(z.enum(['>', '<=', '<'])),
    process: z.exactOptional(text()),
    waterActivityAbove: z.exactOptional(z.literal(0.85)),
    food: z.exactOptional(id()),
    foods: z.exactOptional(z.array(id()).check(z.minLength(1))),
    printed: z.exactOptional(z.array(text())),
    ...sourcedColumns(),
  });
export type LimitRow = RowOf<typeof limitRowSchema>;
export const LIMITS = asTable<LimitRow>(limitTable).rows;

/** The row of this id; the id comes from our own code, so a missing row is met by every test. */
export function limitRow(line: string): LimitRow {
  const found = LIMITS.find((row) => row.id === line);
  if (found === undefined) throw new Error(`no limit ${line}`);
  return found;
}

/** A row with a pH: every one but the lists of foods. */
export function pHLimit(line: string): LimitRow & { readonly pH: number } {
  const { pH, ...row } = limitRow(line);
  if (pH === undefined) throw new Error(`no pH in the limit ${line}`);
  return { ...row, pH };
}

/** The law's low-acid food: above this pH, and above this water activity. */
export function lowAcidByLaw(): LimitRow & { readonly pH: number; readonly waterActivityAbove: number } {
  const { waterActivityAbove, ...row } = pHLimit('law-low-acid');
  if (waterActivityAbove === undefined) throw new Error('no water activity in the limit law-low-acid');
  return { ...row, waterActivityAbove };
}
