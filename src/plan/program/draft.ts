import type { Activity, Capacity } from '../request/activity';
import type { AimWeights } from '../request/planFields';
import { type DayBound, type DayVariable, type Decision, keyOf, type Resource, type Rule } from './decisions';

/** A weighted decision. */
export type DayTerm = readonly [Decision, number];
export type Weights = Readonly<Record<keyof AimWeights, number>>;

/** A program being written. Changed by `decide`, `bound`, `use` and `limit` only. */
export interface Draft {
  readonly activities: readonly Activity[];
  readonly capacity: Capacity;
  readonly weights: Weights;
  readonly variables: Map<string, Omit<DayVariable, 'worth'>>;
  readonly bounds: DayBound[];
  /** What has been used of each resource. */
  readonly uses: Map<string, DayTerm[]>;
  /** What counts for or against the aim. */
  readonly counts: Readonly<Record<'worth' | 'waste' | 'cost', DayTerm[]>>;
}

export const emptyDraft = (activities: readonly Activity[], capacity: Capacity, weights: Weights): Draft => ({
  activities,
  capacity,
  weights,
  variables: new Map(),
  bounds: [],
  uses: new Map(),
  counts: { worth: [], waste: [], cost: [] },
});

/** Adds a variable, once. */
export function decide({ variables }: Draft, of: Decision, integer = true): void {
  const name = keyOf(of);
  variables.set(name, { name, of, integer });
}

/** Adds a bound. */
export function bound(
  { bounds }: Draft,
  of: Rule,
  terms: readonly DayTerm[],
  ends: { readonly min?: number; readonly max?: number },
): void {
  bounds.push({ of, name: keyOf(of), terms: terms.map(([decision, weight]) => [keyOf(decision), weight]), ...ends });
}

/** Says what something takes of a resource. */
export function use({ uses }: Draft, resource: Resource, ...terms: readonly DayTerm[]): void {
  const key = keyOf(resource);
  uses.set(key, [...(uses.get(key) ?? []), ...terms]);
}

/** Bounds a resource that something uses. */
export function limit(draft: Draft, resource: Resource, max: number): void {
  const terms = draft.uses.get(keyOf(resource));
  if (terms !== undefined) bound(draft, resource, terms, { max });
}

/** Each lot that an activity takes, with a weight. */
export const scaled = (
  { product, supplies }: Activity,
  weight: (supply: Activity['supplies'][number]) => number,
): DayTerm[] => supplies.map((supply) => [{ of: 'raw', lot: supply.lot, product }, weight(supply)]);
