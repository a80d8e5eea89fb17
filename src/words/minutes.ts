/** The word `minutes`: a printed process time, 0 to 10,000 min. Every other length of time is the word `time`. */
import { number } from '../quantity/fields';
import { type NumberLimits, numberEnds } from './limits';
import { word } from './word';

const LONGEST = 10_000;

/** A process time in minutes, as a table prints it. */
export const minutes = (limits: NumberLimits = {}) =>
  word(number('minutes of a process, 0 to 10,000', { min: 0, max: LONGEST, ...limits }), {
    name: 'minutes',
    kind: 'number',
    says: 'A process time, as a table prints it.',
    unit: 'min',
    ...numberEnds(limits, 0, LONGEST),
  });
