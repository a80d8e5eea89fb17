/** The word `waterActivity`: 0 to 1. */
import { number } from '../quantity/fields';
import { type NumberLimits, numberEnds } from './limits';
import { word } from './word';

const ends = ({ min, max, above, below }: NumberLimits): string =>
  `${above === undefined ? `from ${min ?? 0}` : `above ${above}`} ${below === undefined ? `to ${max ?? 1}` : `and below ${below}`}`;

/** How free the water of a food is: the relative humidity of air at rest over it. */
export const waterActivity = (limits: NumberLimits = {}) =>
  word(number(`a water activity ${ends(limits)}`, { min: 0, max: 1, ...limits }), {
    name: 'waterActivity',
    kind: 'number',
    says: 'How free the water of a food is: the relative humidity of air at rest over it.',
    ...numberEnds(limits, 0, 1),
  });
