import { noExperience } from './branching';
import { type Compact, compactOf, valuesOf } from './compact';
import { costOf, type Effort } from './effort';
import { firstPlans, improve } from './firstPlans';
import type { Program } from './linearProgram';
import { floorOf, type Search, stepped } from './node';
import { decidedOf, relaxed } from './relaxation';
import { lowered, rounded, WHOLE } from './rounding';
import { explore, solveNode } from './search';
import { tableauOf } from './tableau';

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
  /** Only a better plan than `start` is wanted: where none is found, that is answered as it is. */
  readonly onlyBetter?: boolean;
  /** Nodes the search may open, where fewer than usual will do. */
  readonly nodes?: number;
  /** What the nodes that are opened are taken off. */
  readonly effort?: Pick<Effort, 'nodes'>;
}

/**
 * Nodes the search may open before it returns the best so far with its gap. A large day gets fewer of them, for each
 * costs more, and no day takes more than some seconds.
 */
export const mostNodes = (program: Program): number =>
  Math.max(200, Math.min(50_000, Math.floor(8e8 / costOf(program))));
/** The part of the nodes after which better plans are looked for around the best one, and the part for that. */
const FIRST_PART = 0.4;
const IMPROVING = 0.3;

/** No plan is worth more than this. */
export const reachOf = ({ worth, gap }: Solved): number => worth + gap * Math.max(Math.abs(worth), WHOLE);

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

/**
 * Solves a mixed integer linear program: branch and bound over its linear relaxations, each solved from the basis of the
 * one before.
 *
 * It makes a plan without a search first, then dives for better ones and proves: a branch is closed when it cannot beat
 * the best plan by the smallest step that worths come in.
 *
 * @param options - see `SolveOptions`
 * @returns the best plan and whether it is proven best; `feasible: false` when no values meet every bound
 */
export function solve(program: Program, { among, start, onlyBetter, nodes: given, effort }: SolveOptions = {}): Solved {
  const compact = compactOf(program);
  const search = searchOf(program, compact);
  const known = start?.feasible ? start : undefined;
  if (known !== undefined) search.best = { worth: known.worth, columns: columnsOf(compact, known.values) };
  const first = search.best;
  const left = compact.empty ? [] : searched(search, given ?? mostNodes(program));
  if (effort !== undefined) effort.nodes = Math.max(0, effort.nodes - Math.ceil(search.nodes));
  const { best } = search;
  if (best === undefined) return { feasible: false, optimal: left.length === 0, gap: 0, worth: 0, values: new Map() };
  const reach = Math.max(best.worth, ...left.map((each) => stepped(search.grain, each.reach)));
  return {
    feasible: true,
    optimal: left.length === 0,
    gap: (reach - best.worth) / Math.max(Math.abs(best.worth), WHOLE),
    worth: best.worth,
    values:
      onlyBetter && known !== undefined && best === first
        ? known.values
        : settled(program, compact, valuesOf(compact, best.columns), among),
  };
}

function searchOf(program: Program, compact: Compact): Search {
  const wholes = compact.names.flatMap((_, column) => (compact.integer[column] === 1 ? [column] : []));
  return {
    compact,
    tableau: tableauOf(compact.rows, compact.cost, compact.min, compact.max),
    grain: granularity(program),
    wholes,
    valued: wholes.filter((column) => compact.cost[column] !== 0),
    experience: noExperience(compact.names.length),
    best: undefined,
    nodes: 0,
    lost: Number.NEGATIVE_INFINITY,
  };
}

/** What could still be better after `most` nodes. */
function searched(search: Search, most: number): readonly { readonly reach: number }[] {
  const { min, max } = search.compact;
  const root = { min: min.slice(), max: max.slice(), reach: Number.POSITIVE_INFINITY, depth: 0 };
  if (most <= 0) return [root];
  const worth = solveNode(search, root);
  if (worth === undefined) return lostIn(search);
  root.reach = worth;
  if (most > 1) firstPlans(search, root, most / 4);
  const left = explore(search, [root], most * FIRST_PART);
  if (left.length > 0) improve(search, root, search.nodes + most * IMPROVING);
  return [...explore(search, left, most), ...lostIn(search)];
}

const lostIn = (search: Search): { readonly reach: number }[] =>
  search.lost > floorOf(search) ? [{ reach: search.lost }] : [];

const columnsOf = ({ names }: Compact, values: ReadonlyMap<string, number>): Float64Array =>
  Float64Array.from(names, (name) => decidedOf(values, name));

/** A plan with its whole numbers whole, the rest as a second objective likes it best, and nothing readied too much. */
function settled(
  program: Program,
  compact: Compact,
  values: ReadonlyMap<string, number>,
  among: SolveOptions['among'],
): ReadonlyMap<string, number> {
  const wholes = program.variables.flatMap(({ name, integer }) => (integer ? [name] : []));
  const whole = rounded(values, wholes);
  const held = new Map(wholes.map((name) => [name, { min: decidedOf(whole, name), max: decidedOf(whole, name) }]));
  const chosen = among === undefined ? undefined : relaxed(compact, held, among);
  return lowered(program, chosen === undefined ? whole : rounded(chosen.values, wholes));
}
