/** The tables of keeping dried food: their schemas and rows. */
import * as z from 'zod/mini';
import oxygenTable from '../../../data/drying/keep/oxygen.json';
import generalTable from '../../../data/drying/keep/storage-general.json';
import monthsTable from '../../../data/drying/keep/storage-months.json';
import { id, type RowOf, sourcedColumns } from '../../sources/columns';
import { asTable } from '../../sources/table';
import { endsColumn, foodColumns, type ItemRow, itemRow, rowOf } from '../rows';

/** How many months a dried food keeps, by the temperature of the store. */
export const monthsRow = () =>
  z.strictObject({
    id: id(),
    ...foodColumns(),
    kind: z.enum(['fruit', 'vegetable']),
    months_70degF: endsColumn(),
    months_60degF: z.nullable(endsColumn()),
    ...sourcedColumns(),
  });
export type MonthsRow = RowOf<typeof monthsRow>;
export const monthsRows = asTable<MonthsRow>(monthsTable).rows;

/** A general figure of keeping dried food. */
export const storageRow = () =>
  z.extend(itemRow(), {
    temperature_degF: z.exactOptional(z.number()),
    moisture_percent: z.exactOptional(endsColumn()),
  });
export type StorageRow = RowOf<typeof storageRow>;
const storageRows = asTable<StorageRow>(generalTable).rows;
/** The row of this id. */
export const storageItem = (wanted: string): StorageRow => rowOf(storageRows, wanted);

const oxygenRows = asTable<ItemRow>(oxygenTable).rows;
/** The row of this id. */
export const oxygenItem = (wanted: string): ItemRow => rowOf(oxygenRows, wanted);
