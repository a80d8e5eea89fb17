import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { fields, mass, readInput, temperature } from '../quantity/fields';
import { quantityIn, valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import { type Basis, behind, type Caution, measured } from '../sources/basis';
import { waterDensity } from '../steam/waterDensity';

const schema = /* @__PURE__ */ fields({
  /** Weight of the water alone. */
  water: mass(),
  /** Of the water, 0 to 100 degC. */
  temperature: temperature({ min: { value: 0, unit: 'degC' }, max: { value: 100, unit: 'degC' } }),
});
export type BrimfulCapacityInput = z.input<typeof schema>;

export interface BrimfulCapacity {
  /** What the jar holds to the rim, in fl oz for a weight in lb or oz, otherwise in mL. */
  readonly brimful: Quantity<'volume'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

/**
 * What a jar holds to the rim, from the weight of the water that fills it: the way to measure your own jar.
 *
 * Weigh the dry jar, fill it with water to the rim, weigh again, and give the difference. brimful = mass / density
 * of water at its temperature. The lift of the air, about 1 part in 1,000, is left out.
 *
 * Source: density of water by IAPWS SR6-08.
 *
 * @example
 * ```ts
 * import { brimfulCapacity, fillJar } from 'stillroom/jars';
 *
 * const { brimful } = brimfulCapacity({ water: '500 g', temperature: '20 degC' });
 * brimful.value; // ≈ 500.9
 * fillJar({ jar: { brimful, opening: '60 mm' }, headspace: '12 mm' }).fillVolume.value; // ≈ 467
 * ```
 */
export function brimfulCapacity(input: BrimfulCapacityInput): BrimfulCapacity {
  const given = readInput(schema, input);
  const water = waterDensity({ temperature: given.temperature });
  const unit = given.water.unit === 'lb' || given.water.unit === 'oz' ? 'fl oz' : 'mL';
  return answer({
    brimful: quantityIn(valueIn(given.water, 'g') / valueIn(water.density, 'g/mL'), 'mL', unit),
    basis: [
      measured('brimful', 'weight of the water'),
      ...behind('brimful', water.basis).map((line) => ({ ...line, note: 'density of water' })),
    ],
    cautions: [],
  });
}
