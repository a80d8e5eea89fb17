/** The word `temperature`: -273.15 to 1,000 degC unless a field says otherwise, in any unit of temperature. */
import { type Bounds, temperature as field } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { TemperatureInput } from '../quantity/types';

const LOWEST = { value: -273.15, unit: 'degC' } as const;
const HIGHEST = { value: 1000, unit: 'degC' } as const;

/** How hot or cold something is. */
export const temperature = (bounds: Bounds<'temperature'> = {}) =>
  word(field(bounds), {
    name: 'temperature',
    kind: 'temperature',
    says: 'How hot or cold something is.',
    ...quantityEnds<'temperature'>({ min: LOWEST, max: HIGHEST, ...bounds }),
  });
