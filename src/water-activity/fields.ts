import { share, temperature } from '../quantity/fields';
import type { Range } from '../quantity/types';

/** A water activity between 0 and 1, both exclusive; a percentage is the relative humidity it stands with. */
export const activityField = () => share({ above: 0, below: 1 });

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
