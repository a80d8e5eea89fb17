/** The checks of the page, computed in slices so that it stays alive. */
import { call } from 'stillroom/catalogue';
import { type AnyFunction, type Outcome, runCheck } from '../../../vectors/run';
import type { Proof, ProofCheck, Totals } from './proof';

/** One check on the page, with what it came to once that is computed. */
export interface Entry {
  readonly check: ProofCheck;
  readonly module: string;
  /** Its input, as the reader has changed it. */
  changed?: unknown;
  outcome?: Outcome;
  /** All of its figures are shown, not only the first. */
  open?: boolean;
}

/** The longest that the page is busy before it looks at the reader again, in milliseconds. */
const SLICE = 25;

const byName = {
  get:
    (name: string): AnyFunction =>
    (...input) =>
      call(name, input),
};

export const entriesOf = ({ checks, modules }: Proof): Entry[] =>
  checks.map((check) => ({ check, module: modules[check.call] ?? '' }));

/** Computes one check, with the input that the reader wrote where there is one. */
export function compute(entry: Entry): Outcome {
  const input = 'changed' in entry ? entry.changed : entry.check.input;
  const outcome = runCheck({ ...entry.check, input }, byName);
  entry.outcome = outcome;
  return outcome;
}

export interface Run {
  readonly done: number;
  readonly milliseconds: number;
}

/** Computes all of them; `said` hears of each slice. */
export async function computeAll(entries: readonly Entry[], said: (run: Run) => void): Promise<Run> {
  const begun = performance.now();
  let sliceBegun = begun;
  for (const [index, entry] of entries.entries()) {
    if (entry.outcome === undefined) compute(entry);
    if (performance.now() - sliceBegun < SLICE) continue;
    said({ done: index + 1, milliseconds: performance.now() - begun });
    await new Promise((resume) => setTimeout(resume));
    sliceBegun = performance.now();
  }
  const run = { done: entries.length, milliseconds: performance.now() - begun };
  said(run);
  return run;
}

export const totalsOf = (entries: readonly Entry[]): Totals => ({
  checks: entries.length,
  passed: entries.filter(({ outcome }) => outcome?.passed).length,
});
