import { type Effort, FEWEST_NODES, nodesFor } from '../makes/effort';
import type { Limit } from '../request/dayPlan';
import type { Program } from '../solver/linearProgram';
import { optimize } from '../solver/optimize';
import { decidedOf } from '../solver/relaxation';
import { reachOf, type Solved } from '../solver/solve';
import { cannerBound, lotBound, potBound, vesselBound } from './program';

/** One way to widen the kitchen a little: the bounds it moves, and by how much. */
export interface Widening {
  readonly what: string;
  readonly oneMore: string;
  /** The bound whose use is reported. */
  readonly main: string;
  readonly more: Readonly<Record<string, number>>;
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

/** The use of a named bound by the plan. */
export function useOf(
  { bounds }: Program,
  values: ReadonlyMap<string, number>,
  name: string,
): { used: number; available: number } | undefined {
  const bound = bounds.find((each) => each.name === name);
  if (bound?.max === undefined) return undefined;
  return {
    used: bound.terms.reduce((sum, [variable, weight]) => sum + weight * decidedOf(values, variable), 0),
    available: bound.max,
  };
}

/** The program with more of something. */
export const widened = (program: Program, more: Widening['more']): Program => ({
  ...program,
  bounds: program.bounds.map((bound) =>
    bound.max === undefined || more[bound.name] === undefined
      ? bound
      : { ...bound, max: bound.max + (more[bound.name] ?? 0) },
  ),
});

/** A search that starts from the plan at hand, within the effort that is left; nothing where none is. */
export function searchAgain(effort: Effort, program: Program, search: (nodes: number) => Solved): Solved | undefined {
  const nodes = Math.min(nodesFor(program), effort.nodes);
  return nodes < FEWEST_NODES ? undefined : search(nodes);
}

/**
 * What limited the plan: each resource is widened a little and the day solved again from the plan at hand; what adds
 * to the aim is listed, the largest gain first. A gain is proven, or a range from what was found to what the search had
 * not ruled out. Where nothing was found and more was not ruled out, the resource is named in `notComputed`.
 */
export function limitsOf(program: Program, found: Solved, widenings: readonly Widening[], effort: Effort): Limits {
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
        oneMore,
        gain: least,
        ...(most > least ? { atMost: most } : {}),
      });
    else if (most > 0) notComputed.push(what);
  }
  return { limits: limits.sort((one, other) => other.gain - one.gain), notComputed };
}

/** The ways to widen this kitchen that a cook can think of. */
export function wideningsOf(
  program: Program,
  labels: {
    lots: readonly string[];
    canners: readonly string[];
    hands: number;
    burners: number;
    minutes: number;
    pots: number;
    vessels?: readonly (number | undefined)[];
  },
): Widening[] {
  const names = new Set(program.bounds.map(({ name }) => name));
  const jars = [...names].filter((name) => name.startsWith('jar '));
  const anHour: Record<string, number> = { hands: 60 * labels.hands, burners: 60 * labels.burners };
  for (let pot = 0; pot < labels.pots; pot++) {
    anHour[potBound(pot)] = 60;
    anHour[vesselBound(pot)] = 60;
  }
  labels.canners.forEach((_, canner) => {
    anHour[cannerBound(canner)] = 60;
  });
  const loadOf = (canner: number): number =>
    Math.max(
      0,
      ...(program.bounds.find(({ name }) => name === cannerBound(canner))?.terms.map(([, minutes]) => minutes) ?? []),
    );
  const vesselOf = (canner: number): Record<string, number> => {
    const pot = labels.vessels?.[canner];
    const terms = pot === undefined ? [] : (program.bounds.find(({ name }) => name === vesselBound(pot))?.terms ?? []);
    return pot === undefined ? {} : { [vesselBound(pot)]: Math.max(0, ...terms.map(([, minutes]) => minutes)) };
  };
  return [
    { what: 'hours of work', oneMore: 'one hour more', main: 'hands', more: anHour },
    { what: 'hands', oneMore: 'one more pair of hands', main: 'hands', more: { hands: labels.minutes } },
    ...labels.canners.map((label, canner) => ({
      what: label,
      oneMore: 'one more load',
      main: cannerBound(canner),
      more: { [cannerBound(canner)]: loadOf(canner), burners: loadOf(canner), ...vesselOf(canner) },
    })),
    ...jars.map((name) => ({
      what: `${name.slice(4)} jars`,
      oneMore: '6 more',
      main: name,
      more: { [name]: 6, lid: 6 },
    })),
    { what: 'lids', oneMore: '12 more', main: 'lid', more: { lid: 12 } },
    { what: 'bags', oneMore: '12 more', main: 'bag', more: { bag: 12 } },
    { what: 'dryer trays', oneMore: 'one more tray', main: 'trays', more: { trays: 1 } },
    {
      what: 'freeze-dryer trays',
      oneMore: 'one more tray',
      main: 'freeze-dryer trays',
      more: { 'freeze-dryer trays': 1 },
    },
    {
      what: 'freeze-dryer ice',
      oneMore: 'room for 1 kg more ice',
      main: 'freeze-dryer ice',
      more: { 'freeze-dryer ice': 1 },
    },
    { what: 'freezer room', oneMore: '5 L more', main: 'freezer room', more: { 'freezer room': 5 } },
    { what: 'freezer load of a day', oneMore: '1 kg more', main: 'freezer load', more: { 'freezer load': 1 } },
    { what: 'burners', oneMore: 'one more burner', main: 'burners', more: { burners: labels.minutes } },
    ...labels.lots.map((label, lot) => ({
      what: label,
      oneMore: '1 kg more',
      main: lotBound(lot),
      more: { [lotBound(lot)]: 1 },
    })),
  ].filter(({ main }) => names.has(main));
}
