import { branchOn, learn } from './branching';
import { bestLeft, dualSimplex, stand } from './dualSimplex';
import { push, takeBest } from './heap';
import { EVEN, floorOf, type Node, type Search, stepped } from './node';
import { type Ends, propagate } from './propagate';
import { roundedUp } from './rounding';
import { allBasic } from './tableau';

/** Pivots that count as a node where branches are tried. */
const PIVOTS_OF_A_NODE = 20;
const MOST_ROUNDS = 60;

/** Opens nodes until none is left or as many as may be are open; answers what could still be better. */
export function explore(search: Search, from: readonly Node[], most: number): Node[] {
  const open: Node[] = [];
  for (const node of from) push(open, node);
  let current: Node | undefined;
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
      if (!propagate(compact, node)) return undefined;
      continue;
    }
    return halves(search, node, choice);
  }
  return { next: node };
}

/** The best value of a node's relaxation; nothing where it holds no better plan, or was given up. */
export function solveNode(search: Search, { min, max }: Ends): number | undefined {
  const { tableau, compact } = search;
  tableau.min.set(min);
  tableau.max.set(max);
  stand(tableau);
  const floor = floorOf(search) - compact.constant;
  let ended = dualSimplex(tableau, floor);
  if (ended === 'unfinished') {
    allBasic(tableau);
    ended = dualSimplex(tableau, floor);
  }
  const reach = bestLeft(tableau) + compact.constant;
  if (ended === 'unfinished') search.lost = Math.max(search.lost, reach);
  return ended === 'optimal' ? reach : undefined;
}

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
    if (!propagate(search.compact, { min, max }, column)) return undefined;
    const distance = up ? Math.ceil(value) - value : value - Math.floor(value);
    return { min, max, reach: node.reach, depth: node.depth + 1, branch: { column, up, distance } };
  };
  const [first, second] = [half(upFirst), half(!upFirst)];
  const next = first ?? second;
  const other = first === undefined ? undefined : second;
  return { ...(next === undefined ? {} : { next }), ...(other === undefined ? {} : { other }) };
}
