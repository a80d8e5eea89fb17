import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fields, readInput } from '../../quantity/fields';
import type { Quantity } from '../../quantity/types';
import { balanceBasis, refuseWetter, shareLeft } from '../../solution/massBalance';
import type { Basis, Caution } from '../../sources/index';
import { mass } from '../../words/mass';
import { moisture as moistureWord, targetMoisture as targetMoistureWord } from '../../words/shares';
import { fatFields, fatIfNamed } from '../guide/fat';

const schema = /* @__PURE__ */ fields({
  ...fatFields,
  /** Ready (trimmed, cut) food before drying: a mass above zero. */
  fresh: mass(),
  /** Its water as a share of its mass, wet basis: 0 to below 1, or percent. */
  moisture: moistureWord({ below: 1 }),
  /** The same after drying; at most `moisture`. */
  targetMoisture: targetMoistureWord({ below: 1 }),
});
export type DriedMassInput = z.input<typeof schema>;

export interface DriedMass {
  /** What is left at the target moisture, in the unit of `fresh`. */
  readonly mass: Quantity<'mass'>;
  /** The water that goes, in the unit of `fresh`. */
  readonly waterRemoved: Quantity<'mass'>;
  /** The fat that stays, in the unit of `fresh`; given where the food or its fat is named and known. */
  readonly fatMass?: Quantity<'mass'>;
  /** Dried mass for each part of fresh mass, above 0 to 1. */
  readonly driedShare: number;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * What ready food weighs once it is dried to a target moisture, and how much water that takes out.
 *
 * Both moistures are on wet basis. The solids stay: mass = fresh (1 - moisture) / (1 - target).
 *
 * Fat counts among the solids: it does not dry. Name a fatty food, and the answer has a caution.
 *
 * @returns `mass` and `waterRemoved` in the unit of `fresh`; `driedShare`, dried over fresh
 * @throws StillroomError CONTRADICTION when the target is wetter than the start
 *
 * @example
 * ```ts
 * import { driedMass } from 'stillroom/drying';
 *
 * const { mass, waterRemoved, driedShare } = driedMass({ fresh: '100 kg', moisture: '90 %', targetMoisture: '6 %' });
 * mass.value; // ≈ 10.64
 * waterRemoved.value; // ≈ 89.36
 * driedShare; // ≈ 0.1064
 * ```
 */
export function driedMass(input: DriedMassInput): DriedMass {
  const given = readInput(schema, input);
  const { fresh, moisture, targetMoisture } = given;
  refuseWetter(moisture, targetMoisture, input.targetMoisture);
  const left = shareLeft(moisture, targetMoisture);
  const fat = fatIfNamed(given, moisture, 'fatMass', input.form);
  return answer({
    mass: { value: fresh.value * left, unit: fresh.unit },
    waterRemoved: { value: fresh.value * (1 - left), unit: fresh.unit },
    driedShare: left,
    ...(fat.share === undefined ? {} : { fatMass: { value: fresh.value * fat.share, unit: fresh.unit } }),
    basis: [balanceBasis('mass'), balanceBasis('waterRemoved'), balanceBasis('driedShare'), ...fat.basis],
    cautions: fat.cautions,
  });
}
