/** The word `count`: a whole number, 0 to 1,000,000 unless a field says otherwise. */
import { count as field } from '../quantity/fields';
import { word } from './word';

const MOST = 1_000_000;

/** How many of something; `what` says what is counted. */
export const count = (what: string, min = 0, max = MOST) =>
  word(field(what, min, max), { name: 'count', kind: 'count', says: `How many: ${what}.`, low: min, high: max });
