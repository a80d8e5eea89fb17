import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fail } from '../../errors/StillroomError';
import { fields, optional, readInput, share } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { balanceBasis, moistureAtShare, moistureBefore } from '../../solution/massBalance';
import type { Basis, Caution } from '../../sources/basis';
import { dried as driedWord } from '../../words/dried';
import { mass } from '../../words/mass';
import { moisture as moistureWord } from '../../words/shares';
import { measured } from '../basis';
import {
  type DrynessByWeighing,
  type DrynessByWeighingInput,
  drynessByWeighing,
} from '../freeze-dry/drynessByWeighing';

const schema = /* @__PURE__ */ fields({
  /** Ready food as it went in, without the tray: a mass above zero. */
  fresh: mass(),
  /** The same food now, dried or half dried, without the tray: at most `fresh`. */
  dried: driedWord(),
  /** Its moisture as it went in, wet basis: 0 to below 1, or percent; give this or `driedMoisture`. */
  moisture: optional(moistureWord({ below: 1 })),
  /** Its moisture now, wet basis: 0 to below 1, or percent; give this or `moisture`. */
  driedMoisture: optional(share({ below: 1 })),
});
export type MoistureByWeighingInput = z.input<typeof schema>;

export interface MoistureByWeighing {
  /** Wet basis, of the food as it went in. */
  readonly moisture: number;
  /** Wet basis, of the food now. */
  readonly driedMoisture: number;
  /** The water that is gone, in the unit of `fresh`. */
  readonly waterRemoved: Quantity<'mass'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/**
 * The moisture that a tray has come down to, from the moisture it started with; or the moisture it started with, from
 * the moisture it ended at: your own figure for the next batch. With `weighings`, whether the load is dry.
 *
 * The solids stay: fresh (1 - moisture) = dried (1 - dried moisture), both on wet basis.
 *
 * A load weighed again and again is dry when another hour or more takes off nothing that a kitchen scale can show:
 * common practice in freeze-drying, where touching a piece tells you little.
 *
 * @returns both moistures on wet basis, and `waterRemoved` in the unit of `fresh`; of `weighings` the `verdict`: `too soon`
 *   where the last two are less than an hour apart
 * @throws StillroomError CONTRADICTION for both or neither of the moistures, for a mass above the fresh, or below the
 *   dry solids; of weighings for times that repeat or go back, and masses that rise
 *
 * @example
 * ```ts
 * import { moistureByWeighing } from 'stillroom/drying';
 *
 * moistureByWeighing({ fresh: '10 kg', moisture: '85 %', dried: '2.5 kg' }).driedMoisture; // ≈ 0.4
 * moistureByWeighing({ fresh: '100 g', dried: '28.5 g', driedMoisture: '8 %' }).moisture; // ≈ 0.7378
 * moistureByWeighing({
 *   weighings: [
 *     { time: '24 h', mass: '512 g' },
 *     { time: '26 h', mass: '504 g' },
 *   ],
 * }).verdict; // => 'not dry'
 * ```
 */
export function moistureByWeighing(input: DrynessByWeighingInput): DrynessByWeighing;
export function moistureByWeighing(input: MoistureByWeighingInput): MoistureByWeighing;
export function moistureByWeighing(
  input: MoistureByWeighingInput | DrynessByWeighingInput,
): MoistureByWeighing | DrynessByWeighing {
  return typeof input === 'object' && input !== null && 'weighings' in input
    ? drynessByWeighing(input)
    : ofOneWeighing(input);
}

function ofOneWeighing(input: MoistureByWeighingInput): MoistureByWeighing {
  const given = readInput(schema, input);
  const { fresh, dried } = given;
  const now = valueIn(dried, fresh.unit);
  if (now > fresh.value) fail('CONTRADICTION', 'dried', input.dried, 'at most the mass of the fresh food');
  const solved = given.moisture === undefined ? 'moisture' : 'driedMoisture';
  return answer({
    ...bothMoistures(given, now, input),
    waterRemoved: { value: fresh.value - now, unit: fresh.unit },
    basis: [
      balanceBasis(solved),
      measured(solved, 'the masses weighed'),
      measured('waterRemoved', 'the masses weighed'),
    ],
    cautions: [],
  });
}

/** The moistures before and after, by the one that is given. */
function bothMoistures(
  { fresh, moisture, driedMoisture }: z.output<typeof schema>,
  now: number,
  input: MoistureByWeighingInput,
) {
  const left = now / fresh.value;
  if (moisture === undefined) {
    if (driedMoisture === undefined) fail('MISSING', 'moisture', undefined, 'the moisture before or after');
    return { moisture: moistureBefore(driedMoisture, left), driedMoisture };
  }
  if (driedMoisture !== undefined) {
    fail('CONTRADICTION', 'driedMoisture', input.driedMoisture, 'the moisture before or after, and not both');
  }
  const solids = fresh.value * (1 - moisture);
  if (now < solids) {
    const least = Number(solids.toPrecision(6));
    fail('CONTRADICTION', 'dried', input.dried, `at least the mass of the dry solids, ${least} ${fresh.unit}`);
  }
  // a mass that is all solids may come out a rounding unit below none
  return { moisture, driedMoisture: Math.max(0, moistureAtShare(moisture, left)) };
}
