/** The word `price`: money with its currency, such as "24.50 USD". */
import { money } from '../quantity/fields';
import { word } from './word';

export type { MoneyInput } from '../quantity/types';

/** What something costs, with its currency. */
export const price = () =>
  word(money(), { name: 'price', kind: 'money', says: 'What something costs, with its currency.' });
