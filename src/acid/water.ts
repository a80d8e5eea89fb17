import { isMass } from '../quantity/fields';
import { valueIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';
import type { Basis } from '../sources/basis';

/** Density of water at 20 degC, g/mL: CRC handbook, density of water table (998.2071 kg/m3). */
export const GRAMS_PER_ML = 0.9982071;
export const WATER_WEIGHT: Basis = {
  of: 'weight of water at 20 degC',
  kind: 'published',
  source: 'crc-water-density',
  locator: 'density of water table',
  seen: 'reproduction',
};

/** Water in grams, whether weighed or measured. */
export const waterGrams = (water: Quantity<'mass'> | Quantity<'volume'>): number =>
  isMass(water) ? valueIn(water, 'g') : valueIn(water, 'mL') * GRAMS_PER_ML;
