import table from '../../../data/drying/settings.json';
import { asTable, type Sourced } from '../../sources/table';

/** A row of a table of single figures. */
export interface ItemRow extends Sourced {
  readonly item: string;
  readonly value: number | string | readonly number[] | Readonly<Record<string, number>>;
  readonly unit?: string;
}

const { rows } = asTable<ItemRow>(table);

/** The row of this item; items are fixed in the tables and every one asked for is tested. */
export function itemOf(items: readonly ItemRow[], item: string): ItemRow {
  const found = items.find((row) => row.item === item);
  if (found === undefined) throw new Error(`no item ${item}`);
  return found;
}

/** The row of a dryer setting, a target moisture or a finishing rule. */
export const setting = (item: string): ItemRow => itemOf(rows, item);

/** A row's one number. */
export const numberOf = (row: ItemRow): number => row.value as number;

/** A row's least and most. */
export const endsOf = (row: ItemRow): readonly [number, number] => row.value as unknown as readonly [number, number];
