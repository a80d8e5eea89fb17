import { number, temperature } from '../quantity/fields';

/** Degrees Brix: percent by mass of dissolved sugar, 0 to 100. */
export const brixField = (what = 'degrees Brix (percent by mass) from 0 to 100') => number(what, { min: 0, max: 100 });

/** The temperatures over which the density and solubility equations were published. */
export const liquidTemperature = () =>
  temperature({ min: { value: 0, unit: 'degC' }, max: { value: 100, unit: 'degC' } });

/** Sugar tables are reduced to this temperature. */
export const REFERENCE_TEMPERATURE = 20; // degC
