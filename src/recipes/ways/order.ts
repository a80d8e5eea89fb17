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

const orderOf = (kind: FoodKind): readonly Makes[] => rows.find(({ kinds }) => kinds.includes(kind))?.makes ?? [];

/** The place of what is made in the order for a kind of food; nothing where the order does not name it. */
export function placeInOrder(kind: FoodKind, makes: Makes): number | undefined {
  const place = orderOf(kind).indexOf(makes);
  return place === -1 ? undefined : place;
}

/** The same where what the order does not name comes last. */
export const rankOf = (kind: FoodKind, makes: Makes): number => placeInOrder(kind, makes) ?? orderOf(kind).length;
