import { answer } from '../common/answer';
import type { Basis, Caution } from '../sources/basis';
import { basisOf } from '../sources/table';
import { usualCautions } from './cautions';
import type { NotCanned } from './processesFor';
import { notRecommendedRows } from './tables';

export interface NotRecommended {
  readonly notCanned: readonly NotCanned[];
  readonly basis: readonly Basis[];
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
 * notRecommended().notCanned[0]?.foods; // => ['banana']
 * ```
 */
export function notRecommended(): NotRecommended {
  return answer({
    notCanned: notRecommendedRows.map(({ foods, forms, reason, instead }) => ({ foods, forms, reason, instead })),
    basis: notRecommendedRows.map((row) => basisOf(row, row.foods.join(', '))),
    cautions: usualCautions(),
  });
}
