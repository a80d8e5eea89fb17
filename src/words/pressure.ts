/** The word `pressure`: absolute, above zero and up to 100 MPa, in any unit of pressure. */
import { type Bounds, pressure as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { PressureInput } from '../quantity/types';

/** An absolute pressure: a gauge reads that much less the pressure of the air. */
export const pressure = (bounds: Bounds<'pressure'> = {}) =>
  word(field(bounds), {
    name: 'pressure',
    kind: 'pressure',
    says: 'An absolute pressure: a gauge reads that much less the pressure of the air.',
    ...quantityEnds<'pressure'>(bounds, { value: 0, unit: 'kPa' }),
  });
