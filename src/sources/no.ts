import type { CanningMethod } from '../words/method';
import type { AnyPack } from '../words/pack';
import type { Basis, Caution } from './basis';
import type { ProcessRecipe } from './processRecipe';

/** Why there is no figure. */
export interface Reason {
  /** A short fixed word to tell one reason from another. */
  readonly code: string;
  /** The same in words; it speaks of these tables, not of all print. */
  readonly text: string;
}

/** One thing to do instead: in words, and as far as it is a question of this library, as the fields to ask it with. */
export interface Instead {
  /** What to do. */
  readonly text: string;
  /** Fixed name of a recipe. */
  readonly recipe?: string;
  /** Trade name of a food. */
  readonly food?: string;
  /** Form of the food. */
  readonly form?: string;
  /** How the food is packed. */
  readonly pack?: AnyPack;
  /** Name of a jar. */
  readonly jar?: string;
  /** Kind of canner. */
  readonly method?: CanningMethod;
  /** Printed process time: of the recipes named with it, with their acid. */
  readonly minutes?: number;
  /** The acid that belongs to the process time, in words. */
  readonly acidToAdd?: string;
  /** The printed recipes that the process time belongs to, each with its acid and its batch. */
  readonly recipes?: readonly ProcessRecipe[];
  /** A way of keeping that is not canning. */
  readonly keep?: string;
}

/** What every no says. */
interface No {
  /** Why these tables have no figure or no process. */
  readonly reason: Reason;
  /** What to do instead, best first. */
  readonly instead: readonly Instead[];
  /** Where the answer comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** The answer where a figure other than a heat process is missing. */
export interface NotKnown extends No {
  /** These tables have no figure. */
  readonly known: false;
}

/** The answer where these tables hold no tested heat process. */
export interface NotTested extends No {
  /** No tested process is served. */
  readonly tested: false;
}

/** What a no says; `instead` may be plain words. */
export interface NoDetails {
  readonly code: string;
  readonly text: string;
  readonly instead: string | readonly Instead[];
  readonly basis: readonly Basis[];
  readonly cautions?: readonly Caution[];
}

const parts = ({ code, text, instead, basis, cautions = [] }: NoDetails) => ({
  reason: { code, text },
  instead: typeof instead === 'string' ? [{ text: instead }] : instead,
  basis,
  cautions,
});

/** The no of any figure but a heat process: `{ known: false, reason, instead, basis, cautions }`. */
export const notKnown = (details: NoDetails): NotKnown => ({ known: false, ...parts(details) });

/** The no of a heat process: `{ tested: false, reason, instead, basis, cautions }`. */
export const notTested = (details: NoDetails): NotTested => ({ tested: false, ...parts(details) });
