import { seeded } from '../../common/seeded';
import type { Search } from './node';
import { type Ends, propagate } from './propagate';
import { roundedUp } from './rounding';
import { explore, keep, solveNode } from './search';
import { worthOf } from './tableau';

const WHOLE = 1e-6;
const MOST_ROUNDS = 60;
/** In a dive, what is this near to a whole number is made it. */
const NEAR = 0.15;
/** A dive ends after this number of columns that could be rounded neither way. */
const MOST_MISSED = 3;

/**
 * Plans without a search, as a start for one: by rounding down; by a dive; and by a short search of what the best of
 * them and the relaxation do not agree on (relaxation induced neighborhoods, by Danna, Rothberg and Le Pape; recalled).
 */
export function firstPlans(search: Search, root: Ends, most: number): void {
  downhill(search, root);
  if (search.nodes < most) dive(search, root);
  for (let round = 0; round < 2 && search.nodes < most; round++) {
    const before = search.best;
    around(search, root, most);
    if (search.best === before) return;
  }
}

/** The valued columns, and those in the way of rounding up, that are not whole. */
function splitOf(search: Search): { readonly split: readonly number[]; readonly whole: Float64Array | undefined } {
  const { compact, tableau, valued } = search;
  const { columns, inTheWay } = roundedUp(compact.rows, compact.cost, search.wholes, tableau.value);
  const split = [...valued, ...inTheWay].filter((column) => {
    const value = tableau.value[column] as number;
    return Math.abs(value - Math.round(value)) > WHOLE;
  });
  return { split, whole: split.length === 0 && inTheWay.length === 0 ? columns : undefined };
}

/** What is not whole is rounded down, all of it at once, and the rest settled anew. With musts it may find no plan. */
function downhill(search: Search, root: Ends): void {
  const { compact, tableau } = search;
  const node = { min: root.min.slice(), max: root.max.slice() };
  for (let round = 0; round < MOST_ROUNDS; round++) {
    search.nodes += 1;
    if (solveNode(search, node) === undefined) return;
    const { split, whole } = splitOf(search);
    if (whole !== undefined) keep(search, worthOf(tableau) + compact.constant, whole);
    if (split.length === 0) return;
    for (const column of split) node.max[column] = Math.floor((tableau.value[column] as number) + WHOLE);
    if (!propagate(compact, node)) return;
  }
}

/** What is nearly whole is made whole, or else the one that is nearest, and the rest settled anew. */
function dive(search: Search, root: Ends): void {
  const { compact, tableau } = search;
  let node: Ends = { min: root.min.slice(), max: root.max.slice() };
  let missed = 0;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    search.nodes += 1;
    if (solveNode(search, node) === undefined) return;
    const { split, whole } = splitOf(search);
    if (whole !== undefined) keep(search, worthOf(tableau) + compact.constant, whole);
    const nearest = split
      .map((column) => {
        const value = tableau.value[column] as number;
        return { column, value, off: Math.abs(value - Math.round(value)) };
      })
      .sort((one, other) => one.off - other.off || one.column - other.column);
    const near = nearest.filter(({ off }, index) => index === 0 || off < NEAR);
    if (near.length === 0) return;
    for (const { column, value } of near) {
      const next = [Math.round(value), Math.round(value) > value ? Math.floor(value) : Math.ceil(value)]
        .map((to) => held(search, node, column, to))
        .find((each) => each !== undefined);
      if (next !== undefined) node = next;
      else if (++missed > MOST_MISSED) return;
    }
  }
}

/** The ends with one column held at a value; nothing where that cannot be. */
function held({ compact }: Search, { min, max }: Ends, column: number, to: number): Ends | undefined {
  if (to < (min[column] as number) || to > (max[column] as number)) return undefined;
  const ends = { min: min.slice(), max: max.slice() };
  ends.min[column] = to;
  ends.max[column] = to;
  return propagate(compact, ends, column) ? ends : undefined;
}

/** Searches around the best plan: what it shares with the relaxation stays as it is. */
function around(search: Search, root: Ends, most: number): void {
  search.nodes += 1;
  if (search.best === undefined || solveNode(search, root) === undefined) return;
  const { columns } = search.best;
  const { value } = search.tableau;
  const shared = search.valued.filter(
    (column) => Math.abs(Math.round(columns[column] as number) - (value[column] as number)) <= WHOLE,
  );
  searchWith(search, root, shared, Math.min(most, search.nodes + most / 4));
}

/** Searches with some columns as they are in the best plan. */
function searchWith(search: Search, root: Ends, held: readonly number[], most: number): void {
  const { best, compact } = search;
  if (best === undefined) return;
  const node = { min: root.min.slice(), max: root.max.slice(), reach: Number.POSITIVE_INFINITY, depth: 0 };
  for (const column of held) {
    const own = Math.round(best.columns[column] as number);
    node.min[column] = own;
    node.max[column] = own;
  }
  if (propagate(compact, node)) explore(search, [node], most);
}

/** Nodes of one look around the best plan, the share of it that stays, and looks without a better plan at the end. */
const LOOK = 120;
const STAYS = 0.7;
const MOST_IN_VAIN = 12;

/** Looks for better plans around the best one where a search is long: drawn parts of it stay, always the same ones. */
export function improve(search: Search, root: Ends, most: number): void {
  const random = seeded(1);
  for (let vain = 0; vain < MOST_IN_VAIN && search.nodes < most; vain++) {
    const before = search.best;
    const stays = search.valued.filter(() => random() < STAYS);
    searchWith(search, root, stays, Math.min(most, search.nodes + LOOK));
    if (search.best !== before) vain = -1;
  }
}
