/** The word `time`: above zero and up to 100 years, in any unit of time. */
import { type Bounds, time as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { TimeInput } from '../quantity/types';

/** A length of time. */
export const time = (bounds: Bounds<'time'> = {}) =>
  word(field(bounds), {
    name: 'time',
    kind: 'time',
    says: 'A length of time.',
    ...quantityEnds<'time'>(bounds, { value: 0, unit: 's' }),
  });
