import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, flag, number, optional, readInput } from '../quantity/fields';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { limitRow } from './phLimits';
import { assumedReading, closestReading, isAbove, isUndecided } from './phReading';
import { acidCaution, printed } from './tables';

const schema = fields({
  pH: number('a pH from 0 to 14', { min: 0, max: 14 }),
  uncertainty: optional(number('the uncertainty of the reading, 0 to 2 pH units', { min: 0, max: 2 })),
  waterActivity: optional(number('a water activity above 0 and at most 1', { above: 0, max: 1 })),
  tomato: optional(flag('whether it is a tomato product')),
});
export type AcidClassInput = z.input<typeof schema>;

export interface AcidClass {
  /** For home canning, on the safe side of the reading's uncertainty. */
  readonly class: 'acid' | 'low-acid';
  /** The pH that parts them. */
  readonly limit: number;
  /** How far the reading is below the limit (negative: above it). */
  readonly margin: number;
  /** Whether the limit lies within the reading's uncertainty: then the food is treated as low-acid. */
  readonly undecided: boolean;
  /** The uncertainty the answer counts with, pH units either way. */
  readonly uncertainty: number;
  /** Whether that was assumed, because none was given. */
  readonly uncertaintyAssumed: boolean;
  /** What kind of canner the class calls for, once there is a tested process. */
  readonly canner: string;
  /**
   * Whether commercial regulation calls a food of exactly this pH low-acid: above its limit, with a water activity above
   * 0.85. `undecided` where that limit lies within the reading's uncertainty. It is never a reason to can at home.
   */
  readonly regulation: { readonly lowAcid: boolean; readonly limit: number; readonly undecided: boolean };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * Whether a food of this pH counts as acid or low-acid, and by what margin.
 *
 * Acid is pH 4.6 or below. A reading whose uncertainty reaches above the limit is treated as low-acid, and is
 * undecided; without an uncertainty it is taken as a kitchen meter's, 0.1 either way. Commercial
 * regulation calls a food low-acid above 4.6 (a tomato product from 4.7) when its water activity is above 0.85; home
 * guides acidify every jar of tomatoes instead, so that exception never makes a home-canned food acid here.
 *
 * @param input.pH - of the finished, even mixture, 0 to 14
 * @param input.uncertainty - of the reading, pH units; 0.1, with a caution, when left out
 * @param input.waterActivity - where known; matters to the regulation only
 * @param input.tomato - whether it is tomatoes or a tomato product; matters to the regulation only
 * @returns `class`, `margin` (limit less reading), `undecided` and the `uncertainty` it counted with
 *
 * @example
 * ```ts
 * import { acidClass } from 'stillroom/acid';
 *
 * acidClass({ pH: 4.2, uncertainty: 0.1 }).class; // => 'acid'
 * acidClass({ pH: 4.55, uncertainty: 0.1 }).class; // => 'low-acid'
 * acidClass({ pH: 4.6 }).undecided; // => true
 * acidClass({ pH: 4.6 }).class; // => 'low-acid'
 * acidClass({ pH: 4.2, uncertainty: 0.1 }).margin; // ≈ 0.4
 * acidClass({ pH: 15 }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function acidClass(input: AcidClassInput): AcidClass {
  const assumed = assumedReading();
  const { pH, uncertainty = assumed.within, waterActivity = 1, tomato = false } = readInput(schema, input);
  const lowAcid = limitRow('home-low-acid');
  const acid = limitRow('home-acid');
  const limit = printed(acid, 'pH');
  const isAcid = !isAbove(pH + uncertainty, limit);
  const finished = limitRow('law-low-acid');
  const ruling = tomato ? limitRow('law-tomato') : finished;
  const rulingLimit = printed(ruling, 'pH');
  const wet = waterActivity > printed(finished, 'waterActivityAbove');
  const undecided = isUndecided(pH, uncertainty, limit);
  const unsaid = input.uncertainty === undefined;
  return answer({
    class: isAcid ? 'acid' : 'low-acid',
    limit,
    margin: limit - pH,
    undecided,
    uncertainty,
    uncertaintyAssumed: unsaid,
    canner: printed(isAcid ? acid : lowAcid, 'process'),
    regulation: {
      lowAcid: wet && isAbove(pH, rulingLimit, tomato),
      limit: rulingLimit,
      undecided: wet && isUndecided(pH, uncertainty, rulingLimit, tomato),
    },
    basis: [
      basisOf(isAcid ? acid : lowAcid, 'limit between acid and low-acid'),
      basisOf(ruling, 'regulation'),
      ...(unsaid ? [basisOf(assumed, 'uncertainty of the reading')] : []),
    ],
    cautions: [
      ...(isAcid ? [] : [acidCaution('low-acid-in-jars')]),
      acidCaution('ph-no-process'),
      ...(undecided ? [acidCaution('too-near-the-limit')] : []),
      ...(unsaid ? [acidCaution('state-the-uncertainty')] : []),
      ...(uncertainty < closestReading().within ? [acidCaution('no-meter-so-close')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
