import { type Coefficients, type Constraint, solve as solveModel } from 'yalps';

/** One quantity the program decides. Never below zero. */
export interface Variable {
  readonly name: string;
  /** What one unit of it adds to the objective. */
  readonly worth: number;
  readonly integer?: boolean;
}

/** A weighted sum of variables, kept within bounds. */
export interface Bound {
  readonly name: string;
  readonly terms: readonly (readonly [variable: string, weight: number])[];
  readonly max?: number;
  readonly min?: number;
}

/** A mixed integer linear program, to be maximized. */
export interface Program {
  readonly variables: readonly Variable[];
  readonly bounds: readonly Bound[];
}

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
}

/** Nodes the search may open before it returns the best so far with its gap: fewer where each costs more. */
const mostNodes = (program: Program): number => Math.max(500, Math.floor(2_000_000 / (program.variables.length + 1)));
/** A value this near a whole number is one: the simplex works in doubles. */
const WHOLE = 1e-6;

/** The range a node of the search leaves to each whole variable. */
type Ranges = ReadonlyMap<string, { readonly min: number; readonly max: number }>;

interface Relaxed {
  readonly worth: number;
  readonly values: ReadonlyMap<string, number>;
}

interface Node extends Relaxed {
  readonly ranges: Ranges;
  readonly depth: number;
}

/** Prepares the program once for the package's simplex; a node only adds the ranges of its whole variables. */
function relaxation(
  program: Program,
): (ranges: Ranges, objective?: ReadonlyMap<string, number>) => Relaxed | undefined {
  const columns = new Map<string, Map<string, number>>();
  for (const { name, worth } of program.variables)
    columns.set(
      name,
      new Map([
        ['worth', worth],
        [`range ${name}`, 1],
      ]),
    );
  const rows: [string, Constraint][] = program.bounds.map(({ terms, min, max }, index) => {
    for (const [variable, weight] of terms) {
      const column = columns.get(variable);
      column?.set(`bound ${index}`, (column.get(`bound ${index}`) ?? 0) + weight);
    }
    return [`bound ${index}`, { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) }];
  });
  return (ranges, objective) => {
    const constraints = new Map(rows);
    for (const [name, { min, max }] of ranges) {
      if (min > max) return undefined;
      constraints.set(`range ${name}`, {
        ...(min > 0 ? { min } : {}),
        ...(max < Number.POSITIVE_INFINITY ? { max } : {}),
      });
    }
    if (objective !== undefined) {
      for (const [name, column] of columns) column.set('worth', objective.get(name) ?? 0);
    }
    const found = solveModel<string, string>(
      {
        direction: 'maximize',
        objective: 'worth',
        constraints,
        variables: columns as Iterable<readonly [string, Coefficients<string>]>,
      },
      { maxPivots: 20_000 },
    );
    return found.status === 'optimal' ? { worth: found.result, values: new Map(found.variables) } : undefined;
  };
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
    const value = node.values.get(name) ?? 0;
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
 * The package has a search of its own, but on a day's plan with several lots it often ends without any plan at all.
 * This one dives for a plan first, then proves: a branch is closed when its bound cannot beat the best plan by the
 * smallest step that worths come in.
 *
 * @param options - see `SolveOptions`
 * @returns the best plan and whether it is proven best; `feasible: false` when no values meet every bound
 */
export function solve(program: Program, { among, start }: SolveOptions = {}): Solved {
  const most = mostNodes(program);
  const wholes = program.variables.filter(({ integer }) => integer).map(({ name }) => name);
  const relax = relaxation(program);
  const grain = granularity(program);
  const experience = new Map<string, Experience>();
  let best: Relaxed | undefined = start?.feasible ? { worth: start.worth, values: start.values } : undefined;
  let nodes = 0;

  const couldBeat = (bound: number): boolean => {
    if (best === undefined) return true;
    const reach = grain > 0 ? Math.floor((bound + 1e-6) / grain) * grain : bound;
    return reach > best.worth + Math.max(1e-9, 1e-9 * Math.abs(best.worth)) + (grain > 0 ? grain / 2 : 0);
  };
  const learn = (name: string, side: 'up' | 'down', loss: number, distance: number): void => {
    const known = experience.get(name) ?? { down: 0, downs: 0, up: 0, ups: 0 };
    known[side] += loss / Math.max(distance, WHOLE);
    known[side === 'up' ? 'ups' : 'downs'] += 1;
    experience.set(name, known);
  };
  const child = (node: Node, name: string, side: 'up' | 'down'): Node | undefined => {
    const value = node.values.get(name) ?? 0;
    const range = node.ranges.get(name) ?? { min: 0, max: Number.POSITIVE_INFINITY };
    const narrowed = side === 'up' ? { ...range, min: Math.ceil(value) } : { ...range, max: Math.floor(value) };
    const ranges = new Map(node.ranges).set(name, narrowed);
    nodes += 1;
    const relaxed = relax(ranges);
    if (relaxed === undefined) return undefined;
    const distance = side === 'up' ? Math.ceil(value) - value : value - Math.floor(value);
    learn(name, side, Math.max(0, node.worth - relaxed.worth), distance);
    return couldBeat(relaxed.worth) ? { ...relaxed, ranges, depth: node.depth + 1 } : undefined;
  };

  const root = relax(new Map());
  if (root === undefined) return { feasible: false, optimal: true, gap: 0, worth: 0, values: new Map() };
  const open: Node[] = [{ ...root, ranges: new Map(), depth: 0 }];
  let current: Node | undefined;
  while (nodes < most) {
    current ??= takeBest(open);
    if (current === undefined) break;
    if (!couldBeat(current.worth)) {
      current = undefined;
      continue;
    }
    const name = branchingVariable(current, wholes, experience);
    if (name === undefined) {
      best = { worth: current.worth, values: current.values };
      current = undefined;
      continue;
    }
    const down = child(current, name, 'down');
    const up = child(current, name, 'up');
    // dive on the better side, keep the other for later
    const [next, other] =
      (up?.worth ?? Number.NEGATIVE_INFINITY) > (down?.worth ?? Number.NEGATIVE_INFINITY) ? [up, down] : [down, up];
    if (other !== undefined) open.push(other);
    current = next;
  }
  const left = [...open, ...(current === undefined ? [] : [current])].filter(({ worth }) => couldBeat(worth));
  if (best === undefined) return { feasible: false, optimal: left.length === 0, gap: 0, worth: 0, values: new Map() };
  const whole = rounded(best.values, wholes);
  const held = new Map(wholes.map((name) => [name, { min: whole.get(name) ?? 0, max: whole.get(name) ?? 0 }]));
  const settled = among === undefined ? undefined : relax(held, among);
  const reach = Math.max(best.worth, ...left.map(({ worth }) => worth));
  return {
    feasible: true,
    optimal: left.length === 0,
    gap: (reach - best.worth) / Math.max(Math.abs(best.worth), WHOLE),
    worth: best.worth,
    values: settled === undefined ? whole : rounded(settled.values, wholes),
  };
}

function takeBest(open: Node[]): Node | undefined {
  let at = -1;
  open.forEach(({ worth }, index) => {
    if (at === -1 || worth > (open[at]?.worth ?? 0)) at = index;
  });
  return at === -1 ? undefined : open.splice(at, 1)[0];
}

const rounded = (values: ReadonlyMap<string, number>, wholes: readonly string[]): Map<string, number> => {
  const clean = new Map(values);
  for (const name of wholes) clean.set(name, Math.round(clean.get(name) ?? 0));
  return clean;
};
