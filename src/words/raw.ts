/** The word `raw`: above zero and up to 1,000 t, in any unit of mass. */
import { type Bounds, mass as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { MassInput } from '../quantity/types';

/** The mass of the food as bought or picked. */
export const raw = (bounds: Bounds<'mass'> = {}) =>
  word(field(bounds), {
    name: 'raw',
    kind: 'mass',
    says: 'The mass of the food as bought or picked.',
    ...quantityEnds<'mass'>(bounds, { value: 0, unit: 'kg' }),
  });
