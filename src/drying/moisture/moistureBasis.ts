import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fields, readInput, reading, share } from '../../quantity/fields';
import { parseShare } from '../../quantity/share';
import type { ShareInput } from '../../quantity/types';
import type { Basis, Caution } from '../../sources/index';

/** Where the two ways of stating moisture are defined, and worked. */
export const MOISTURE_BASES: Basis = {
  of: 'moisture wet basis = water / (water + solids); dry basis = water / solids',
  kind: 'equation',
  source: 'singh-heldman',
};

export interface MoistureAnswer {
  /** The moisture on the basis asked for, as a number. */
  readonly moisture: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

const dryBasisSchema = fields({ moisture: share({ below: 1 }) });
export type DryBasisInput = z.input<typeof dryBasisSchema>;

/**
 * Moisture from wet basis (share of the whole weight) to dry basis (water per weight of dry solids).
 *
 * Formula: dry = wet / (1 - wet).
 *
 * @param input.moisture - water as a share of the whole weight: a number from 0 to below 1, or percent
 * @returns `moisture`: water per unit of dry solids; 1 or more for anything that is half water
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
  return answer({ moisture: moisture / (1 - moisture), basis: [MOISTURE_BASES], cautions: [] });
}

/** Water per weight of dry solids: more than any food holds. */
const WETTEST = 1_000_000;
const wetBasisSchema = fields({
  moisture: reading<ShareInput, number>((given) => parseShare(given, '', WETTEST)),
});
export type WetBasisInput = z.input<typeof wetBasisSchema>;

/**
 * Moisture from dry basis (water per weight of dry solids) to wet basis (share of the whole weight).
 *
 * Formula: wet = dry / (1 + dry).
 *
 * @param input.moisture - water per unit of dry solids: a number from 0, often above 1, or percent (`"400 %"`)
 * @returns `moisture`: water as a share of the whole weight, 0 to 1
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
  return answer({ moisture: moisture / (1 + moisture), basis: [MOISTURE_BASES], cautions: [] });
}
