import { type Basis, type Caution, derived, joinCautions, type Refusal } from '../sources/basis';
import type { CanningMethod } from '../words/method';
import type { AnyPack } from '../words/pack';
import { usualCautions } from './cautions';
import type { Keep, NotRecommendedRow } from './tables';

/** A question of `testedProcess` that is answered at the same elevation. */
export interface CanningWay {
  readonly food: string;
  readonly form: string;
  readonly pack: AnyPack;
  readonly jar: string;
  readonly method: CanningMethod;
}
/** What can be done instead: a tested process, or a way of keeping the food that is not canning. */
export type Way = CanningWay | { readonly keep: Keep };

/** A refusal of a heat process: `instead` in words, and the same in `ways` as data. */
export interface ProcessRefusal extends Refusal {
  /** What can be done instead; each canning way is answered when asked at the same elevation. */
  readonly ways: readonly Way[];
}

/** Why nothing is served. */
export interface Refused {
  readonly reason: string;
  /** What helps best, where a way that is found holds it. */
  readonly hint?: { readonly text: string; readonly holds: (way: CanningWay) => boolean };
  /** The row that says the food is not canned so. */
  readonly notCanned?: NotRecommendedRow;
  readonly basis?: readonly Basis[];
  readonly cautions?: readonly Caution[];
}
/** What a refusal says. */
export interface RefusalDetails {
  readonly reason: string;
  readonly instead: string;
  readonly ways?: readonly Way[];
  readonly basis?: readonly Basis[];
  readonly cautions?: readonly Caution[];
}

const KEEPS: Readonly<Record<Keep, string>> = {
  freeze: 'freeze it',
  dry: 'dry it',
  refrigerate: 'keep it refrigerated and use it soon',
  ferment: 'ferment it',
  'eat fresh': 'use it fresh',
};
/** What is open to most foods. */
export const USUAL_KEEPS: readonly Keep[] = ['freeze', 'refrigerate'];

/** Ways of keeping in words: `freeze it, or keep it refrigerated and use it soon`. */
export const keepText = (keeps: readonly Keep[]): string => keeps.map((keep) => KEEPS[keep]).join(', or ');

/** A refusal with the usual cautions. */
export const refusal = ({ reason, instead, ways, basis = [], cautions = [] }: RefusalDetails): ProcessRefusal => ({
  tested: false,
  reason,
  instead,
  ways: ways ?? USUAL_KEEPS.map((keep) => ({ keep })),
  basis: basis.length === 0 ? [derived('what the process tables hold for this food')] : basis,
  cautions: joinCautions(cautions, usualCautions()),
});
