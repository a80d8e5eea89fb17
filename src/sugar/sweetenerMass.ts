import { answer } from '../common/answer';
import { fields, name, readInput, volume } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity, VolumeInput } from '../quantity/types';
import type { Basis, Caution } from '../sources/basis';
import { basisOf } from '../sources/table';
import { sugarCaution } from './cautions';
import { findSweetener } from './sweeteners';

const schema = fields({ sweetener: name('a sweetener such as sugar, honey or corn syrup'), volume: volume() });
export interface SweetenerMassInput {
  /** `sugar`, `brown sugar`, `powdered sugar`, `honey`, `corn syrup`, `dark corn syrup`, `maple syrup`, `molasses`. */
  readonly sweetener: string;
  readonly volume: VolumeInput;
}
export interface SweetenerMass {
  readonly mass: Quantity<'mass'>;
  /** Dissolved solids in it. */
  readonly solids: Quantity<'mass'>;
  readonly basis: readonly Basis[];
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
  const row = findSweetener(given.sweetener, 'sweetener');
  const grams = valueIn(given.volume, 'cup') * row.gramsPerCup;
  return answer({
    mass: { value: grams, unit: 'g' },
    solids: { value: (grams * row.solids) / 100, unit: 'g' },
    basis: [basisOf(row, `weight and solids of ${row.name}`)],
    cautions: row.name === 'honey' ? [sugarCaution('no-honey-under-one')] : [],
  });
}
