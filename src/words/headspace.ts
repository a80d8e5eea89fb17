/** The word `headspace`: above zero and up to 1 m, or from zero where a field says so; in any unit of length. */
import { type Bounds, length } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { LengthInput } from '../quantity/types';

const DEEPEST = { value: 1, unit: 'm' } as const;

/** The empty room in a jar, measured from the rim down to the food. */
export const headspace = (bounds: Bounds<'length'> = {}) =>
  word(length({ max: DEEPEST, ...bounds }), {
    name: 'headspace',
    kind: 'length',
    says: 'The empty room in a jar, measured from the rim down to the food.',
    ...quantityEnds<'length'>({ max: DEEPEST, ...bounds }, { value: 0, unit: 'in' }),
  });
