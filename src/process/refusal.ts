/** The no of a heat process: why nothing is served, and the keepings that are not canning. */
import { type Basis, type Caution, derived } from '../sources/basis';
import { type Instead, type NotTested, notTested } from '../sources/no';
import { usualCautions } from './cautions';
import type { Keep, NotRecommendedRow } from './tables';

/** Why no process is served, as a word for programs. */
export type RefusalCode =
  | 'not canned'
  | 'low in acid'
  | 'no process'
  | 'not on the page'
  | 'name one food'
  | 'no such pack'
  | 'jar too large'
  | 'too high'
  | 'air too thin'
  | 'no such line'
  | 'line not recommended'
  | 'figure recalled'
  | 'too long for steam'
  | 'rule not tested';

/** Why nothing is served. */
export interface Refused {
  readonly code: RefusalCode;
  readonly text: string;
  /** What helps best, where something offered holds it. */
  readonly hint?: { readonly text: string; readonly holds: (way: Instead) => boolean };
  /** The row that says the food is not canned so. */
  readonly notCanned?: NotRecommendedRow;
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
const USUAL_KEEPS: readonly Keep[] = ['freeze', 'refrigerate'];

/** Ways of keeping that are not canning: those given, or what is open to most foods. */
export const keepings = (keeps: readonly Keep[] = USUAL_KEEPS): Instead[] =>
  keeps.map((keep) => ({ text: KEEPS[keep], keep }));

/** The no with the usual cautions. */
export const refusal = (
  { code, text, basis = [], cautions = [] }: Refused,
  instead: string | readonly Instead[],
): NotTested =>
  notTested({
    code,
    text,
    instead,
    basis: basis.length === 0 ? [derived('reason', 'what the process tables hold for this food')] : basis,
    cautions: [...cautions, ...usualCautions()],
  });
