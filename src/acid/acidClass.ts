import type * as z from 'zod/mini';
import { handOut } from '../common/handOut';
import { fields, flag, number, optional, readInput } from '../quantity/fields';
import { caution } from '../sources/cautions';
import type { Basis, Caution } from '../sources/index';
import { basisOf } from '../sources/table';
import { acidCaution, limitRow, printed } from './tables';

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
  /** What kind of canner the class calls for, once there is a tested process. */
  readonly canner: string;
  /** Whether commercial regulation calls it a low-acid food: above its limit, and of a water activity above 0.85. */
  readonly regulation: { readonly lowAcid: boolean; readonly limit: number };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/** Doubles do not hold 4.4 + 0.2 exactly; a reading on the limit is not above it. */
const NOISE = 1e-9;

/**
 * Whether a food of this pH counts as acid or low-acid, and by what margin.
 *
 * Acid is pH 4.6 or below. A reading whose uncertainty reaches above the limit is treated as low-acid. Commercial
 * regulation calls a food low-acid above 4.6 (a tomato product from 4.7) when its water activity is above 0.85; home
 * guides acidify every jar of tomatoes instead, so that exception never makes a home-canned food acid here.
 *
 * @param input.pH - of the finished, even mixture, 0 to 14
 * @param input.uncertainty - of the reading, pH units; taken as 0, with a caution, when left out
 * @param input.waterActivity - where known; matters to the regulation only
 * @param input.tomato - whether it is tomatoes or a tomato product; matters to the regulation only
 * @returns `class`, `margin` (limit less reading) and `undecided`
 *
 * @example
 * ```ts
 * import { acidClass } from 'stillroom/acid';
 *
 * acidClass({ pH: 4.2, uncertainty: 0.1 }).class; // => 'acid'
 * acidClass({ pH: 4.55, uncertainty: 0.1 }).class; // => 'low-acid'
 * acidClass({ pH: 4.2, uncertainty: 0.1 }).margin; // ≈ 0.4
 * acidClass({ pH: 15 }); // throws StillroomError OUT_OF_RANGE
 * ```
 */
export function acidClass(input: AcidClassInput): AcidClass {
  const { pH, uncertainty = 0, waterActivity = 1, tomato = false } = readInput(schema, input);
  const lowAcid = limitRow('low-acid food (home');
  const acid = limitRow('acid food (home');
  const limit = printed(acid, 'pH');
  const isAcid = pH + uncertainty <= limit + NOISE;
  const finished = limitRow('low-acid food: finished');
  const ruling = tomato ? limitRow('tomatoes and tomato products') : finished;
  const rulingLimit = printed(ruling, 'pH');
  const wet = waterActivity > printed(finished, 'waterActivityAbove');
  const above = tomato ? pH >= rulingLimit - NOISE : pH > rulingLimit + NOISE;
  return handOut({
    class: isAcid ? 'acid' : 'low-acid',
    limit,
    margin: limit - pH,
    undecided: pH <= limit + NOISE ? !isAcid : pH - uncertainty <= limit + NOISE,
    canner: printed(isAcid ? acid : lowAcid, 'process'),
    regulation: { lowAcid: above && wet, limit: rulingLimit },
    basis: [basisOf(isAcid ? acid : lowAcid, 'limit between acid and low-acid'), basisOf(ruling, 'regulation')],
    cautions: [
      ...(isAcid ? [] : [acidCaution('low-acid-in-jars')]),
      acidCaution('ph-no-process'),
      ...(input.uncertainty === undefined ? [acidCaution('state-the-uncertainty')] : []),
      caution('follow-local-guidance'),
    ],
  });
}
