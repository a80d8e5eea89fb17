import type { Limit } from './dayPlan';
import type { Program } from './linearProgram';
import { optimize } from './optimize';
import { cannerBound, lotBound, potBound } from './program';
import { decidedOf } from './relaxation';
import type { Solved } from './solve';

/** One way to widen the kitchen a little: the bounds it moves, and by how much. */
export interface Widening {
  readonly what: string;
  readonly oneMore: string;
  /** The bound whose use is reported. */
  readonly main: string;
  readonly more: Readonly<Record<string, number>>;
}

const usedBy = (
  { bounds }: Program,
  values: ReadonlyMap<string, number>,
  name: string,
): { used: number; available: number } | undefined => {
  const bound = bounds.find((each) => each.name === name);
  if (bound?.max === undefined) return undefined;
  return {
    used: bound.terms.reduce((sum, [variable, weight]) => sum + weight * decidedOf(values, variable), 0),
    available: bound.max,
  };
};

/** The use of a named bound by the plan. */
export const useOf = usedBy;

/** Whether so little of a resource is left that it may be what holds the plan back: less than one step of anything takes. */
function isTight({ bounds }: Program, name: string, { used, available }: { used: number; available: number }): boolean {
  const weights = bounds.find((each) => each.name === name)?.terms.map(([, weight]) => weight) ?? [];
  return available - used < Math.max(0.05 * available, ...weights);
}

/** Nodes to look for a gain with: where a search ends early the gain is at least what it found. */
export const nodesFor = ({ variables, bounds }: Program): number =>
  Math.max(20, Math.min(5_000, Math.floor(1e9 / (bounds.length ** 2 * (variables.length + 1)))));

/**
 * What limited the plan: each resource that is well used is widened a little and the day solved again; what adds to
 * the aim is listed, the largest gain first.
 */
export function limitsOf(program: Program, found: Solved, widenings: readonly Widening[]): Limit[] {
  const limits: Limit[] = [];
  for (const { what, oneMore, main, more } of widenings) {
    const use = usedBy(program, found.values, main);
    if (use === undefined || !isTight(program, main, use)) continue;
    const widened: Program = {
      ...program,
      bounds: program.bounds.map((bound) =>
        bound.max === undefined || more[bound.name] === undefined
          ? bound
          : { ...bound, max: bound.max + (more[bound.name] ?? 0) },
      ),
    };
    const gain = optimize(widened, { start: found, nodes: nodesFor(program) }).worth - found.worth;
    if (gain > 1e-6 * Math.max(1, Math.abs(found.worth)))
      limits.push({ what, used: use.used, available: use.available, oneMore, gain });
  }
  return limits.sort((one, other) => other.gain - one.gain);
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
  },
): Widening[] {
  const names = new Set(program.bounds.map(({ name }) => name));
  const jars = [...names].filter((name) => name.startsWith('jar '));
  const anHour: Record<string, number> = { hands: 60 * labels.hands, burners: 60 * labels.burners };
  for (let pot = 0; pot < labels.pots; pot++) anHour[potBound(pot)] = 60;
  labels.canners.forEach((_, canner) => {
    anHour[cannerBound(canner)] = 60;
  });
  const loadOf = (canner: number): number =>
    Math.max(
      0,
      ...(program.bounds.find(({ name }) => name === cannerBound(canner))?.terms.map(([, minutes]) => minutes) ?? []),
    );
  return [
    { what: 'hours of work', oneMore: 'one hour more', main: 'hands', more: anHour },
    { what: 'hands', oneMore: 'one more pair of hands', main: 'hands', more: { hands: labels.minutes } },
    ...labels.canners.map((label, canner) => ({
      what: label,
      oneMore: 'one more load',
      main: cannerBound(canner),
      more: { [cannerBound(canner)]: loadOf(canner), burners: loadOf(canner) },
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
