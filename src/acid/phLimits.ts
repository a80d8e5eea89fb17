/** The lines between acid and low-acid food. They stand apart from the other tables of acid, which growth has no use for. */
import limitTable from '../../data/acid/ph-limits.json';
import { asTable, type Sourced } from '../sources/table';

export interface LimitRow extends Sourced {
  readonly id: string;
  readonly limit: string;
  readonly pH?: number;
  readonly relation?: '>' | '<=' | '<';
  readonly process?: string;
  readonly waterActivityAbove?: number;
  readonly food?: string;
  readonly foods?: readonly string[];
}
export const LIMITS = asTable<LimitRow>(limitTable).rows;

/** The row of this id; the id comes from our own code, so a missing row is met by every test. */
export function limitRow(id: string): LimitRow {
  const found = LIMITS.find((row) => row.id === id);
  if (found === undefined) throw new Error(`no limit ${id}`);
  return found;
}

/** A row with a pH: every one but the lists of foods. */
export function pHLimit(id: string): LimitRow & { readonly pH: number } {
  const { pH, ...row } = limitRow(id);
  if (pH === undefined) throw new Error(`no pH in the limit ${id}`);
  return { ...row, pH };
}

/** The law's low-acid food: above this pH, and above this water activity. */
export function lowAcidByLaw(): LimitRow & { readonly pH: number; readonly waterActivityAbove: number } {
  const { waterActivityAbove, ...row } = pHLimit('law-low-acid');
  if (waterActivityAbove === undefined) throw new Error('no water activity in the limit law-low-acid');
  return { ...row, waterActivityAbove };
}
