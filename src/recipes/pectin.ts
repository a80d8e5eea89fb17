/** The pectin of a recipe on a scale (powdered) or in a measure (liquid), where its package has the usual size. */
import * as z from 'zod/mini';
import packagesTable from '../../data/recipes/pectin-packages.json';
import type { Quantity } from '../quantity/types';
import { positive, type RowOf, sourcedColumns } from '../sources/columns';
import { asTable } from '../sources/table';
import type { IngredientRow } from './rows/tables';

export const packageRow = () =>
  z.strictObject({
    /** The kind of pectin. */
    ...sourcedColumns(),
    id: z.enum(['powdered', 'liquid']),
    grams: z.exactOptional(positive()),
    milliliters: z.exactOptional(positive()),
  });
const rows = asTable<RowOf<typeof packageRow>>(packagesTable).rows;

/** The kind of pectin of a line. */
export const pectinKind = ({ food }: IngredientRow): 'powdered' | 'liquid' =>
  food === 'liquid-pectin' ? 'liquid' : 'powdered';

/** What the packages of a line weigh or hold. */
export function pectinIn(line: IngredientRow): Quantity<'mass'> | Quantity<'volume'> | undefined {
  if (line.packages === undefined) return undefined;
  const { grams, milliliters } = rows.find(({ id }) => id === pectinKind(line)) ?? {};
  if (grams !== undefined) return { value: grams * line.packages, unit: 'g' };
  return milliliters === undefined ? undefined : { value: milliliters * line.packages, unit: 'mL' };
}
