/** The word `density`: above zero and up to 25 g/mL, in any unit of density. */
import { type Bounds, density as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { DensityInput } from '../quantity/types';

/** Mass for each volume. */
export const density = (bounds: Bounds<'density'> = {}) =>
  word(field(bounds), {
    name: 'density',
    kind: 'density',
    says: 'Mass for each volume.',
    ...quantityEnds<'density'>(bounds, { value: 0, unit: 'g/mL' }),
  });
