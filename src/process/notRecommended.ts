import { answer } from '../common/answer';
import type { Basis, Caution } from '../sources/basis';
import { basisOf } from '../sources/table';
import { usualCautions } from './cautions';
import { type NotCanned, notCannedOf } from './processesFor';
import { notRecommendedRows } from './tables';

export interface NotRecommended {
  /** The foods and forms, in the order of the table. */
  readonly notCanned: readonly NotCanned[];
  /** Where each comes from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/**
 * The foods and forms that are not canned at home, each with its reason and what to do instead.
 *
 * Source: NCHFP, USDA Complete Guide to Home Canning and the extension pages in the basis.
 *
 * @example
 * ```ts
 * import { notRecommended } from 'stillroom/process';
 *
 * notRecommended().notCanned[0]?.foods; // => ['banana', 'plantain']
 * ```
 */
export function notRecommended(): NotRecommended {
  return answer({
    notCanned: notRecommendedRows.map(notCannedOf),
    basis: notRecommendedRows.map((row) => basisOf(row, 'notCanned[].reason', row.id)),
    cautions: usualCautions(),
  });
}
