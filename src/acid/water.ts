import { isMass } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis } from '../sources/basis';
import { basisOf } from '../sources/table';
import { BRINE_FIGURES, rowOf } from './tables';

const density = rowOf(BRINE_FIGURES, 'water-density', 'figure');
/** Density of water at 20 degC, g/mL. */
export const GRAMS_PER_ML = density.value;
/** The basis line of measured water as a weight; `of` is the path of the answer's field that rests on it. */
export const waterBasis = (of: string): Basis => basisOf(density, of, density.about);

/** Water in grams, whether weighed or measured. */
export const waterGrams = (water: Quantity<'mass'> | Quantity<'volume'>): number =>
  isMass(water) ? valueIn(water, 'g') : valueIn(water, 'mL') * GRAMS_PER_ML;
