import { branchOn, type Experience, learn } from './branching';
import type { Compact } from './compact';
import { dualSimplex, stand } from './dualSimplex';
import { type Ends, propagate } from './propagate';
import { roundedUp } from './rounding';
import { type Tableau, worthOf } from './tableau';

/** Values of the columns of a program, and what they are worth. */
export interface Point {
  readonly worth: number;
  readonly columns: Float64Array;
}

/** What is left of the program where some whole variables have narrower ends, and the most it can be worth. */
export interface Node extends Ends {
  reach: number;
  readonly depth: number;
  /** What it was made by. */
  readonly branch?: { readonly column: number; readonly up: boolean; readonly distance: number };
}

/** A search at work. */
export interface Search {
  readonly compact: Compact;
  readonly tableau: Tableau;
  /** The largest step that every possible worth is a multiple of; 0 where there is none. */
  readonly grain: number;
  /** Columns that are whole, and among them those that add to the objective. */
  readonly wholes: readonly number[];
  readonly valued: readonly number[];
  readonly experience: Experience;
  best: Point | undefined;
  /** Nodes opened, and what is tried to choose a branch counted with them. */
  nodes: number;
}

/** A part of the worth that no better plan is looked for. */
const EVEN = 1e-7;
/** Pivots that count as a node where branches are tried. */
const PIVOTS_OF_A_NODE = 20;
const MOST_ROUNDS = 60;

/** What a branch must be able to reach more than, to hold a better plan than the best so far. */
export function floorOf({ best, grain }: Pick<Search, 'best' | 'grain'>): number {
  if (best === undefined) return Number.NEGATIVE_INFINITY;
  return best.worth + (grain > 0 ? grain * 0.99 - EVEN : EVEN * Math.max(1, Math.abs(best.worth)));
}

/** The most that whole plans within a reach can be worth. */
export const stepped = (grain: number, reach: number): number =>
  grain > 0 ? Math.floor((reach + 1e-6) / grain) * grain : reach;

/** Opens nodes until none is left or as many as may be are open; answers what could still be better. */
export function explore(search: Search, root: Node, most: number): Node[] {
  const open: Node[] = [];
  let current: Node | undefined = root;
  while (current !== undefined || open.length > 0) {
    if (search.nodes >= most) break;
    current ??= takeBest(open);
    if (current === undefined || current.reach <= floorOf(search)) {
      current = undefined;
      continue;
    }
    const children = opened(search, current);
    current = children?.next;
    if (children?.other !== undefined) push(open, children.other);
  }
  const left = current === undefined ? open : [...open, current];
  return left.filter(({ reach }) => reach > floorOf(search));
}

/** Opens a node: nothing where it holds no better plan, or else its two halves. */
function opened(search: Search, node: Node): { next?: Node; other?: Node } | undefined {
  const { tableau, compact } = search;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    search.nodes += 1;
    const worth = solveNode(search, node);
    if (worth === undefined) return undefined;
    if (round === 0) learnFrom(search, node, worth);
    node.reach = Math.min(node.reach, stepped(search.grain, worth));
    if (node.reach <= floorOf(search)) return undefined;
    fixByCost(search, node, worth);
    const up = roundedUp(compact.rows, compact.cost, search.wholes, tableau.value);
    const before = tableau.pivots;
    const choice = branchOn(search, node, worth, up.inTheWay);
    search.nodes += (tableau.pivots - before) / PIVOTS_OF_A_NODE;
    if (choice === 'whole') {
      keep(search, worth, up.columns);
      return undefined;
    }
    if (choice === 'none') return undefined;
    if (choice === 'narrowed') {
      if (!propagate(compact.rows, compact.integer, node)) return undefined;
      continue;
    }
    return halves(search, node, choice);
  }
  return { next: node };
}

/** The best value of a node's relaxation; nothing where it holds no better plan. */
export function solveNode({ tableau, compact, best, grain }: Search, { min, max }: Ends): number | undefined {
  tableau.min.set(min);
  tableau.max.set(max);
  stand(tableau);
  const ended = dualSimplex(tableau, floorOf({ best, grain }) - compact.constant);
  return ended === 'optimal' || ended === 'unfinished' ? reachOf(tableau) + compact.constant : undefined;
}

/** No worth above this is left: the objective of the basis at hand, which is dual feasible. */
const reachOf = (tableau: Tableau): number => {
  const { columns, reduced, free, value } = tableau;
  let sum = 0;
  for (let place = 0; place < columns; place++)
    sum += (reduced[place] as number) * (value[free[place] as number] as number);
  return sum;
};

