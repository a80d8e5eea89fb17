import type { Node } from './node';

/** Whether one open node comes before another: it can reach more, or as much and lies deeper. */
const before = (one: Node, other: Node): boolean =>
  one.reach > other.reach || (one.reach === other.reach && one.depth > other.depth);

/** Puts a node into a heap. */
export function push(open: Node[], node: Node): void {
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
export function takeBest(open: Node[]): Node | undefined {
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
