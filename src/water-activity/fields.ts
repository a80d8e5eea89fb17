import { number, temperature } from '../quantity/fields';
import type { Range } from '../quantity/types';

/** A water activity between 0 and 1, both exclusive. */
export const activityField = () => number('a water activity above 0 and below 1', { above: 0, below: 1 });

/** A pH from 0 to 14. */
export const pHField = () => number('a pH from 0 to 14', { min: 0, max: 14 });

/** The temperatures of a freezer, a pantry and a kitchen: -40 to 100 degC. */
export const storageTemperature = () =>
  temperature({ min: { value: -40, unit: 'degC' }, max: { value: 100, unit: 'degC' } });

/** The temperatures of a kitchen, a dryer and a boiling syrup: 0 to 100 degC. */
export const solutionTemperature = () =>
  temperature({ min: { value: 0, unit: 'degC' }, max: { value: 100, unit: 'degC' } });

/** The constants of most solution equations are for this temperature, degC. */
export const REFERENCE_TEMPERATURE = 25;

export const KELVIN = 273.15;

/** An activity with its error either way, kept within 0 and 1. */
export const rangeAround = (likely: number, error: number): Range<number> => ({
  low: Math.max(likely - error, 0),
  likely,
  high: Math.min(likely + error, 1),
});
