/** The word `mass`: above zero and up to 1,000 t, in any unit of mass. */
import { type Bounds, mass as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { MassInput } from '../quantity/types';

/** A mass where the state of the food does not matter. */
export const mass = (bounds: Bounds<'mass'> = {}) =>
  word(field(bounds), {
    name: 'mass',
    kind: 'mass',
    says: 'A mass where the state of the food does not matter.',
    ...quantityEnds<'mass'>(bounds, { value: 0, unit: 'kg' }),
  });
