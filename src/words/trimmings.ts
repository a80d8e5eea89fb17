/** The word `trimmings`: above zero and up to 1,000 t, or from zero where a field says so; in any unit of mass. */
import { type Bounds, mass as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { MassInput } from '../quantity/types';

/** The mass of what falls off when the food is made ready: peels, cores, pits, stems. */
export const trimmings = (bounds: Bounds<'mass'> = {}) =>
  word(field(bounds), {
    name: 'trimmings',
    kind: 'mass',
    says: 'The mass of what falls off when the food is made ready: peels, cores, pits, stems.',
    ...quantityEnds<'mass'>(bounds, { value: 0, unit: 'kg' }),
  });
