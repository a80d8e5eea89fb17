import type * as z from 'zod/mini';
import { answer } from '../../common/answer';
import { fields, mass, readInput, share } from '../../quantity/fields';
import type { Quantity } from '../../quantity/types';
import { refuseWetter, shareLeft } from '../../solution/massBalance';
import type { Basis, Caution } from '../../sources/index';
import { fatFields, fatIfNamed } from '../guide/fat';
import { MOISTURE_BASES } from './moistureBasis';

const schema = fields({
  ...fatFields,
  fresh: mass(),
  moisture: share({ below: 1 }),
  targetMoisture: share({ below: 1 }),
});
export type DriedMassInput = z.input<typeof schema>;

export interface DriedMass {
  /** What is left at the target moisture. */
  readonly mass: Quantity<'mass'>;
  readonly waterRemoved: Quantity<'mass'>;
  /** Fat that stays in it, where the food or its fat is named. */
  readonly fat?: Quantity<'mass'>;
  /** Drying ratio: how many times heavier the fresh produce is than the dried. */
  readonly ratio: number;
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}

/**
 * What ready produce weighs once dried to a target moisture, and how much water that takes out.
 *
 * Both moistures on wet basis. The solids stay: mass = fresh (1 - moisture) / (1 - target).
 *
 * Fat counts among the solids: it does not dry, and a fatty food named here gets a caution.
 *
 * @param input.fresh - ready (trimmed, cut) produce before drying
 * @param input.moisture - its water as a share of its weight, 0 to below 1 or percent
 * @param input.targetMoisture - the same after drying; not above `moisture`
 * @param input.food - what is dried, for its fat
 * @param input.fat - its share of fat, 0 to below 1 or percent; by `food` if not given
 * @returns `mass` and `waterRemoved` in the unit of `fresh`; `ratio` fresh to dried
 * @throws StillroomError CONTRADICTION when the target is wetter than the start
 *
 * @example
 * ```ts
 * import { driedMass } from 'stillroom/drying';
 *
 * const { mass, waterRemoved, ratio } = driedMass({ fresh: '100 kg', moisture: '90 %', targetMoisture: '6 %' });
 * mass.value; // ≈ 10.64
 * waterRemoved.value; // ≈ 89.36
 * ratio; // ≈ 9.4
 * ```
 */
export function driedMass(input: DriedMassInput): DriedMass {
  const { fresh, moisture, targetMoisture, food, fat: given } = readInput(schema, input);
  refuseWetter(moisture, targetMoisture, input.targetMoisture);
  const left = shareLeft(moisture, targetMoisture);
  const fat = fatIfNamed(food, given, moisture);
  return answer({
    mass: { value: fresh.value * left, unit: fresh.unit },
    waterRemoved: { value: fresh.value * ((moisture - targetMoisture) / (1 - targetMoisture)), unit: fresh.unit },
    ratio: (1 - targetMoisture) / (1 - moisture),
    ...(fat.share === undefined ? {} : { fat: { value: fresh.value * fat.share, unit: fresh.unit } }),
    basis: [MOISTURE_BASES, ...fat.basis],
    cautions: fat.cautions,
  });
}
