/** What found a place in the hours of a day, and programs that make no more of a product than that. */
import type { Planned } from '../program/decide';
import type { DayProgram } from '../program/decisions';
import type { Prepared } from '../program/prepare';
import { weightsOf } from '../program/program';
import { isFixed, mustOf } from '../program/resources/units';
import type { Job } from '../schedule/job';

/** Of each product, by its place in the list: the units readied that found a place, and how many were to. */
export type InTime = ReadonlyMap<number, { readonly units: number; readonly of: number }>;

/** Units of each product in some jobs, by its name. */
function unitsIn(jobs: readonly Job[]): Map<string, number> {
  const units = new Map<string, number>();
  const add = (product: string, count: number) => units.set(product, (units.get(product) ?? 0) + count);
  for (const { portions, together } of jobs) {
    for (const { product, filled } of portions) add(product, filled.count);
    for (const { filled } of together?.more ?? []) add(portions[0]?.product as string, filled.count);
  }
  return units;
}

/** Units that must be readied for what must be promised; all of what is in work already. */
function mustBeReady({ making: { activity }, decided: { ready, promised } }: Planned): number {
  if (isFixed(activity)) return ready;
  const must = mustOf(activity);
  return must === 0 ? 0 : Math.ceil((ready * Math.min(must, promised)) / Math.max(1, promised));
}

/** What found a place, where some jobs found none; at least what must be made, for the rest has to make way. */
export function inTimeOf(planned: readonly Planned[], left: readonly Job[]): InTime {
  const lost = unitsIn(left);
  return new Map(
    planned.map((each) => {
      const { making, decided } = each;
      const units = Math.max(mustBeReady(each), decided.ready - (lost.get(making.label) ?? 0));
      return [making.activity.product, { units, of: decided.ready }];
    }),
  );
}

/** More than anything that need not be made is worth. */
const MUST = 1e6;

/** What a plan loses with jobs that find no place: what their units count for the aim, and far more where they must be. */
export function lossesOf(
  { request }: Pick<Prepared, 'request'>,
  planned: readonly Planned[],
): (left: readonly Job[]) => number {
  const { worth, waste } = weightsOf(request.aim ?? 'most worth');
  const each = planned.map((one) => {
    const { making, decided } = one;
    const counts = worth * making.activity.worth * decided.promised + waste * decided.rawKg;
    return {
      label: making.label,
      // where the aim has no use for it, one is like the other
      perUnit: Math.max(counts, 1e-3) / Math.max(1, decided.ready),
      spare: decided.ready - mustBeReady(one),
    };
  });
  return (left) => {
    const units = unitsIn(left);
    return each.reduce((sum, { label, perUnit, spare }) => {
      const lost = units.get(label) ?? 0;
      return sum + perUnit * lost + MUST * Math.max(0, lost - spare);
    }, 0);
  };
}

/** The program with no more of a product than some units readied. */
const atMost = (program: DayProgram, most: (product: number) => number): DayProgram => ({
  ...program,
  bounds: program.bounds.map((bound) =>
    bound.of.of === 'most'
      ? { ...bound, max: Math.min(bound.max ?? Number.POSITIVE_INFINITY, most(bound.of.product)) }
      : bound,
  ),
});

/** The program with no more than found a place: of what was too late for it, or of all that is made. */
export const capped = (program: DayProgram, inTime: InTime, which: 'late' | 'all'): DayProgram =>
  atMost(program, (product) => {
    const { units, of } = inTime.get(product) ?? { units: 0, of: 0 };
    return units < of || which === 'all' ? units : Number.POSITIVE_INFINITY;
  });

/** The program in which one product may grow to `to` units readied, and all others stay as an order of work has them. */
export function growing(program: DayProgram, product: number, planned: readonly Planned[], to: number): DayProgram {
  const ready = new Map(planned.map(({ making, decided }) => [making.activity.product, decided.ready]));
  return atMost(program, (other) => (other === product ? to : (ready.get(other) ?? 0)));
}

/** The products, the one that is worth most by its weight first. */
export const worthiest = ({ makings }: Pick<Prepared, 'makings'>): number[] =>
  makings
    .map(({ activity: { product, worth, supplies } }) => ({
      product,
      perKg: worth * Math.max(...supplies.map(({ unitsPerKg }) => unitsPerKg.likely)),
    }))
    .sort((one, other) => other.perKg - one.perKg)
    .map(({ product }) => product);
