import type { Range } from '../quantity/types';
import { temperature } from '../words/temperature';
import { waterActivity } from '../words/waterActivity';

/** A water activity between 0 and 1, both exclusive. */
export const activityField = () => waterActivity({ above: 0, below: 1 });

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
