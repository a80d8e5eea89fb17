/** Which units an answer takes from the units of the question. */
import { quantityIn } from '../quantity/scale';
import type { Quantity } from '../quantity/types';

const CUSTOMARY: ReadonlySet<string> = new Set(['ft', 'in', 'psi', 'inHg', 'degF', 'delta degF']);

/** True where the asker writes in US customary units. */
export const isCustomary = (given: { readonly unit: string }): boolean => CUSTOMARY.has(given.unit);

/** A temperature in kelvin as degF for a question in feet, psi, inHg or degF, otherwise as degC. */
export const temperatureLike = (given: { readonly unit: string }, kelvin: number): Quantity<'temperature'> =>
  quantityIn(kelvin, 'K', isCustomary(given) ? 'degF' : 'degC');

/** A pressure in pascal as psi for a question in customary units, otherwise as kPa. */
export const pressureLike = (given: { readonly unit: string }, pascals: number): Quantity<'pressure'> =>
  quantityIn(pascals, 'Pa', isCustomary(given) ? 'psi' : 'kPa');
