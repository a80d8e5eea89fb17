/** The word `temperatureDifference`: above zero, in any unit of temperature. */
import { type Bounds, temperatureDifference as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { TemperatureDifferenceInput } from '../quantity/types';

/** A difference of temperature. */
export const temperatureDifference = (bounds: Bounds<'temperatureDifference'> = {}) =>
  word(field(bounds), {
    name: 'temperatureDifference',
    kind: 'temperatureDifference',
    says: 'A difference of temperature.',
    ...quantityEnds<'temperatureDifference'>(bounds, { value: 0, unit: 'delta degC' }),
  });
