/** The word `gauge`: zero and up to 100 MPa above the pressure of the air, in any unit of pressure. */
import { type Bounds, pressure } from '../quantity/fields';
import { quantityEnds } from './limits';
import { word } from './word';

export type { PressureInput } from '../quantity/types';

const NONE = { value: 0, unit: 'psi' } as const;

/** What a canner's gauge shows: the pressure above that of the air outside. */
export const gauge = (bounds: Bounds<'pressure'> = {}) =>
  word(pressure({ min: NONE, ...bounds }), {
    name: 'gauge',
    kind: 'pressure',
    says: "What a canner's gauge shows: the pressure above that of the air outside.",
    ...quantityEnds<'pressure'>({ min: NONE, ...bounds }),
  });
