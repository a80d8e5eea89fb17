/** In which order cooks usually choose among ways to keep a kind of food. */

import * as z from 'zod/mini';
import orderTable from '../../../data/recipes/usual-order.json';
import type { FoodKind } from '../../foods/tables';
import { KINDS } from '../../foods/tables';
import { id, practiceColumns, type RowOf } from '../../sources/columns';
import { asTable } from '../../sources/table';
import { MAKES, type Makes } from '../rows/tables';

export const orderRow = () =>
  z.strictObject({
    id: id(),
    /** The kinds of food it is for. */
    kinds: z.array(z.enum(KINDS)).check(z.minLength(1)),
    /** What they become, the usual first. */
    makes: z.array(z.enum(MAKES)).check(z.minLength(1)),
    ...practiceColumns(),
  });
type OrderRow = RowOf<typeof orderRow>;
const rows = asTable<OrderRow>(orderTable).rows;

/** The place of what is made in the order for a kind of food; what the order does not name comes last. */
export function rankOf(kind: FoodKind, makes: Makes): number {
  const order = rows.find(({ kinds }) => kinds.includes(kind))?.makes ?? [];
  const place = order.indexOf(makes);
  return place === -1 ? order.length : place;
}
