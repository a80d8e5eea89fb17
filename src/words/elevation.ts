/** The word `elevation`: -500 to 5,000 m above sea level, in any unit of length; of a kitchen, above -500 m. */
import { elevation as field, kitchenElevation as kitchenField } from '../quantity/fields';
import { word } from './word';

export type { LengthInput } from '../quantity/types';

const SAYS = 'Height above sea level: what some call altitude.';
const LOWEST = { value: -500, unit: 'm' } as const;
const HIGHEST = { value: 5000, unit: 'm' } as const;

/** Height above sea level, within the range of the standard atmosphere here. */
export const elevation = () =>
  word(field(), { name: 'elevation', kind: 'length', says: SAYS, low: LOWEST, high: HIGHEST });

/** Height of a kitchen above sea level: no dry land is as low as -500 m. */
export const kitchenElevation = () =>
  word(kitchenField(), { name: 'elevation', kind: 'length', says: SAYS, low: LOWEST, high: HIGHEST, above: true });
