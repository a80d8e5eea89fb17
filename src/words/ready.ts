/** The word `ready`: above zero and up to 1,000 t, in any unit of mass. */
import { type Bounds, mass as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { MassInput } from '../quantity/types';

/** The mass of the food washed, trimmed and cut, ready for the pot, tray or jar. */
export const ready = (bounds: Bounds<'mass'> = {}) =>
  word(field(bounds), {
    name: 'ready',
    kind: 'mass',
    says: 'The mass of the food washed, trimmed and cut, ready for the pot, tray or jar.',
    ...quantityEnds<'mass'>(bounds, { value: 0, unit: 'kg' }),
  });
