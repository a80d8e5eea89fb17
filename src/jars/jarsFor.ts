import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fail } from '../errors/StillroomError';
import { fields, optional, readInput, volume } from '../quantity/fields';
import { roundToStep } from '../quantity/fractions';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, behind, type Caution } from '../sources/basis';
import { headspace } from '../words/headspace';
import { jar } from '../words/jar';
import { mouth } from '../words/mouth';
import { jarCaution } from './cautions';
import { resolveJar } from './describeJar';
import { roomIn } from './fillJar';

/** More jars than a kitchen fills at once; asking for more is taken as a slip. */
export const MOST_JARS = 5000;

const schema = /* @__PURE__ */ fields({
  /** Food ready to fill. */
  volume: volume(),
  /** A size (`pint`, `wide-mouth quart`) or a measured jar `{ brimful, opening }`. */
  jar: jar(),
  /** `regular` (the default) or `wide`, where the jar does not say. */
  mouth: optional(mouth()),
  /** The room left between the rim and the food, above zero. */
  headspace: headspace(),
});
export type JarsForInput = z.input<typeof schema>;

export interface JarsFor {
  /** Jars that the volume fills, rounded down. */
  readonly full: number;
  /** What is left after them: the part-filled last jar. */
  readonly remainder: Quantity<'volume'>;
  /** Jars and lids to ready, rounded up. */
  readonly jarsToReady: number;
  /** What goes into one jar. */
  readonly fillVolume: Quantity<'volume'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * How many jars a volume of food fills, what is left over, and how many to ready.
 *
 * full = volume / fill volume rounded down; jarsToReady = the same rounded up; the remainder is for the refrigerator, as a
 * part-filled jar has too much headspace to process. See `fillJar` for the fill volume.
 *
 * @returns `remainder` in the unit of `volume`; `fillVolume` as `fillJar` gives it
 * @throws StillroomError TOO_MUCH for more than 5,000 jars
 *
 * @example
 * ```ts
 * import { jarsFor } from 'stillroom/jars';
 *
 * const jars = jarsFor({ volume: '6 quarts', jar: 'pint', headspace: '1/2 in' });
 * jars.full; // => 12
 * jars.jarsToReady; // => 13
 * jars.remainder.value; // ≈ 0.460
 * ```
 */
export function jarsFor(input: JarsForInput): JarsFor {
  const given = readInput(schema, input);
  const room = roomIn(resolveJar(given.jar, given.mouth), given.headspace, input.headspace);
  const total = valueIn(given.volume, 'mL');
  if (total > room.fill * MOST_JARS) {
    fail('TOO_MUCH', 'volume', input.volume, `a volume that fits in at most ${MOST_JARS} jars`);
  }
  const full = roundToStep(total / room.fill, 1, 'down').toNumber();
  const ready = roundToStep(total / room.fill, 1, 'up').toNumber();
  const left = ready === full ? 0 : total - full * room.fill;
  return answer({
    full,
    remainder: quantityIn(left, 'mL', given.volume.unit),
    jarsToReady: ready,
    fillVolume: quantityIn(room.fill, 'mL', room.unit),
    basis: behind('fillVolume', room.basis),
    cautions: [...room.cautions, ...(left === 0 ? [] : [jarCaution('part-filled-jar')])],
  });
}
