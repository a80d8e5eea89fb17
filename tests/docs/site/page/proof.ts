/** What the proof page is given: `proof.ts` beside this folder writes it into `vectors.js`. */
import type { Check, Group } from '../../../vectors/schema';

/** A check with all that the page shows of it. */
export interface ProofCheck extends Pick<Check, 'id' | 'call' | 'input' | 'expect' | 'tolerance' | 'locator'> {
  readonly group: Group;
  /** The sources of its file where it names none itself. */
  readonly sources: readonly string[];
}

export interface Totals {
  readonly checks: number;
  readonly passed: number;
}

export interface Proof {
  readonly version: string;
  readonly checks: readonly ProofCheck[];
  /** The module of each function that is called. */
  readonly modules: Readonly<Record<string, string>>;
  /** The title of each source. */
  readonly titles: Readonly<Record<string, string>>;
  /** What the same checks came to in Node, when the page was written. */
  readonly node: Totals;
}
