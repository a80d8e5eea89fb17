import { costOf, type Effort } from '../makes/effort';
import type { Program } from './linearProgram';
import { decidedOf, type Range, type Ranges, type Relaxed, relaxation } from './relaxation';
import { lowered, rounded, roundedUp, WHOLE } from './rounding';

export interface Solved {
  readonly feasible: boolean;
  /** Proven best; otherwise the best found, and `gap` says how far the proof reaches. */
  readonly optimal: boolean;
  /** How much better a plan could still be, relative to this one: 0 when proven best. */
  readonly gap: number;
  readonly worth: number;
  readonly values: ReadonlyMap<string, number>;
}

export interface SolveOptions {
  /** A second objective, to choose among the plans that are equally good: the whole numbers stay as found. */
  readonly among?: ReadonlyMap<string, number>;
  /** A plan that is known to meet every bound: the search only looks for better ones. */
  readonly start?: Solved;
  /** Nodes the search may open, where fewer than usual will do. */
  readonly nodes?: number;
  /** What the nodes that are opened are taken off. */
  readonly effort?: Pick<Effort, 'nodes'>;
}

/**
 * Nodes the search may open before it returns the best so far with its gap. A node costs about rows x rows x columns
 * of arithmetic, so that a large day gets fewer of them and no day takes more than some seconds.
 */
export const mostNodes = (program: Program): number =>
  Math.max(200, Math.min(50_000, Math.floor(1.5e10 / costOf(program))));
/** Nodes after which a large day that has no plan yet is given one by rounding down. */
const LONG_DIVE = 100;
const MOST_ROUNDS = 50;

/** No plan is worth more than this. */
export const reachOf = ({ worth, gap }: Solved): number => worth + gap * Math.max(Math.abs(worth), WHOLE);

interface Node extends Relaxed {
  readonly ranges: Ranges;
  readonly depth: number;
}

/** The largest step that every possible worth of a whole solution is a multiple of; 0 when there is none. */
function granularity({ variables }: Program): number {
  const GRAIN = 1e-4; // a hundredth of a cent
  let divisor = 0;
  for (const { worth, integer } of variables) {
    if (worth === 0) continue;
    const grains = worth / GRAIN;
    if (!integer || Math.abs(grains - Math.round(grains)) > 1e-6) return 0;
    let [a, b] = [divisor, Math.abs(Math.round(grains))];
    while (b !== 0) [a, b] = [b, a % b];
    divisor = a;
  }
  return divisor * GRAIN;
}

/** What branching on a variable has cost before, for choosing the next one. */
interface Experience {
  down: number;
  downs: number;
  up: number;
  ups: number;
}

function branchingVariable(
  node: Node,
  wholes: readonly string[],
  experience: ReadonlyMap<string, Experience>,
): string | undefined {
  let best: string | undefined;
  let bestScore = -1;
  for (const name of wholes) {
    const value = decidedOf(node.values, name);
    const part = value - Math.floor(value);
    if (part < WHOLE || part > 1 - WHOLE) continue;
    const known = experience.get(name);
    const down = part * (known && known.downs > 0 ? known.down / known.downs : 1);
    const up = (1 - part) * (known && known.ups > 0 ? known.up / known.ups : 1);
    const score = Math.max(down, 1e-6) * Math.max(up, 1e-6);
    if (score > bestScore) {
      best = name;
      bestScore = score;
    }
  }
  return best;
}

/**
 * Solves a mixed integer linear program: branch and bound over the linear relaxations of package `yalps`.
 *
 * The package can search too, but on a day's plan with several lots it often ends without any plan at all.
 * This one dives for a plan first, then proves: a branch is closed when its bound cannot beat the best plan by the
 * smallest step that worths come in.
 *
 * @param options - see `SolveOptions`
 * @returns the best plan and whether it is proven best; `feasible: false` when no values meet every bound
 */
export function solve(program: Program, { among, start, nodes: given, effort }: SolveOptions = {}): Solved {
  const search: Search = {
    program,
    relax: relaxation(program),
    grain: granularity(program),
    experience: new Map(),
    wholes: program.variables.filter(({ integer }) => integer).map(({ name }) => name),
    valuedWholes: program.variables.filter(({ integer, worth }) => integer && worth !== 0).map(({ name }) => name),
    best: start?.feasible ? { worth: start.worth, values: start.values } : undefined,
    nodes: 0,
    dived: false,
  };
  const root = search.relax(new Map());
  const left = root === undefined ? [] : explore(search, root, given ?? mostNodes(program));
  // the root costs what a node does
  if (effort !== undefined) effort.nodes = Math.max(0, effort.nodes - search.nodes - 1);
  const { best, wholes } = search;
  if (root === undefined || best === undefined)
    return { feasible: false, optimal: left.length === 0, gap: 0, worth: 0, values: new Map() };
  const whole = rounded(best.values, wholes);
  const held = new Map(wholes.map((name) => [name, { min: decidedOf(whole, name), max: decidedOf(whole, name) }]));
  const settled = among === undefined ? undefined : search.relax(held, among);
  const reach = Math.max(best.worth, ...left.map(({ worth }) => worth));
  return {
    feasible: true,
    optimal: left.length === 0,
    gap: (reach - best.worth) / Math.max(Math.abs(best.worth), WHOLE),
    worth: best.worth,
    values: lowered(program, settled === undefined ? whole : rounded(settled.values, wholes)),
  };
}

