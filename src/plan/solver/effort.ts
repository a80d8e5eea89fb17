import type { Program } from './linearProgram';

/**
 * The work that a plan may still take, counted and not timed, so that the same question always has the same answer.
 * What does work takes it off.
 */
export interface Effort {
  /** Nodes of searches besides the first one: shorter days, one more of something, yields known. */
  nodes: number;
  /** Minutes of a day's board that are looked at in placing its work. */
  looks: number;
}

/** What a node costs goes with the cells of its tableau: a row for each bound, a column for each variable. */
export const costOf = ({ variables, bounds }: Program): number => bounds.length * (variables.length + 1);

/** All such nodes together cost half of what the first search may: about a second, by measurement. */
const MOST_COST = 4e8;
const MOST_NODES = 20_000;
/** Half a second or so, by measurement. */
const MOST_LOOKS = 1e8;

/** The effort for a day: a large day's nodes cost more, so there are fewer. */
export const effortFor = (program: Program): Effort => ({
  nodes: Math.min(MOST_NODES, Math.floor(MOST_COST / costOf(program))),
  looks: MOST_LOOKS,
});

/** Nodes of one such search: enough to settle a small day. */
export const nodesFor = (program: Program): number => Math.max(20, Math.min(5_000, Math.floor(3e7 / costOf(program))));

/** The fewest nodes that a search is begun with. */
export const FEWEST_NODES = 20;
