/** The word `pH`: 0 to 14. */
import { number } from '../quantity/fields';
import { type NumberLimits, numberEnds } from './limits';
import { word } from './word';

/** How sour a food is: 4.6 and below is acid. */
export const pH = (limits: NumberLimits = {}) =>
  word(number('a pH from 0 to 14', { min: 0, max: 14, ...limits }), {
    name: 'pH',
    kind: 'number',
    says: 'How sour a food is: 4.6 and below is acid.',
    ...numberEnds(limits, 0, 14),
  });
