import type { Limit } from '../request/dayPlan';
import { type Effort, FEWEST_NODES, nodesFor } from '../solver/effort';
import { optimize } from '../solver/optimize';
import { decidedOf } from '../solver/relaxation';
import { reachOf, type Solved } from '../solver/solve';
import { type DayProgram, keyOf, type Resource } from './decisions';

/** One way to widen the kitchen a little: the bounds it moves, and by how much. */
export interface Widening {
  readonly what: string;
  readonly oneMore: string;
  /** What its use is reported of. */
  readonly main: Resource;
  readonly more: readonly More[];
}
/** So much more of something. */
export interface More {
  readonly resource: Resource;
  readonly by: number;
}

/** What limited a plan, and of what it was not worked out. */
export interface Limits {
  readonly limits: readonly Limit[];
  readonly notComputed: readonly string[];
}

/** How much better the best of one program is than the best of another, as far as their searches prove it. */
export interface Gain {
  /** At least this; exactly this where `most` is the same. */
  readonly least: number;
  readonly most: number;
}

/**
 * What a day with something more adds to the day at hand. The day at hand can always be done as it is, so it adds
 * nothing at the least; a search that was cut short leaves a range, from what it found to what its bound still allows.
 */
export function gainOver(found: Solved, again: Solved | undefined): Gain {
  if (again === undefined || !again.feasible) return { least: 0, most: again?.optimal ? 0 : Number.POSITIVE_INFINITY };
  const noise = 1e-6 * Math.max(1, Math.abs(found.worth));
  const clean = (gain: number) => (gain > noise ? gain : 0);
  const most = clean(reachOf(again) - found.worth);
  // what a better plan of the same day would give is not due to what is added
  const least = Math.min(most, clean(again.worth - reachOf(found)));
  return most - least <= noise ? { least: most, most } : { least, most };
}

/** The use of a resource by the plan. */
export function useOf(
  { bounds }: DayProgram,
  values: ReadonlyMap<string, number>,
  resource: Resource,
): { used: number; available: number } | undefined {
  const key = keyOf(resource);
  const bound = bounds.find(({ name }) => name === key);
  if (bound?.max === undefined) return undefined;
  return {
    used: bound.terms.reduce((sum, [variable, weight]) => sum + weight * decidedOf(values, variable), 0),
    available: bound.max,
  };
}

/** The program with more of something. */
export function widened(program: DayProgram, more: readonly More[]): DayProgram {
  const by = new Map(more.map((each) => [keyOf(each.resource), each.by]));
  return {
    ...program,
    bounds: program.bounds.map((bound) =>
      bound.max === undefined ? bound : { ...bound, max: bound.max + (by.get(bound.name) ?? 0) },
    ),
  };
}

/** A search that starts from the plan at hand, within the effort that is left; nothing where none is. */
export function searchAgain(
  effort: Effort,
  program: DayProgram,
  search: (nodes: number) => Solved,
): Solved | undefined {
  const nodes = Math.min(nodesFor(program), effort.nodes);
  return nodes < FEWEST_NODES ? undefined : search(nodes);
}

/**
 * What limited the plan: each resource is widened a little and the day solved again from the plan at hand; what adds
 * to the aim is listed, the largest gain first. A gain is proven, or a range from what was found to what the search had
 * not ruled out. Where nothing was found and more was not ruled out, the resource is named in `notComputed`.
 */
export function limitsOf(program: DayProgram, found: Solved, widenings: readonly Widening[], effort: Effort): Limits {
  const limits: Limit[] = [];
  const notComputed: string[] = [];
  const start = { ...found, optimal: false };
  // what is used up first: it is likelier to be what holds the plan back
  const used = widenings
    .flatMap((widening) => {
      const use = useOf(program, found.values, widening.main);
      return use === undefined ? [] : [{ ...widening, use, share: use.available > 0 ? use.used / use.available : 1 }];
    })
    .sort((one, other) => other.share - one.share);
  for (const { what, oneMore, more, use } of used) {
    const wider = widened(program, more);
    const again = searchAgain(effort, wider, (nodes) => optimize(wider, { start, nodes, effort }));
    const { least, most } = gainOver(found, again);
    if (least > 0)
      limits.push({
        what,
        used: use.used,
        available: use.available,
        tried: oneMore,
        gain: least,
        ...(most > least ? { mostGain: most } : {}),
      });
    else if (most > 0) notComputed.push(what);
  }
  return { limits: limits.sort((one, other) => other.gain - one.gain), notComputed };
}
