import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { nameOf } from '../foods/tables';
import { fields, readInput } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { basisOf } from '../sources/table';
import { volume } from '../words/volume';
import { sugarCaution } from './cautions';
import { sweetenerField } from './sweeteners';

const schema = fields({
  /** `sugar`, `brown sugar`, `powdered sugar`, `honey`, `corn syrup`, `dark corn syrup`, `maple syrup`, `molasses`. */
  sweetener: sweetenerField(),
  /** How much of it, by volume: brown sugar packed, powdered sugar unsifted. */
  volume: volume(),
});
export type SweetenerMassInput = z.input<typeof schema>;
export interface SweetenerMass {
  /** What it weighs. */
  readonly mass: Quantity<'mass'>;
  /** Dissolved solids in it, by mass. */
  readonly solidsMass: Quantity<'mass'>;
  /** Where the figures come from. */
  readonly basis: readonly Basis[];
  /** What to mind. */
  readonly cautions: readonly Caution[];
}

/**
 * The weight of a measured sweetener, and what it brings in dissolved solids.
 *
 * Source: USDA SR28, weight of a cup and composition (solids are all but the water).
 *
 * @param input - `sweetener`: a name; `volume`: brown sugar packed, powdered sugar unsifted
 * @throws StillroomError UNKNOWN_NAME
 *
 * @example
 * ```ts
 * import { sweetenerMass } from 'stillroom/sugar';
 *
 * sweetenerMass({ sweetener: 'honey', volume: '1 cup' }).mass; // => { value: 339, unit: 'g' }
 * ```
 */
export function sweetenerMass(input: SweetenerMassInput): SweetenerMass {
  const given = readInput(schema, input);
  const row = given.sweetener;
  const grams = valueIn(given.volume, 'cup') * row.gramsPerCup;
  return answer({
    mass: { value: grams, unit: 'g' },
    solidsMass: { value: (grams * row.solids) / 100, unit: 'g' },
    basis: [basisOf(row, 'mass', `weight and solids of ${nameOf(row.food)}`)],
    cautions: row.food === 'honey' ? [sugarCaution('no-honey-under-one')] : [],
  });
}
