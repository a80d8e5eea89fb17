import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { choice, fields, kitchenElevation, readInput } from '../quantity/fields';
import type { Basis, Caution } from '../sources/basis';
import { caution } from '../sources/cautions';
import { basisOf } from '../sources/table';
import { processCaution, usualCautions } from './cautions';
import { type ElevationRuleRow, elevationRuleRows, perThousandFeet } from './elevationMinutes';

const PURPOSES = ['empty jars', 'before tasting'] as const;
const schema = /* @__PURE__ */ fields({
  /** What is boiled: `empty jars`, to sterilize them, or canned low-acid or tomato food `before tasting`. */
  purpose: choice('what is boiled', PURPOSES),
  /** Elevation of the kitchen, above -500 m, to 5,000 m. */
  elevation: kitchenElevation(),
});

export type BoilingMinutesInput = z.input<typeof schema>;
export interface BoilingMinutes {
  /** How long to boil, minutes. */
  readonly minutes: number;
  /** Where it comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/** Each purpose with its row of the elevation rules and its own caution. */
const OF_PURPOSE = {
  'empty jars': { rule: 'sterilizing', note: 'sterilizing empty jars', first: () => caution('hot-liquids-burn') },
  'before tasting': {
    rule: 'before-tasting',
    note: 'boiling before tasting',
    first: () => processCaution('not-a-remedy'),
  },
} as const;

/**
 * How long empty jars are boiled to sterilize them, or home-canned low-acid or tomato food before it is tasted: 10
 * minutes below 1,000 ft, and 1 minute more for each 1,000 ft, any part of a thousand counted whole (for jars the source
 * leaves the steps between open).
 *
 * Only a boiling-water process whose time at the lowest elevations is under 10 minutes asks for sterilized jars. Boiling
 * before tasting is a last care for jars that were processed right, and never a remedy: food that shows a fault, or whose
 * process may have been wrong, is thrown out without tasting.
 *
 * Sources: Michigan State University, record 01600946 (jars); USDA Complete Guide to Home Canning, guide 1 (tasting).
 *
 * @throws StillroomError MISSING, UNKNOWN_NAME, OUT_OF_RANGE
 *
 * @example
 * ```ts
 * import { boilingMinutes } from 'stillroom/process';
 *
 * boilingMinutes({ purpose: 'empty jars', elevation: '5000 ft' }).minutes; // => 15
 * boilingMinutes({ purpose: 'before tasting', elevation: '800 ft' }).minutes; // => 10
 * ```
 */
export function boilingMinutes(input: BoilingMinutesInput): BoilingMinutes {
  const { purpose, elevation } = readInput(schema, input);
  const { rule, note, first } = OF_PURPOSE[purpose];
  const [row] = elevationRuleRows(rule) as [ElevationRuleRow & { base: number }];
  return answer({
    minutes: row.base + perThousandFeet(elevation, row),
    basis: [basisOf(row, 'minutes', note)],
    cautions: [first(), ...usualCautions()],
  });
}
