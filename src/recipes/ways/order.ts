/** In which order cooks usually choose among ways to keep a food. */

import * as z from 'zod/mini';
import orderTable from '../../../data/recipes/usual-order.json';
import { foodOf, KINDS } from '../../foods/tables';
import { id, practiceColumns, type RowOf } from '../../sources/columns';
import { asTable } from '../../sources/table';
import { MAKES, type Makes } from '../rows/tables';
import { hardest, type Lack } from './lacking';

export const orderRow = () =>
  z.strictObject({
    id: id(),
    /** The kinds of food it is for, where no other row names the food. */
    kinds: z.exactOptional(z.array(z.enum(KINDS)).check(z.minLength(1))),
    /** Or the foods it is for. */
    foods: z.exactOptional(z.array(id()).check(z.minLength(1))),
    /** What they become, the usual first. */
    makes: z.array(z.enum(MAKES)).check(z.minLength(1)),
    /** Recipes that come before others that make the same. */
    first: z.exactOptional(z.array(id()).check(z.minLength(1))),
    ...practiceColumns(),
  });
type OrderRow = RowOf<typeof orderRow>;
const rows = asTable<OrderRow>(orderTable).rows;

function rowFor(food: string): OrderRow | undefined {
  const { kind } = foodOf(food);
  return rows.find(({ foods }) => foods?.includes(food)) ?? rows.find(({ kinds }) => kinds?.includes(kind));
}

/**
 * The place of what is made in the order for a food. `turn` counts what makes the same, from 0: each takes its own place
 * in the order, those beyond the last such place share that. What the order does not name comes last.
 */
export function placeOf(food: string, makes: Makes, turn = 0): number {
  const order = rowFor(food)?.makes ?? [];
  const places = order.flatMap((each, place) => (each === makes ? [place] : []));
  return places[Math.min(turn, places.length - 1)] ?? order.length;
}

/** The first place of what is made in the order for a food; nothing where the order does not name it. */
export function placeInOrder(food: string, makes: Makes): number | undefined {
  const place = (rowFor(food)?.makes ?? []).indexOf(makes);
  return place === -1 ? undefined : place;
}

/** A way with what its place in the order depends on. */
interface Placed {
  readonly way: { readonly recipe: string; readonly makes: Makes; readonly lacking: readonly Lack[] };
  readonly row: { readonly foods: readonly string[] };
  /** Id of the food that it is a way for. */
  readonly food: string;
}

/** The place of a recipe among those that make the same of a food: the usual ones first. */
export function amongTheSame(food: string, recipe: string): number {
  const first = rowFor(food)?.first ?? [];
  const place = first.indexOf(recipe);
  return place === -1 ? first.length : place;
}

const inOrder = <T>(list: readonly T[], ...keys: readonly ((each: T) => number)[]): T[] =>
  [...list].sort((one, other) => {
    for (const key of keys) {
      const differ = key(one) - key(other);
      if (differ !== 0) return differ;
    }
    return 0;
  });

/**
 * Ways in the order that an experienced cook would name them: by what is lacking, then by what they make, a page for the
 * one food before a page for many.
 */
export function usualOrder<T extends Placed>(ways: readonly T[]): T[] {
  const lacks = ({ way: { lacking } }: Placed): number => hardest(lacking);
  const howMany = ({ way: { lacking } }: Placed): number => lacking.length;
  const width = ({ row }: Placed): number => row.foods.length;
  const turns = new Map<string, number>();
  const placed = inOrder(ways, lacks, howMany, ({ way, food }) => amongTheSame(food, way.recipe), width).map((each) => {
    const same = [lacks(each), each.food, each.way.makes].join();
    const turn = turns.get(same) ?? 0;
    turns.set(same, turn + 1);
    return { each, place: placeOf(each.food, each.way.makes, turn) };
  });
  // sorting keeps the order of the first round where the places are the same
  return inOrder(
    placed,
    ({ each }) => lacks(each),
    ({ each }) => howMany(each),
    ({ place }) => place,
  ).map(({ each }) => each);
}
