import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fields, readInput, reading } from '../../quantity/fields';
import { parseShare } from '../../quantity/share';
import type { ShareInput } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/index';
import { moisture as moistureWord } from '../../words/shares';
import { moistureBasis } from '../basis';

export interface MoistureAnswer {
  /** The moisture on the basis asked for, as a number. */
  readonly moisture: number;
  /** Where the figure comes from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

const dryBasisSchema = /* @__PURE__ */ fields({
  /** Water as a share of the whole mass: 0 to below 1, or percent. */
  moisture: moistureWord({ below: 1 }),
});
export type DryBasisInput = z.input<typeof dryBasisSchema>;

/**
 * Turns a moisture on wet basis (a share of the whole mass) into dry basis (water for each part of dry solids).
 *
 * Formula: dry = wet / (1 - wet). Source: Singh and Heldman, Introduction to Food Engineering.
 *
 * @returns `moisture`: water for each part of dry solids; 1 or more where half or more is water
 * @throws StillroomError OUT_OF_RANGE at 1 and above, for pure water has no dry solids
 *
 * @example
 * ```ts
 * import { dryBasis } from 'stillroom/drying';
 *
 * dryBasis({ moisture: '85 %' }).moisture; // ≈ 5.667
 * ```
 */
export function dryBasis(input: DryBasisInput): MoistureAnswer {
  const { moisture } = readInput(dryBasisSchema, input);
  return answer({ moisture: moisture / (1 - moisture), basis: [moistureBasis('moisture')], cautions: [] });
}

/** Water for each part of dry solids: more than any food holds. */
const WETTEST = 1_000_000;
const wetBasisSchema = /* @__PURE__ */ fields({
  /** Water for each part of dry solids: 0 to 1,000,000, or percent (`"400 %"`). */
  moisture: reading<ShareInput, number>((given) => parseShare(given, '', WETTEST)),
});
export type WetBasisInput = z.input<typeof wetBasisSchema>;

/**
 * Turns a moisture on dry basis (water for each part of dry solids) into wet basis (a share of the whole mass).
 *
 * Formula: wet = dry / (1 + dry). Source: Singh and Heldman, Introduction to Food Engineering.
 *
 * @returns `moisture`: water as a share of the whole mass, 0 to below 1
 * @throws StillroomError OUT_OF_RANGE, WRONG_TYPE, NOT_A_QUANTITY
 *
 * @example
 * ```ts
 * import { wetBasis } from 'stillroom/drying';
 *
 * wetBasis({ moisture: 0.25 }).moisture; // => 0.2
 * ```
 */
export function wetBasis(input: WetBasisInput): MoistureAnswer {
  const { moisture } = readInput(wetBasisSchema, input);
  return answer({ moisture: moisture / (1 + moisture), basis: [moistureBasis('moisture')], cautions: [] });
}
