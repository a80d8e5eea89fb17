/** The word `amount`: a mass up to 1,000 t or a volume up to 1,000 m3, above zero, in any unit of either. */
import { massOrVolume } from '../quantity/fields';
import { word } from './word';

export type { MassInput, VolumeInput } from '../quantity/types';

/** How much of something: weighed or measured, as the cook likes. */
export const amount = () =>
  word(massOrVolume(), {
    name: 'amount',
    kind: 'mass or volume',
    says: 'How much of something: weighed or measured, as the cook likes.',
  });
