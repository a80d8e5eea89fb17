/** The word `volume`: above zero and up to 1,000 m3, in any unit of volume. */
import { type Bounds, volume as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { VolumeInput } from '../quantity/types';

/** A volume where the state of the food does not matter. */
export const volume = (bounds: Bounds<'volume'> = {}) =>
  word(field(bounds), {
    name: 'volume',
    kind: 'volume',
    says: 'A volume where the state of the food does not matter.',
    ...quantityEnds<'volume'>(bounds, { value: 0, unit: 'L' }),
  });