function learnFrom({ experience }: Search, { branch, reach }: Node, worth: number): void {
  if (branch !== undefined) learn(experience, branch.column, branch.up, Math.max(0, reach - worth), branch.distance);
}

/** A plan that is better than the best so far is the best. */
export function keep(search: Search, worth: number, columns: Float64Array): void {
  if (search.best === undefined || worth > search.best.worth) search.best = { worth, columns };
}

/** Whole variables that cost more by a step than is left to lose stay at their bounds. */
function fixByCost(search: Search, { min, max }: Node, worth: number): void {
  const { tableau, compact } = search;
  const spare = worth - floorOf(search);
  if (!Number.isFinite(spare)) return;
  for (let place = 0; place < tableau.columns; place++) {
    const column = tableau.free[place] as number;
    const rate = Math.abs(tableau.reduced[place] as number);
    if (column >= compact.names.length || compact.integer[column] === 0 || rate < EVEN) continue;
    const steps = Math.floor(spare / rate + EVEN);
    if (tableau.atMax[column] === 1) min[column] = Math.max(min[column] as number, (max[column] as number) - steps);
    else max[column] = Math.min(max[column] as number, (min[column] as number) + steps);
  }
}

/** A node cut in two at a value that is not whole: first the side that loses less. */
function halves(
  search: Search,
  node: Node,
  { column, upFirst }: { readonly column: number; readonly upFirst: boolean },
): { next?: Node; other?: Node } {
  const value = search.tableau.value[column] as number;
  const half = (up: boolean): Node | undefined => {
    const [min, max] = [node.min.slice(), node.max.slice()];
    if (up) min[column] = Math.ceil(value);
    else max[column] = Math.floor(value);
    if (!propagate(search.compact.rows, search.compact.integer, { min, max })) return undefined;
    const distance = up ? Math.ceil(value) - value : value - Math.floor(value);
    return { min, max, reach: node.reach, depth: node.depth + 1, branch: { column, up, distance } };
  };
  const [first, second] = [half(upFirst), half(!upFirst)];
  const next = first ?? second;
  const other = first === undefined ? undefined : second;
  return { ...(next === undefined ? {} : { next }), ...(other === undefined ? {} : { other }) };
}

/**
 * A plan without a search: what is not whole and cannot be rounded up is rounded down, all of it at once, and the rest
 * is settled anew, until everything is whole. With musts it may find none.
 */
export function downhill(search: Search, root: Ends): void {
  const { compact, tableau, valued } = search;
  const node = { min: root.min.slice(), max: root.max.slice() };
  for (let round = 0; round < MOST_ROUNDS; round++) {
    search.nodes += 1;
    if (solveNode(search, node) === undefined) return;
    const { columns, inTheWay } = roundedUp(compact.rows, compact.cost, search.wholes, tableau.value);
    const split = [...valued, ...inTheWay].filter((column) => {
      const value = tableau.value[column] as number;
      return Math.abs(value - Math.round(value)) > 1e-6;
    });
    if (split.length === 0) {
      if (inTheWay.length === 0) keep(search, worthOf(tableau) + compact.constant, columns);
      return;
    }
    for (const column of split) node.max[column] = Math.floor((tableau.value[column] as number) + 1e-6);
    if (!propagate(compact.rows, compact.integer, node)) return;
  }
}

/** Whether one open node comes before another: it can reach more, or as much and lies deeper. */
const before = (one: Node, other: Node): boolean =>
  one.reach > other.reach || (one.reach === other.reach && one.depth > other.depth);

/** Puts a node into a heap. */
function push(open: Node[], node: Node): void {
  let at = open.push(node) - 1;
  while (at > 0) {
    const above = (at - 1) >> 1;
    if (!before(node, open[above] as Node)) break;
    open[at] = open[above] as Node;
    at = above;
  }
  open[at] = node;
}

/** Takes the best node from a heap. */
function takeBest(open: Node[]): Node | undefined {
  const [best, last] = [open[0], open.pop()];
  if (last === undefined || open.length === 0) return best;
  let at = 0;
  for (;;) {
    let below = 2 * at + 1;
    if (below >= open.length) break;
    if (below + 1 < open.length && before(open[below + 1] as Node, open[below] as Node)) below += 1;
    if (!before(open[below] as Node, last)) break;
    open[at] = open[below] as Node;
    at = below;
  }
  open[at] = last;
  return best;
}
