/** The word `length`: above zero and up to 10 km, in any unit of length. */
import { type Bounds, length as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { LengthInput } from '../quantity/types';

/** A length or a thickness. */
export const length = (bounds: Bounds<'length'> = {}) =>
  word(field(bounds), {
    name: 'length',
    kind: 'length',
    says: 'A length or a thickness.',
    ...quantityEnds<'length'>(bounds, { value: 0, unit: 'm' }),
  });
