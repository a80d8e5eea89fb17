import type { Compact } from './compact';
import type { Ends } from './propagate';
import type { Tableau } from './tableau';

/** Values of the columns of a program, and what they are worth. */
export interface Point {
  readonly worth: number;
  readonly columns: Float64Array;
}

/** What is left of the program where some whole variables have narrower ends, and the most it can be worth. */
export interface Node extends Ends {
  reach: number;
  readonly depth: number;
  /** What it was made by. */
  readonly branch?: { readonly column: number; readonly up: boolean; readonly distance: number };
}

/** A search at work. */
export interface Search {
  readonly compact: Compact;
  readonly tableau: Tableau;
  /** The largest step that every possible worth is a multiple of; 0 where there is none. */
  readonly grain: number;
  /** Columns that are whole, and among them those that add to the objective. */
  readonly wholes: readonly number[];
  readonly valued: readonly number[];
  readonly experience: Experience;
  best: Point | undefined;
  /** Nodes opened, and what is tried to choose a branch counted with them. */
  nodes: number;
  /** What nodes may hold whose relaxation was given up. */
  lost: number;
}

/** What branching on each column has cost so far for each unit that it was rounded by: sums and how often. */
export interface Experience {
  readonly loss: readonly [down: Float64Array, up: Float64Array];
  readonly times: readonly [down: Float64Array, up: Float64Array];
}

/** A part of the worth that no better plan is looked for. */
export const EVEN = 1e-7;

/** What a branch must be able to reach more than, to hold a better plan than the best so far. */
export function floorOf({ best, grain }: Pick<Search, 'best' | 'grain'>): number {
  if (best === undefined) return Number.NEGATIVE_INFINITY;
  return best.worth + (grain > 0 ? grain * 0.99 - EVEN : EVEN * Math.max(1, Math.abs(best.worth)));
}

/** The most that whole plans within a reach can be worth. */
export const stepped = (grain: number, reach: number): number =>
  grain > 0 ? Math.floor((reach + 1e-6) / grain) * grain : reach;
