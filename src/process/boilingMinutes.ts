import { answer } from '../common/answer';
import { fields, kitchenElevation, readInput } from '../quantity/fields';
import type { LengthInput } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { processCaution, usualCautions } from './cautions';
import { type ElevationRuleRow, elevationRuleRows, perThousandFeet } from './elevationMinutes';

const schema = /* @__PURE__ */ fields({
  /** Elevation of the kitchen, above -500 m, to 5,000 m. */
  elevation: kitchenElevation(),
});

export interface BoilingMinutesInput {
  /** Elevation of the kitchen, above -500 m, to 5,000 m. */
  readonly elevation: LengthInput;
}
export interface BoilingMinutes {
  /** How long to boil, minutes. */
  readonly minutes: number;
  /** Where it comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

function minutesOf(rule: 'sterilizing' | 'before-tasting', input: BoilingMinutesInput, what: string) {
  const { elevation } = readInput(schema, input);
  const [row] = elevationRuleRows(rule) as [ElevationRuleRow & { base: number }];
  return { minutes: row.base + perThousandFeet(elevation, row), basis: [basisOf(row, 'minutes', what)] };
}

/**
 * How long empty jars are boiled to sterilize them: 10 minutes below 1,000 ft, and 1 minute more for each 1,000 ft,
 * any part of a thousand counted whole (the source leaves the steps between open). Only a boiling-water process
 * whose time at the lowest elevations is under 10 minutes asks for it.
 *
 * Source: Michigan State University, record 01600946.
 *
 * @throws StillroomError MISSING, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { sterilizingMinutes } from 'stillroom/process';
 *
 * sterilizingMinutes({ elevation: '5000 ft' }).minutes; // => 15
 * ```
 */
export function sterilizingMinutes(input: BoilingMinutesInput): BoilingMinutes {
  const found = minutesOf('sterilizing', input, 'sterilizing empty jars');
  return answer({ ...found, cautions: [caution('hot-liquids-burn'), ...usualCautions()] });
}

/**
 * How long home-canned low-acid or tomato food is boiled before it is tasted: 10 minutes below 1,000 ft, and 1 minute
 * more for each 1,000 ft, any part counted whole. It is a last care for jars that were processed right, and never a
 * remedy: food that shows a fault, or whose process may have been wrong, is thrown out without tasting.
 *
 * Source: USDA Complete Guide to Home Canning, guide 1.
 *
 * @throws StillroomError MISSING, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { boilBeforeTasting } from 'stillroom/process';
 *
 * boilBeforeTasting({ elevation: '5000 ft' }).minutes; // => 15
 * ```
 */
export function boilBeforeTasting(input: BoilingMinutesInput): BoilingMinutes {
  const found = minutesOf('before-tasting', input, 'boiling before tasting');
  return answer({ ...found, cautions: [processCaution('not-a-remedy'), ...usualCautions()] });
}
