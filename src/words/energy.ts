/** The word `energy`: above zero, in any unit of energy. */
import { type Bounds, energy as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { EnergyInput } from '../quantity/types';

/** An energy. */
export const energy = (bounds: Bounds<'energy'> = {}) =>
  word(field(bounds), {
    name: 'energy',
    kind: 'energy',
    says: 'An energy.',
    ...quantityEnds<'energy'>(bounds, { value: 0, unit: 'kWh' }),
  });