/** A search at work. */
interface Search {
  readonly program: Program;
  readonly relax: ReturnType<typeof relaxation>;
  readonly grain: number;
  readonly experience: Map<string, Experience>;
  readonly wholes: readonly string[];
  readonly valuedWholes: readonly string[];
  best: Relaxed | undefined;
  nodes: number;
  dived: boolean;
}

/** Whether a branch with this bound may hold a better plan than the best so far. */
function couldBeat({ best, grain }: Search, bound: number): boolean {
  if (best === undefined) return true;
  const reach = grain > 0 ? Math.floor((bound + 1e-6) / grain) * grain : bound;
  return reach > best.worth + Math.max(1e-9, 1e-9 * Math.abs(best.worth)) + (grain > 0 ? grain / 2 : 0);
}

/** Opens nodes until none is left or as many as may be are open; answers what could still be better. */
function explore(search: Search, root: Relaxed, most: number): Node[] {
  const open: Node[] = [{ ...root, ranges: new Map(), depth: 0 }];
  let current: Node | undefined;
  while (search.nodes < most) {
    current ??= takeBest(open);
    if (current === undefined) break;
    const name = couldBeat(search, current.worth) ? branchOf(search, current) : undefined;
    if (name === undefined) {
      current = undefined;
      continue;
    }
    if (!search.dived && search.nodes >= Math.min(LONG_DIVE, most / 2)) {
      search.dived = true;
      const quick = downhill(search.program, search.relax, search.valuedWholes);
      if (quick !== undefined && couldBeat(search, quick.worth)) search.best = quick;
    }
    const down = child(search, current, name, 'down');
    const upper = child(search, current, name, 'up');
    // dive on the better side, keep the other for later
    const [next, other] =
      (upper?.worth ?? Number.NEGATIVE_INFINITY) > (down?.worth ?? Number.NEGATIVE_INFINITY)
        ? [upper, down]
        : [down, upper];
    if (other !== undefined) open.push(other);
    current = next;
  }
  return [...open, ...(current === undefined ? [] : [current])].filter(({ worth }) => couldBeat(search, worth));
}

/** The variable to branch on; nothing where the node is a whole plan, which is then the best so far. */
function branchOf(search: Search, node: Node): string | undefined {
  const { program, experience, wholes, valuedWholes } = search;
  const up = roundedUp(program, node.values);
  const name =
    branchingVariable(node, [...valuedWholes, ...up.inTheWay], experience) ??
    (up.inTheWay.size > 0 ? branchingVariable(node, wholes, experience) : undefined);
  if (name === undefined) {
    search.best = { worth: node.worth, values: up.values };
    search.dived = true;
  }
  return name;
}

/** A node with one variable rounded down or up; nothing where it holds no better plan. */
function child(search: Search, node: Node, name: string, side: 'up' | 'down'): Node | undefined {
  const value = decidedOf(node.values, name);
  const range = node.ranges.get(name) ?? { min: 0, max: Number.POSITIVE_INFINITY };
  const narrowed = side === 'up' ? { ...range, min: Math.ceil(value) } : { ...range, max: Math.floor(value) };
  const ranges = new Map(node.ranges).set(name, narrowed);
  search.nodes += 1;
  const relaxed = search.relax(ranges);
  if (relaxed === undefined) return undefined;
  const distance = side === 'up' ? Math.ceil(value) - value : value - Math.floor(value);
  learn(search, name, side, Math.max(0, node.worth - relaxed.worth), distance);
  return couldBeat(search, relaxed.worth) ? { ...relaxed, ranges, depth: node.depth + 1 } : undefined;
}

function learn({ experience }: Search, name: string, side: 'up' | 'down', loss: number, distance: number): void {
  const known = experience.get(name) ?? { down: 0, downs: 0, up: 0, ups: 0 };
  known[side] += loss / Math.max(distance, WHOLE);
  known[side === 'up' ? 'ups' : 'downs'] += 1;
  experience.set(name, known);
}

/**
 * A plan without a search, as a start for one: what is not whole and cannot be rounded up is rounded down, all of it at
 * once, and the rest is settled anew, until everything is whole. With musts it may find none.
 */
function downhill(
  program: Program,
  relax: ReturnType<typeof relaxation>,
  valuedWholes: readonly string[],
): Relaxed | undefined {
  const ranges = new Map<string, Range>();
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const relaxed = relax(ranges);
    if (relaxed === undefined) return undefined;
    const { values, inTheWay } = roundedUp(program, relaxed.values);
    const split = [...valuedWholes, ...inTheWay].filter((name) => {
      const value = decidedOf(relaxed.values, name);
      return Math.abs(value - Math.round(value)) > WHOLE;
    });
    if (split.length === 0) return inTheWay.size === 0 ? { worth: relaxed.worth, values } : undefined;
    for (const name of split) ranges.set(name, { min: 0, max: Math.floor(decidedOf(relaxed.values, name) + WHOLE) });
  }
  return undefined;
}

function takeBest(open: Node[]): Node | undefined {
  let at = -1;
  open.forEach(({ worth }, index) => {
    if (at === -1 || worth > (open[at]?.worth ?? 0)) at = index;
  });
  return at === -1 ? undefined : open.splice(at, 1)[0];
}
