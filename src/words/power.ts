/** The word `power`: above zero, in any unit of power. */
import { type Bounds, power as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { PowerInput } from '../quantity/types';

/** A power, such as that of a burner. */
export const power = (bounds: Bounds<'power'> = {}) =>
  word(field(bounds), {
    name: 'power',
    kind: 'power',
    says: 'A power, such as that of a burner.',
    ...quantityEnds<'power'>(bounds, { value: 0, unit: 'W' }),
  });
