/** The word `area`: above zero and up to 10,000 m2, in any unit of area. */
import { type Bounds, area as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { AreaInput } from '../quantity/types';

/** An area, such as that of a tray. */
export const area = (bounds: Bounds<'area'> = {}) =>
  word(field(bounds), {
    name: 'area',
    kind: 'area',
    says: 'An area, such as that of a tray.',
    ...quantityEnds<'area'>(bounds, { value: 0, unit: 'm2' }),
  });
